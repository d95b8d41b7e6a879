package simmerpoint.command;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WarmingOptionsTest {
    @TempDir
    private Path folder;

    @Test
    void curveGoesToTheScreenAndIntoFiles() throws Exception {
        Path csv = folder.resolve("water.csv");
        Path png = folder.resolve("water.png");
        ProgramRun run = ProgramRun.of(
                "trace", "--rays", "2k", "--warming", "--warming-csv", csv.toString(), "--warming-png", png.toString());
        assertEquals(0, run.code(), run.err());
        assertTrue(run.text().contains("How fast the water warms"), run.text());
        assertTrue(run.text().contains("water.csv is written.") && run.text().contains("water.png is written."));
        List<String> lines = Files.readAllLines(csv);
        assertTrue(lines.contains("time_s,water_low_C,water_likely_C,water_high_C"), lines.toString());
        String[] start = lines.get(lines.indexOf("time_s,water_low_C,water_likely_C,water_high_C") + 1)
                .split(",");
        assertEquals("0", start[0]);
        assertEquals(start[1], start[3]);
        byte[] head = {(byte) 0x89, 'P', 'N', 'G'};
        assertArrayEquals(head, Arrays.copyOf(Files.readAllBytes(png), 4));
    }

    @Test
    void aBareDiscWarmsNoWater() {
        ProgramRun run = ProgramRun.reading(
                "dish: {diameter: 1 m, focal-length: 0.6 m, surface: {cut: smooth}}\nplane: {disc: 20 cm}\n",
                "trace",
                "-",
                "--warming");
        assertEquals(2, run.code());
        assertTrue(run.err().contains("warms no water"), run.err());
    }

    @Test
    void oneFileForBothIsRefused() {
        String file = folder.resolve("a").toString();
        assertEquals(
                2,
                ProgramRun.of("trace", "--warming-csv", file, "--warming-png", file)
                        .code());
    }
}
