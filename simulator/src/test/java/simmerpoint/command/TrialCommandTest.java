package simmerpoint.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

class TrialCommandTest extends CommandRuns {
    private static final String GARDEN = "../scenarios/garden-strips.yaml";
    private static final String LOGS = "../scenarios/garden-logs/";

    /** The scenario as built expects of the same log what that log says, and is surer of it. */
    @Test
    void theScenarioAsBuiltExpectsWhatWasMeasured() throws IOException {
        Path built = folder.resolve("built.yaml");
        Path first = folder.resolve("first.json");
        Path second = folder.resolve("second.json");
        String log = LOGS + "monday.csv";
        assertEquals(0, run("trial", GARDEN, log, "--as-built", built.toString(), "--json", first.toString()));
        assertEquals(0, run("trial", built.toString(), log, "--json", second.toString()));
        JsonNode before = new ObjectMapper().readTree(first.toFile());
        JsonNode after = new ObjectMapper().readTree(second.toFile());
        double fitted = before.get("fitted_power_W").asDouble();
        assertEquals(fitted, after.get("expected_power_likely_W").asDouble(), 0.04 * fitted);
        assertTrue(width(after) < 0.85 * width(before), before + "\n" + after);
        assertEquals("none", after.get("likeliest_flaw").asText());
        String text = Files.readString(built).replaceAll("\n# ", " ");
        assertTrue(text.startsWith("# As built, by the logs monday.csv"), text);
        String range = String.format(
                Locale.ROOT,
                "%.0f to %.0f W by this file",
                after.get("expected_power_low_W").asDouble(),
                after.get("expected_power_high_W").asDouble());
        assertTrue(text.contains(range), text + range);
        assertTrue(text.contains("no key for what the logs say of what the pan loses"), text);
    }

    private static double width(JsonNode json) {
        return json.get("expected_power_high_W").asDouble()
                - json.get("expected_power_low_W").asDouble();
    }

    @Test
    void theSheetForALessonIsOnePageAndNeedsNoLog() throws IOException {
        Path pdf = folder.resolve("sheet.pdf");
        assertEquals(0, run("trial", GARDEN, "--sheet", pdf.toString()));
        try (PDDocument read = Loader.loadPDF(pdf.toFile())) {
            assertEquals(1, read.getNumberOfPages());
            String text = new PDFTextStripper().getText(read);
            // 3 kg · 4186 J/(kg K) ÷ 600 s
            assertTrue(text.contains("20.9"), text);
        }
    }

    @Test
    void wrongUsesAreTold() throws IOException {
        assertEquals(2, run("trial", GARDEN));
        Path bad = Files.writeString(folder.resolve("bad.csv"), "time_min,water_C\n0,20\n1,21,5\n");
        assertEquals(2, run("trial", GARDEN, bad.toString()));
        Path empty = Files.createDirectory(folder.resolve("empty"));
        assertEquals(2, run("trial", GARDEN, empty.toString()));
        assertEquals(
                2,
                run(
                        "trial",
                        GARDEN,
                        "../scenarios/garden-class",
                        "--as-built",
                        folder.resolve("a").toString()));
    }

    /** One bad log stops nobody else; a folder of bad ones is refused. */
    @Test
    void aBadLogOfAClassIsNamedAndLeftOut() throws IOException {
        Path all = Files.createDirectory(folder.resolve("class"));
        Files.writeString(all.resolve("bad.csv"), "time,temp\n0,20\n1,21\n");
        assertEquals(2, run("trial", GARDEN, all.toString()));
        assertComplaint("bad.csv, line 1: the column 'time' needs its unit");
        Files.copy(Path.of(LOGS + "monday.csv"), all.resolve("good.csv"));
        Files.writeString(all.resolve("mask.csv"), "# dish.covered.part: rim\ntime_min,water_C\n0,20\n10,25\n20,30\n");
        assertEquals(0, run("trial", GARDEN, all.toString(), "--width", "200"));
        assertTrue(out().contains("1 cooker; the best is good"), out());
        assertTrue(out().contains("Left out: bad. "), out());
        assertTrue(out().contains("Left out: mask. "), out());
    }

    /** Eight focal lengths off it is the unit that is wrong. */
    @Test
    void aCardFarBeyondTheFocusIsRefused() throws IOException {
        String card = write("card.csv", "from_middle_cm,width_cm\n2000,80\n");
        assertEquals(2, run("trial", GARDEN, "--card", card));
        assertComplaint("is the unit right?");
    }

    /** Nothing is written when something is wrong. */
    @Test
    void aBadLogLeavesNoSheet() throws IOException {
        Path sheet = folder.resolve("sheet.pdf");
        String log = write("bad.csv", "time_min,water_C\n0,20\n5,warm\n");
        assertEquals(2, run("trial", GARDEN, log, "--sheet", sheet.toString()));
        assertComplaint("bad.csv, line 3: water_C has 'warm'");
        assertTrue(Files.notExists(sheet));
    }

    /** A mask that a log names without its width, or by a wrong word, is the log's mistake and told as such. */
    @Test
    void aMaskThatIsIncompleteIsToldWithItsLog() throws IOException {
        String rows = "time_min,water_C\n0,20\n10,25\n20,30\n";
        assertEquals(2, run("trial", GARDEN, write("mask.csv", "# dish.covered.part: rim\n" + rows)));
        assertComplaint("mask.csv, dish.covered.width: this key is missing");
        assertEquals(2, run("trial", GARDEN, write("word.csv", "# dish.covered.part: rimm\n" + rows)));
        assertComplaint("word.csv, line 1: dish.covered.part: rimm is not known here; did you mean rim?");
    }
}
