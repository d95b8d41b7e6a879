package simmerpoint.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

class PanCommandTest extends CommandRuns {
    private static final String FEW = "--rays=4096";

    private Path file(String text) throws IOException {
        return Files.writeString(folder.resolve("mine.yaml"), text);
    }

    @Test
    void answersAndWritesAllFiles() throws IOException {
        Path png = folder.resolve("p.png");
        Path csv = folder.resolve("p.csv");
        Path json = folder.resolve("p.json");
        assertEquals(0, run("pan", "--full", FEW, "--png=" + png, "--csv=" + csv, "--json=" + json), err());
        String text = out();
        assertTrue(text.replaceAll("\\s+", " ").contains("go into the water where the pan stands"), text);
        assertTrue(text.lines().allMatch(line -> line.length() <= 80), text);
        assertEquals(1400, ImageIO.read(png.toFile()).getWidth());
        assertTrue(Files.readString(csv).contains("raise,"));
        assertTrue(Files.readString(json).contains("\"heat_level\""));
    }

    @Test
    void jsonMayGoToStandardOutput() {
        assertEquals(0, run("pan", FEW, "--json", "-"));
        assertTrue(out().startsWith("{"));
    }

    @Test
    void aBareDiscIsRefusedInOneSentence() throws IOException {
        Path disc =
                file("dish: {diameter: 1.2 m, focal-length: 0.8 m, surface: {cut: smooth}}\nplane: {disc: 20 cm}\n");
        assertEquals(2, run("pan", disc.toString(), FEW));
        String text = err();
        assertEquals(1, text.lines().count(), text);
        assertTrue(text.contains("only a pan can be asked for its place"), text);
    }

    @Test
    void aPanInsideTheMirrorIsRefusedInOneSentence() throws IOException {
        Path low = file(
                "dish: {diameter: 1.2 m, focal-length: 0.8 m, surface: {cut: smooth}}\nstand: {pull-back: -79 cm}\n");
        assertEquals(2, run("pan", low.toString(), FEW), out());
        assertTrue(err().contains("mm into the mirror"));
    }
}
