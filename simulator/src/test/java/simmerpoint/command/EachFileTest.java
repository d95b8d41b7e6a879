package simmerpoint.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Several scenarios in one call. */
class EachFileTest extends CommandRuns {
    private static final String DISH =
            "title: %s\ndish: {diameter: %s, focal-length: 60 cm, surface: {cut: smooth}}\npan: {diameter: 24 cm}\n";
    private static final ObjectMapper JSON = new ObjectMapper();

    private List<String> files() throws IOException {
        return List.of(
                write("one.yaml", DISH.formatted("One", "1 m")), write("two.yaml", DISH.formatted("Two", "1.2 m")));
    }

    @Test
    void jsonIsOneLineForEachAndTheSameAsAlone() throws IOException {
        List<String> files = files();
        assertEquals(0, run("trace", files.get(0), files.get(1), "--rays", "4096", "--json", "-"), err());
        List<String> lines = out().lines().toList();
        assertEquals(2, lines.size(), out());
        for (int i = 0; i < 2; i++) {
            assertEquals(0, run("trace", files.get(i), "--rays", "4096", "--json", "-"), err());
            assertEquals(
                    JSON.readTree(out()).get("ledger"),
                    JSON.readTree(lines.get(i)).get("ledger"));
        }
    }

    @Test
    void aFileHoldsTheSameLines() throws IOException {
        List<String> files = files();
        Path lines = folder.resolve("all.jsonl");
        assertEquals(0, run("trace", files.get(0), files.get(1), "--rays", "4096", "--json", lines.toString()), err());
        List<String> read = Files.readAllLines(lines);
        assertEquals(2, read.size());
        assertEquals("Two", JSON.readTree(read.get(1)).get("title").asText());
        assertTrue(out().startsWith(files.get(0) + ":"), out());
    }

    @Test
    void oneBadScenarioStopsAllBeforeAnythingIsTracedOrWritten() throws IOException {
        String bad = write("bad.yaml", DISH.formatted("Bad", "1 kg"));
        Path lines = folder.resolve("all.jsonl");
        assertEquals(2, run("trace", files().get(0), bad, "--json", lines.toString()));
        assertComplaint("bad.yaml, line 2, dish.diameter");
        assertFalse(Files.exists(lines));
    }
}
