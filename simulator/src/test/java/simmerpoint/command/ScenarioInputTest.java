package simmerpoint.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import simmerpoint.scenario.file.ExampleScenario;

/** {@code --set} and {@code -} give what a file gives in which the same stands. */
class ScenarioInputTest {
    private static final String WIDE = """
            # the wide one
            dish: {diameter: 1.2 m, focal-length: 0.8 m, surface: {cut: smooth}}  # bowl
            """;
    private static final String NARROW = WIDE.replace("1.2 m", "90 cm");

    @TempDir
    Path folder;

    private String file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text).toString();
    }

    /** What a run without a mistake writes to standard output. */
    private static String out(ProgramRun run) {
        assertEquals(0, run.code(), run.err());
        return run.text();
    }

    private static void assertRefused(ProgramRun run, String words) {
        assertEquals(2, run.code());
        assertTrue(run.err().contains(words), run.err());
        assertEquals(1, run.err().lines().count(), run.err());
    }

    @Test
    void aValueSetCountsAsIfItStoodInTheFile() throws Exception {
        String wide = file("wide.yaml", WIDE);
        String narrow = file("narrow.yaml", NARROW);
        String wanted = out(ProgramRun.of("trace", narrow, "--csv", "-", "--rays", "4096"));
        String set = out(ProgramRun.of(
                "trace", wide, "--set", "dish.diameter=90 cm", "--csv", "-", "--rays", "4096", "--quiet"));
        assertEquals(wanted, set);
        assertTrue(out(ProgramRun.of("check", wide, "--set=dish.diameter=90 cm", "--set", "stand.raise=2 in"))
                .contains("90 cm"));
    }

    /** Paper is named as the help names it, in capitals too; an unknown one is refused. */
    @ParameterizedTest
    @ValueSource(strings = {"letter", "a4", "LETTER"})
    void paperIsNamedInEitherCase(String paper) throws Exception {
        Path patterns = folder.resolve(paper + ".pdf");
        out(ProgramRun.of("cut", "--paper", paper, "--pdf", patterns.toString()));
        assertTrue(Files.size(patterns) > 0);
        assertRefused(
                ProgramRun.of("cut", "--paper", "foolscap"),
                "--paper: foolscap is not known here; allowed are a4, letter");
    }

    @Test
    void theExampleTakesValuesToo() throws Exception {
        String other = file("other.yaml", ExampleScenario.text().replace("elevation: 50°", "elevation: 40°"));
        String wanted = out(ProgramRun.of("trace", other, "--csv", "-", "--rays", "4096"));
        assertEquals(wanted, out(ProgramRun.of("trace", "--set", "sun.elevation=40°", "--csv", "-", "--rays", "4096")));
    }

    @Test
    void standardInputIsReadAsAFile() throws Exception {
        String narrow = file("narrow.yaml", NARROW);
        String wanted = out(ProgramRun.of("trace", narrow, "--csv", "-", "--rays", "4096"));
        assertEquals(wanted, out(ProgramRun.reading(NARROW, "trace", "-", "--csv", "-", "--rays", "4096")));
        String both = out(
                ProgramRun.reading(WIDE, "trace", "-", "--set", "dish.diameter=90 cm", "--csv", "-", "--rays", "4096"));
        assertEquals(wanted, both);
        assertTrue(out(ProgramRun.reading(NARROW, "check", "-")).contains("standard input can be traced."));
    }

    @Test
    void whatIsComparedIsSetInEveryFile() throws Exception {
        String wide = file("wide.yaml", WIDE);
        String[] set = {"compare", wide, "-", "--set", "mirror.dust=50 %", "--csv", "-", "--rays", "4096", "--quiet"};
        String dusty = "mirror: {dust: 50 %}\n";
        String[] files = {"compare", file("wide.yaml", WIDE + dusty), "-", "--csv", "-", "--rays", "4096", "--quiet"};
        String wanted = out(ProgramRun.reading(NARROW + dusty, files));
        file("wide.yaml", WIDE);
        assertEquals(wanted, out(ProgramRun.reading(NARROW, set)));
    }

    /** The page shows the text from which all of it follows: with the value and with the comments. */
    @Test
    @Tag("slow")
    void theReportShowsTheTextWithTheValueSet() throws Exception {
        String page = out(ProgramRun.reading(
                WIDE, "report", "-", "--set", "stand.raise=2 cm", "--html", "-", "--rays", "4096", "--quiet"));
        assertTrue(page.contains("# the wide one\n"), "comment");
        assertTrue(page.contains("focal-length: 0.8 m, surface: {cut: smooth}}  # bowl\nstand:\n  raise: 2 cm"), page);
        assertTrue(page.contains("for instance scenario.yaml"), "name");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "dish.diametre=1 m | --set, dish.diametre: this key is not known; did you mean dish.diameter?",
                "dish=1 m | --set, dish: this key is not known; it is a section",
                "dish.diameter=1,5 m | --set, dish.diameter: 1,5 m has a comma",
                "dish.diameter=1 kg | --set, dish.diameter: 1 kg is not a length",
                "dish.diameter=1 km | --set, dish.diameter: 1 km",
                "mirror.dust=1 | --set, mirror.dust: 1 is out of range; allowed is 0 to below 1",
                "dish.surface.cut=bowl | --set, dish.surface.cut: bowl is not known here",
                "dish.diameter= | no value is given; write for instance --set dish.diameter=1.20 m",
                "dish.diameter | no value is given",
                "=1 m | --set: a key is missing; write for instance --set",
                "dish.hub=2 m | dish.hub: 2 m is not smaller than the dish"
            })
    void wrongKeysValuesAndRangesAreOneSentence(String assignment, String words) throws Exception {
        assertRefused(ProgramRun.of("trace", file("a.yaml", WIDE), "--set", assignment), words);
    }

    @Test
    void whatIsSaidTwiceIsRefused() throws Exception {
        String wide = file("a.yaml", WIDE);
        assertRefused(
                ProgramRun.of("trace", wide, "--set", "dish.hub=1 cm", "--set", "dish.hub=2 cm"),
                "--set, dish.hub: this key is set twice");
        assertRefused(
                ProgramRun.of("compare", wide, "--set", "dish.hub=1 cm", "--vary", "dish.hub=2 cm,3 cm"),
                "dish.hub is set and varied; leave --set out.");
        assertRefused(ProgramRun.reading(WIDE, "compare", "-", "-"), "standard input: this file is named twice");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "# nothing\n", "dish: {diameter: far}", "\t"})
    void whatIsWrongOnStandardInputIsToldWithItsName(String text) {
        ProgramRun run = ProgramRun.reading(text, "trace", "-");
        assertEquals(2, run.code());
        assertTrue(run.err().startsWith("simmerpoint: standard input"), run.err());
    }
}
