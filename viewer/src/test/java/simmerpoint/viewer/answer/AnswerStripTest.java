package simmerpoint.viewer.answer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import simmerpoint.answer.trace.TraceSummary;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.setup.Stand;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.study.trace.TraceStudy;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.FxThread;
import simmerpoint.viewer.Looking;
import simmerpoint.viewer.live.LiveState;
import simmerpoint.viewer.live.StudyState;
import simmerpoint.viewer.theme.Theme;

class AnswerStripTest {
    private final Scenario example = ScenarioReader.builtIn().scenario();
    private final TraceResult result =
            TraceStudy.run(example, TraceOptions.defaults().withRays(1 << 13), Progress.NONE);
    private final LiveState settled = new LiveState(1, example, Optional.of(result), 1, true, Optional.empty());

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void saysTheWordsOfTheAnswer(UnitSystem system) {
        TraceSummary summary = TraceSummary.of(result, system);
        StripText text = StripText.of(settled, StudyState.NOTHING_YET, 0, system);
        assertEquals(summary.watts(), text.watts());
        assertEquals(summary.largestLoss(), text.loss());
        assertEquals(summary.safety(), text.safety());
        assertTrue(text.water().contains(summary.water().orElseThrow().minutes()));
        assertTrue(text.certainty().startsWith(summary.certainty()));
        assertTrue(text.spoken().contains(summary.watts()) && text.spoken().contains(summary.safety()));
        assertFalse(text.earlier() || text.working());
    }

    @Test
    void figuresOfAnEarlierScenarioAreMarkedAsSuch() {
        Scenario moved = example.withStand(new Stand(0.1, 0, 0, 0));
        StripText text = StripText.of(
                new LiveState(2, moved, Optional.of(result), 0, true, Optional.of("Not so.")),
                StudyState.NOTHING_YET,
                0,
                UnitSystem.METRIC);
        assertTrue(text.earlier());
        assertEquals(Optional.of("Not so."), text.refusal());
        assertEquals("Not so.", text.spoken());
    }

    @Test
    void beforeTheFirstAnswerItSaysThatLightIsTraced() {
        StripText text = StripText.of(null, StudyState.NOTHING_YET, 0, UnitSystem.METRIC);
        assertTrue(text.working() && text.water().startsWith("Tracing"));
    }

    /** A scenario whose water may or may not boil has the longest words of all. */
    private static Scenario doubtful() throws ScenarioException {
        for (int beam = 300; beam < 900; beam += 10) {
            Scenario scenario = ScenarioReader.parse(
                            "doubtful",
                            "dish: {diameter: 1.0 m, focal-length: 0.6 m, surface: {cut: square-tiles, tile: 50 mm}}\n"
                                    + "sun: {beam: " + beam + " W/m\u00b2}\npan: {diameter: 22 cm, height: 12 cm}\n",
                            Path.of(""))
                    .scenario();
            TraceResult few = TraceStudy.run(scenario, TraceOptions.defaults().withRays(1024), Progress.NONE);
            if (TraceSummary.of(few, UnitSystem.METRIC)
                    .water()
                    .orElseThrow()
                    .minutes()
                    .startsWith("may or may not")) {
                return scenario;
            }
        }
        throw new AssertionError("no beam leaves it open whether the water boils");
    }

    @Test
    void nothingIsCutShortInTheNarrowestWindow() throws ScenarioException {
        Scenario windy = doubtful();
        for (Scenario scenario : List.of(example, windy)) {
            TraceResult traced = TraceStudy.run(scenario, TraceOptions.defaults(), Progress.NONE);
            LiveState state = new LiveState(1, scenario, Optional.of(traced), 1, true, Optional.empty());
            for (UnitSystem system : UnitSystem.values()) {
                int wrong = system == UnitSystem.INCH ? 12 : 0;
                List<String> cut = FxThread.get(() -> {
                    AnswerStrip strip = new AnswerStrip(
                            new SimpleObjectProperty<>(state),
                            new SimpleObjectProperty<>(StudyState.NOTHING_YET),
                            new SimpleObjectProperty<>(wrong),
                            new SimpleObjectProperty<>(system));
                    Scene scene = new Scene(strip, 1024, 160);
                    Theme.LIGHT.applyTo(scene);
                    scene.snapshot(null);
                    return Looking.cut(strip);
                });
                assertEquals(List.of(), cut);
            }
        }
    }

    @Test
    void followsWhatItIsGiven() {
        FxThread.run(() -> {
            SimpleObjectProperty<LiveState> state = new SimpleObjectProperty<>();
            SimpleObjectProperty<Integer> wrong = new SimpleObjectProperty<>(0);
            AnswerStrip strip = new AnswerStrip(
                    state,
                    new SimpleObjectProperty<>(StudyState.NOTHING_YET),
                    wrong,
                    new SimpleObjectProperty<>(UnitSystem.METRIC));
            new Scene(strip);
            Label watts = (Label) strip.lookup("#answer-watts");
            assertEquals("\u2013", watts.getText());
            state.set(settled);
            assertEquals(TraceSummary.of(result, UnitSystem.METRIC).watts(), watts.getText());
            assertTrue(strip.getAccessibleText().startsWith(watts.getText()));
            assertFalse(strip.getStyleClass().contains("stale"));
            wrong.set(1);
            assertTrue(strip.getStyleClass().contains("stale"));
            assertTrue(((Label) strip.lookup("#answer-water")).getText().startsWith("1 value is wrong"));
            wrong.set(0);
            assertFalse(strip.getStyleClass().contains("stale"));
        });
    }
}
