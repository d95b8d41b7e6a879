package simmerpoint.viewer.understand;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import simmerpoint.answer.trial.TrialAnswer;
import simmerpoint.input.InputFileException;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.trial.TrialStudy;
import simmerpoint.trial.log.LogReader;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.live.StudyRun;

/** Logs held against a design, without a window. */
class TrialModelTest {
    private static final TraceOptions FEW = TraceOptions.defaults().withRays(1 << 12);
    private static final Path SCENARIOS = Path.of("..", "scenarios");
    private static final Path MONDAY = SCENARIOS.resolve("garden-logs").resolve("monday.csv");

    @TempDir
    Path folder;

    private final ExecutorService thread = Executors.newSingleThreadExecutor();
    private CheckedScenario garden;
    private TrialModel model;

    @BeforeEach
    void open() throws Exception {
        garden = ScenarioReader.read(SCENARIOS.resolve("garden-strips.yaml"));
        model = new TrialModel(FEW, 0, thread);
    }

    @AfterEach
    void close() {
        model.close();
        thread.shutdownNow();
    }

    /** What comes of an action that begins the study. */
    private StudyRun<LogsResult> ended(Runnable action) throws Exception {
        CompletableFuture<StudyRun<LogsResult>> end = new CompletableFuture<>();
        thread.execute(() -> {
            model.study().stateProperty().addListener((value, before, now) -> {
                if (!now.working() && (now.result().isPresent() || now.refusal().isPresent())) {
                    end.complete(now);
                }
            });
            action.run();
        });
        return end.get(60, TimeUnit.SECONDS);
    }

    private StudyRun<LogsResult> opened(CheckedScenario design, Path... logs) throws Exception {
        return ended(() -> model.open(List.of(logs), design));
    }

    @Test
    void logsOfOneCookerGiveTheAnswerOfTheCommand() throws Exception {
        assertFalse(model.hasLogs());
        LogsResult found = opened(garden, MONDAY).result().orElseThrow();
        assertTrue(model.hasLogs());
        var expected = TrialStudy.run(garden, List.of(LogReader.read(MONDAY)), FEW, Progress.NONE);
        assertEquals(TrialAnswer.of(expected, UnitSystem.METRIC).sections(), found.sections(UnitSystem.METRIC));
        assertEquals(1, found.drawings(UnitSystem.METRIC).size());
    }

    /** A dull mirror is the likeliest flaw of that day, so the cooker as built has less reflectance than planned. */
    @Test
    void theCookerAsBuiltIsTheSameFromItsChangesAndFromItsText() throws Exception {
        LogsResult.Built built =
                opened(garden, MONDAY).result().orElseThrow().built().orElseThrow();
        assertTrue(built.scenario().scenario().mirror().reflectance()
                < garden.scenario().mirror().reflectance());
        assertEquals(
                built.scenario().values().typed(),
                garden.with(built.changes()).values().typed());
        assertEquals(
                built.scenario().values().typed(),
                ScenarioReader.parse("built", built.text(), folder).values().typed());
    }

    @Test
    void aFolderIsAClassOfCookers() throws Exception {
        LogsResult found =
                opened(garden, SCENARIOS.resolve("garden-class")).result().orElseThrow();
        LogsResult.Cookers all = assertInstanceOf(LogsResult.Cookers.class, found);
        assertEquals(
                List.of("heron", "kite", "otter", "perch", "swift"),
                all.all().cookers().stream().map(c -> c.name()).sorted().toList());
        assertEquals(Optional.empty(), found.built());
    }

    /** A bad log is refused in the words of the command, a mended one is read again. */
    @Test
    void aBadLogIsNamedWithItsLineAndCanBeMended() throws Exception {
        Path log = folder.resolve("log.csv");
        Files.writeString(log, "time_min,water_C\n0,20\n10,34;5\n");
        String sentence = opened(garden, log).refusal().orElseThrow();
        assertTrue(sentence.startsWith(log + ", line 3: "), sentence);
        assertEquals(
                assertThrows(InputFileException.class, () -> LogReader.read(log))
                        .getMessage(),
                sentence);
        Files.copy(MONDAY, log, java.nio.file.StandardCopyOption.REPLACE_EXISTING);
        assertTrue(ended(() -> model.study().startAnew(garden)).result().isPresent());
    }

    /** What was found from other logs does not stand beside the refusal of these. */
    @Test
    void aRefusedLogLeavesNothingOfTheLogsBefore() throws Exception {
        opened(garden, MONDAY);
        StudyRun<LogsResult> now = opened(garden, folder);
        assertEquals(Optional.of(folder + ": no log in this folder; logs are called something.csv."), now.refusal());
        assertEquals(Optional.empty(), now.result());
    }

    @Test
    void aBareDiscHeatsNoWater() throws Exception {
        CheckedScenario disc = ScenarioReader.parse(
                "disc",
                "dish: {diameter: 1 m, focal-length: 60 cm, surface: {cut: smooth}}\nplane: {disc: 20 cm}\nsun: {elevation: 50°, beam: 850 W/m²}\n",
                folder);
        assertEquals(
                Optional.of("A trial heats water in a pan, and this design has a bare disc."),
                opened(disc, MONDAY).refusal());
    }
}
