package simmerpoint.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import simmerpoint.scenario.file.ExampleScenario;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.scenario.yaml.SourceWriter;

/** The layout of written files; expected texts written by hand. */
class SourceWriterTest {
    private static final String DISH = """
            # a comment at the head
            title: Tea kitchen

            dish:
              diameter: 1.20 m            # across
              focal-length: 0.80 m
              surface: {cut: flat-rings, sectors: 24, rings: 6}
              # {cut: smooth} is another

            # about the sun
            sun:
              elevation: 50°
            """;

    private static String write(String... pathsAndValues) throws ScenarioException {
        Map<String, String> changes = new LinkedHashMap<>();
        for (int i = 0; i < pathsAndValues.length; i += 2) {
            changes.put(pathsAndValues[i], pathsAndValues[i + 1]);
        }
        return changed(DISH, changes);
    }

    private static String changed(String text, Map<String, String> changes) throws ScenarioException {
        return ScenarioReader.values("t.yaml", text, Path.of("")).with(changes).sourceText();
    }

    private static String without(String text, String... paths) throws ScenarioException {
        return ScenarioReader.values("t.yaml", text, Path.of(""))
                .without(List.of(paths))
                .sourceText();
    }

    @Test
    void noValuesNoChange() throws Exception {
        assertEquals(DISH, changed(DISH, Map.of()));
        assertEquals(DISH, changed(DISH, Map.of("dish.diameter", "1.20 m")));
        assertEquals(ExampleScenario.text(), changed(ExampleScenario.text(), Map.of()));
    }

    @Test
    void replacesValuesWhereTheyStandAndKeepsCommentsInTheirColumn() throws Exception {
        assertEquals(
                DISH.replace("1.20 m            # across", "47.25 in          # across")
                        .replace("sectors: 24", "sectors: 32"),
                write("dish.diameter", "47.25 in", "dish.surface.sectors", "32"));
    }

    @Test
    void aLongValuePushesTheCommentAside() throws Exception {
        assertEquals(
                DISH.replace("1.20 m            # across", "1.200000000000000000001 m # across"),
                write("dish.diameter", "1.200000000000000000001 m"));
    }

    @Test
    void putsNewKeysIntoTheirSectionInTheOrderOfTheFile() throws Exception {
        assertEquals(
                DISH.replace("focal-length: 0.80 m\n", "focal-length: 0.80 m\n  hub: 60 mm\n")
                        .replace("rings: 6}", "rings: 6, spacing: equal-length}"),
                write("dish.hub", "60 mm", "dish.surface.spacing", "equal-length"));
    }

    @Test
    void makesMissingSectionsBehindTheCommentsOfTheOneBefore() throws Exception {
        assertEquals(
                DISH.replace("is another\n", "is another\n\nmirror:\n  dust: 3 %\n")
                                .replace("elevation: 50°\n", "elevation: 50°\n  shape: {kind: gaussian}\n")
                        + "\naim:\n  turn: {up: 1°}\n",
                write("mirror.dust", "3 %", "sun.shape.kind", "gaussian", "aim.turn.up", "1°"));
    }

    @Test
    void takesOutWhatDoesNotBelongToAnotherCut() throws Exception {
        assertEquals(
                DISH.replace("{cut: flat-rings, sectors: 24, rings: 6}", "{cut: square-tiles, tile: 50 mm}"),
                write("dish.surface.cut", "square-tiles", "dish.surface.tile", "50 mm"));
        assertEquals(
                DISH.replace("{cut: flat-rings, sectors: 24, rings: 6}", "{cut: bent-strips, sectors: 24}"),
                write("dish.surface.cut", "bent-strips"));
    }

    @Test
    void aSectionWithoutKeysOrGivenAsAWordIsMade() throws Exception {
        for (String stand : List.of("stand:", "stand: here", "stand: {}", "stand: [1, 2]", "stand: # none")) {
            String written = changed("dish: {}\n" + stand + "\nair: {}\n", Map.of("stand.raise", "3 cm"));
            String expected = "dish: {}\nstand: {raise: 3 cm}" + (stand.contains("#") ? " # none" : "") + "\nair: {}\n";
            assertEquals(expected, written);
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "title | Lake | Lake",
                "title | on | 'on'",
                "title | a # b | 'a # b'",
                "title | a: b | 'a: b'",
                "title | it''s | it''s",
                "title | 12:30 | '12:30'",
                "pan.lid | off | off",
                "dish.gap | 2 mm | 2 mm",
                "when.date | 2026-06-21 | 2026-06-21",
                "title | Kuß am Öfchen | Kuß am Öfchen"
            },
            quoteCharacter = '`')
    void quotesWhatNeedsIt(String path, String typed, String yaml) throws Exception {
        String written = changed(DISH, Map.of(path, typed));
        assertTrue(written.contains(path.substring(path.indexOf('.') + 1) + ": " + yaml + "\n"), written);
        assertEquals(typed, SourceWriter.values(written).get(path));
    }

    @Test
    void keepsTheWayLinesAreEnded() throws Exception {
        String dos = DISH.replace("\n", "\r\n").stripTrailing();
        Map<String, String> changes = new LinkedHashMap<>();
        changes.put("dish.hub", "60 mm");
        changes.put("air.wind", "2 m/s");
        assertEquals(
                dos.replace("0.80 m\r\n", "0.80 m\r\n  hub: 60 mm\r\n") + "\r\n\r\nair:\r\n  wind: 2 m/s",
                changed(dos, changes));
    }

    @Test
    void takesOutKeysWithTheirLineAndSectionsThatAreLeftEmpty() throws Exception {
        assertEquals(
                DISH.replace("  diameter: 1.20 m            # across\n", "").replace("sectors: 24, ", ""),
                without(DISH, "dish.diameter", "dish.surface.sectors", "no.such"));
        assertEquals(
                DISH.replace("\n# about the sun\nsun:\n  elevation: 50°\n", "\n# about the sun\n"),
                without(DISH, "sun.elevation"));
        assertEquals("a: {b: 1}\n", SourceWriter.write("a: {b: 1, c: {d: {e: 2}}}\n", Map.of(), List.of("a.c.d.e")));
    }

    @Test
    void writesAnewWhatCannotBeChangedInItsPlace() throws Exception {
        String odd = "? dish\n: {diameter: 1 m, focal-length: 60 cm, surface: {cut: smooth}}\n";
        assertEquals(
                Map.of(
                        "dish.diameter", "1 m",
                        "dish.focal-length", "60 cm",
                        "dish.surface.cut", "smooth",
                        "title", "x"),
                SourceWriter.values(changed(odd, Map.of("title", "x"))));
        String list = "- dish\n";
        assertThrows(IllegalArgumentException.class, () -> SourceWriter.write(list, Map.of("title", "x"), List.of()));
        assertThrows(IllegalArgumentException.class, () -> SourceWriter.write(DISH, Map.of("titel", "x"), List.of()));
    }
}
