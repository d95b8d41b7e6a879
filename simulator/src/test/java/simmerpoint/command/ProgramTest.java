package simmerpoint.command;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CancellationException;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import simmerpoint.report.SampleResults;
import simmerpoint.scenario.file.ExampleScenario;
import simmerpoint.study.trace.ImpossibleSetupException;
import simmerpoint.study.trace.TraceOptions;

class ProgramTest extends CommandRuns {
    private TraceOptions asked;

    @Override
    int run(String... args) {
        asked = null;
        return run(
                (scenario, options, progress) -> {
                    asked = options;
                    return SampleResults.tight();
                },
                false,
                args);
    }

    @Override
    void assertComplaint(String words) {
        super.assertComplaint(words);
        assertNull(asked, "traced all the same");
    }

    @Test
    void withoutArgumentsTheExampleIsTraced() {
        assertEquals(0, run());
        assertTrue(out().contains("W) go into the water."), out());
        assertEquals("", err());
        assertEquals(TraceOptions.DEFAULT_RAYS, asked.rays());
        assertEquals(TraceOptions.DEFAULT_SEED, asked.seed());
        assertEquals(0, asked.precision());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "trce | there is no command trce; did you mean trace?",
                "mine.yaml | to trace that file: simmerpoint trace mine.yaml",
                "banana | there is no command banana",
                "--json x | goes after a command: simmerpoint trace --json",
                "trace --ryas 5 | there is no option --ryas; did you mean --rays?",
                "trace --presicion=5% | did you mean --precision?",
                "trace --rays | --rays needs a value",
                "trace --rays --seed 3 | --rays needs a value",
                "trace --rays 2k --rays 3k | --rays is given twice",
                "trace --rays 1023 | from 1024 to 1e12",
                "trace --rays 1000001M | from 1024 to 1e12",
                "trace --rays 1.0001k | from 1024 to 1e12",
                "trace --rays 200,000 | from 1024 to 1e12",
                "trace --rays 1e13 | from 1024 to 1e12",
                "trace --rays 1e6k | from 1024 to 1e12",
                "trace --rays NaN | from 1024 to 1e12",
                "trace --rays -5 | from 1024 to 1e12",
                "trace --precision 0% | above 0 % and below 100 %",
                "trace --precision 100% | above 0 % and below 100 %",
                "trace --precision 0.2 | --precision: the % is missing: write 0.2%",
                "trace --precision NaN% | above 0 % and below 100 %",
                "trace --threads 0 | from 1 to 1024",
                "trace --threads 1025 | from 1 to 1024",
                "trace --seed 1.5 | whole number",
                "trace --seed 9223372036854775808 | whole number",
                "trace --units feet | metric or inch",
                "trace --width 39 | from 40 to 1000",
                "trace --peak-disc 5 | --peak-disc: ",
                "trace --peak-disc 0mm | above 0",
                "trace --json - --csv - | cannot both go to standard output",
                "trace --png - | a picture does not go to standard output",
                "trace --json= | needs the name of a file",
                "check a.yaml b.yaml | one argument too many: b.yaml",
                "trace a.yaml b.yaml | a.yaml: there is no such file",
                "trace - b.yaml | standard input (-) holds one scenario",
                "trace a.yaml b.yaml --csv x.csv | --csv holds one scenario",
                "trace a.yaml b.yaml --warming-png x.png | --warming-png holds one scenario",
                "safety a.yaml b.yaml --pdf x.pdf | --pdf holds one scenario",
                "check | a scenario file is missing",
                "trace no-such-file.yaml | no-such-file.yaml",
                "trace -x | there is no option -x",
            })
    void aWrongCommandLineIsOneSentenceAndTwo(String line, String words) {
        assertEquals(2, run(line.split(" ")));
        assertComplaint(words);
    }

    @Test
    void aWrongScenarioIsOneSentenceAndTwo() throws IOException {
        Path file = Files.writeString(folder.resolve("bad.yaml"), "title: no such thing as a mirror\nmirorr: {}\n");
        assertEquals(2, run("trace", file.toString()));
        assertComplaint(
                "bad.yaml, line 2, mirorr: this key is not known here; did you mean mirror? (and 1 problem more; "
                        + "simmerpoint check tells all)");
    }

    @Test
    void checkTellsEveryProblemOfAScenarioOnALineOfItsOwn() throws IOException {
        String file = write("bad.yaml", "title: x\ndish:\n  diameter: 1.2 m\n  focal-lenght: 0.8 m\n");
        assertEquals(2, run("check", file));
        assertEquals(2, err().lines().count(), err());
        assertTrue(err().lines().allMatch(line -> line.startsWith("simmerpoint: " + file + ", line ")), err());
        assertTrue(err().lines().findFirst().orElseThrow().contains("did you mean focal-length?"), err());
    }

    @ParameterizedTest
    @CsvSource({
        "200000, 200000",
        "200k, 200000",
        "1M, 1000000",
        "1.5k, 1500",
        "1024, 1024",
        "1e6, 1000000",
        "2.5E+3, 2500",
        "1000G, 1000000000000"
    })
    void raysMayBeAbbreviated(String text, long rays) {
        assertEquals(0, run("trace", "--rays", text));
        assertEquals(rays, asked.rays());
    }

    @Test
    void optionsReachTheTracer() {
        assertEquals(0, run("trace", "--precision", "0.2%", "--seed=-7", "--threads", "3", "--peak-disc", "5 mm"));
        assertEquals(0.002, asked.precision(), 1e-15);
        assertEquals(-7, asked.seed());
        assertEquals(3, asked.threads());
        assertEquals(0.005, asked.peakDiscRadius(), 1e-15);
        assertTrue(asked.rays() > TraceOptions.DEFAULT_RAYS, "a precision needs room");
        assertEquals(0, run("trace", "--precision", "0.2%", "--rays", "4k"));
        assertEquals(4000, asked.rays());
    }

    @Test
    void filesAreWrittenBesideTheAnswer() throws IOException {
        Path json = folder.resolve("a.json");
        Path csv = folder.resolve("a.csv");
        Path png = folder.resolve("a.png");
        assertEquals(
                0, run("trace", "--full", "--json", json.toString(), "--csv", csv.toString(), "--png", png.toString()));
        assertNotNull(new ObjectMapper().readTree(json.toFile()).get("caught_power_W"));
        assertTrue(Files.readString(csv).contains("surface,x_m,y_m,flux_W_m2,flux_W_m2_se"));
        assertEquals(1400, ImageIO.read(png.toFile()).getWidth());
        assertTrue(out().contains("What the pan gets"));
    }

    @Test
    void jsonOnStandardOutputIsAlone() throws IOException {
        assertEquals(0, run("trace", "--json", "-"));
        assertEquals(1, new ObjectMapper().readTree(out()).get("seed").asInt());
        assertTrue(out().startsWith("{") && out().endsWith("}\n"), out());
        assertEquals(0, run("trace", "--csv", "-"));
        assertTrue(out().startsWith("# Simmerpoint"), out().substring(0, 20));
    }

    @ParameterizedTest
    @ValueSource(strings = {"--json", "--csv", "--png"})
    void aMissingFolderIsFoundBeforeTracing(String option) {
        Path file = folder.resolve("none").resolve("out");
        assertEquals(2, run("trace", option, file.toString()));
        assertComplaint(option + ": ");
        assertTrue(err().contains("there is no folder " + folder.resolve("none")), err());
        assertFalse(Files.exists(folder.resolve("none")));
    }

    @Test
    void theNameOfAFileSteersNoTerminal() {
        assertEquals(2, run("check", "a\u001b[31mb\u202e.yaml"));
        assertTrue(err().chars().noneMatch(c -> c == 0x1b || c == 0x202e), err());
    }

    /** Meshes and sun tables: nobody could make them anew. */
    @Test
    void whatTheScenarioReadsIsNeverWrittenOver() throws IOException {
        Path mesh = Files.copy(Path.of("../scenarios/triangle-dish.obj"), folder.resolve("triangle-dish.obj"));
        Path scenario = Files.copy(Path.of("../scenarios/triangle-dish.yaml"), folder.resolve("dish.yaml"));
        byte[] before = Files.readAllBytes(mesh);
        Path link = Files.createSymbolicLink(folder.resolve("link.obj"), mesh);
        for (String name : List.of(mesh.toString(), link.toString())) {
            assertEquals(2, run("trace", scenario.toString(), "--rays", "1024", "--csv", name));
            assertComplaint("belongs to the scenario and is read by it");
            assertEquals(2, run("report", scenario.toString(), "--rays", "1024", "--html", name));
            assertComplaint("belongs to the scenario and is read by it");
        }
        assertArrayEquals(before, Files.readAllBytes(mesh));
    }

    @Test
    void oneFileForTwoThingsIsRefused() throws IOException {
        String file = folder.resolve("a").toString();
        String again = folder.resolve("x").resolve("..").resolve("a").toString();
        assertEquals(2, run("trace", "--json", file, "--csv", again));
        assertComplaint("one and the same file");
        Path scenario = Files.writeString(folder.resolve("s.yaml"), ExampleScenario.text());
        assertEquals(2, run("trace", scenario.toString(), "--json", scenario.toString()));
        assertComplaint("is the scenario itself");
        assertEquals(ExampleScenario.text(), Files.readString(scenario));
        assertEquals(2, run("trace", "--json", folder.toString()));
        assertComplaint("it is a folder");
    }

    @Test
    void aFailureWhileRunningIsOneSentenceAndOneAndWritesNothing() {
        Path file = folder.resolve("a.json");
        Tracer broken = (scenario, options, progress) -> {
            throw new IllegalStateException("two lines\nof trouble");
        };
        assertEquals(1, run(broken, false, "trace", "--json", file.toString()));
        assertComplaint("IllegalStateException: two lines of trouble");
        assertFalse(Files.exists(file));
    }

    @Test
    void thingsThatCannotStandAreTheScenariosFault() throws IOException {
        Path file = Files.writeString(folder.resolve("s.yaml"), ExampleScenario.text());
        Tracer impossible = (scenario, options, progress) -> {
            throw new ImpossibleSetupException("the pan would cut 12 mm into the mirror");
        };
        assertEquals(2, run(impossible, false, "trace", file.toString(), "--quiet"));
        assertComplaint("s.yaml: the pan would cut 12 mm into the mirror.");
    }

    @Test
    void stoppedWorkSaysSo() {
        Tracer stopped = (scenario, options, progress) -> {
            throw new CancellationException();
        };
        assertEquals(1, run(stopped, false, "trace"));
        assertComplaint("stopped");
    }

    @Test
    void progressShowsOnlyOnAConsoleAndIsErased() {
        Tracer slow = (scenario, options, progress) -> {
            long end = System.nanoTime() + 700_000_000L;
            while (System.nanoTime() < end) {
                assertTrue(progress.report(0.42, "half way"));
            }
            return SampleResults.tight();
        };
        assertEquals(0, run(slow, true, "trace"));
        // The trace is the first half of the work; doubts and aiming come after it.
        assertTrue(err().contains("\rtracing: 21 % half way"), err());
        assertTrue(err().endsWith(" \r"), "not erased");
        assertFalse(out().contains("tracing:"));
        assertEquals(0, run(slow, false, "trace"));
        assertEquals("", err());
        assertEquals(0, run(slow, true, "trace", "--quiet"));
        assertEquals("", err());
        assertEquals(0, run(slow, true, "trace", "--no-progress"));
        assertEquals("", err());
    }

    @Test
    void shortWorkShowsNoProgress() {
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        PrintStream stream = new PrintStream(err, true, StandardCharsets.UTF_8);
        Terminal terminal = new Terminal(InputStream.nullInputStream(), stream, stream, true, false, 0);
        try (ProgressLine line = new ProgressLine(terminal, false)) {
            assertTrue(line.report(0.5, "at once"));
        }
        assertEquals("", err.toString(StandardCharsets.UTF_8));
    }

    @Test
    void narrowWindowsAreKeptTo() {
        for (String command : new String[] {"trace", "materials"}) {
            assertEquals(0, run(command, "--width", "60"));
            assertTrue(out().lines().allMatch(line -> line.length() <= 60), out());
        }
    }

    @Test
    void aPlaceAloneIsCheckedButNotTraced() throws IOException {
        Path file = Files.writeString(
                folder.resolve("place.yaml"),
                "dish: {diameter: 1.2 m, focal-length: 0.8 m, surface: {cut: smooth}}\n"
                        + "place: {latitude: 47.3°, longitude: 8.5°, zone: UTC+1}\n");
        assertEquals(0, run("check", file.toString(), "--width", "300"));
        assertTrue(out().contains("Good for days and years"), out());
        assertEquals(2, run("trace", file.toString()));
        assertComplaint("place.yaml, line 2, place: a place alone does not say where the sun stands");
    }

    @Test
    void exampleIsAFileToStartFrom() throws IOException {
        assertEquals(0, run("example"));
        assertEquals(ExampleScenario.text(), out());
        Path file = folder.resolve("mine.yaml");
        Files.write(file, bytes());
        assertEquals(0, run("check", file.toString()));
        assertTrue(out().contains("mine.yaml can be traced."), out());
        assertEquals(0, run("trace", "--full", file.toString(), "--units", "inch"));
        assertTrue(out().contains("of the middle") && out().contains(" in "), out());
    }

    @Test
    void anEmptyNameIsNoFile() {
        assertEquals(2, run("check", ""));
        assertComplaint("no file named");
    }

    @Test
    void aNameThatCannotBeAFilesIsToldPlainly() {
        assertEquals(2, run("check", "a\u0000b.yaml"));
        assertComplaint("letters that cannot stand in a file name");
        assertFalse(err().contains("Exception"), err());
    }

    @Test
    void materialsNameTheirSources() {
        assertEquals(0, run("materials"));
        assertTrue(out().contains("aluminised polyester film") && !out().contains("[1]"), out());
        assertEquals(0, run("materials", "--full"));
        assertTrue(out().contains("aluminised polyester film") && out().contains("black enamel"), out());
        assertTrue(out().contains("\n[1] ") && out().indexOf("black enamel") < out().indexOf("\n[1] "), out());
    }

    @Test
    void completionIsAScript() {
        assertEquals(0, run("completion"));
        assertTrue(out().startsWith("#!") && out().contains("--precision"), out().substring(0, 50));
    }

    @Test
    void helpAndVersionGoToStandardOutput() {
        for (String line : new String[] {"--help", "trace --help", "help trace", "check -h", "--version", "trace -V"}) {
            assertEquals(0, run(line.split(" ")), line);
            assertFalse(out().isBlank(), line);
            assertEquals("", err(), line);
        }
        assertTrue(out().matches("Simmerpoint [0-9]+\\.[0-9]+.*\\R"), out());
    }

    @Test
    void filesOfArgumentsAreNotExpanded() throws IOException {
        Path file = Files.writeString(folder.resolve("args"), "--help");
        assertEquals(2, run("trace", "@" + file));
        assertComplaint("args");
    }
}
