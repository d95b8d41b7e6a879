package simmerpoint.study.pan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import simmerpoint.sampling.Estimate;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.study.trace.BetterHeight;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceStudy;

class HeightSearchTest {
    private static final TraceOptions OPTIONS = TraceOptions.defaults();

    private static Scenario scenario(String name) throws Exception {
        return ScenarioReader.read(Path.of("../scenarios/" + name)).scenario();
    }

    private static Estimate watts(Scenario scenario) {
        return TraceStudy.run(scenario, OPTIONS, Progress.NONE).useful();
    }

    /** What it promises is what whole traces of both heights find, within 3 standard errors and 2 % for its few rays. */
    @Test
    void thePanGetsWhatIsPromised() throws Exception {
        Scenario yard = scenario("school-yard.yaml");
        BetterHeight found = HeightSearch.of(yard, OPTIONS, Progress.NONE).orElseThrow();
        Scenario there = PanStudy.moved(yard, MoveStudy.Move.RAISE, found.raisedMetres());
        Estimate before = watts(yard);
        Estimate after = watts(there);
        double error = Math.hypot(before.standardError(), after.standardError()) / before.value();
        assertTrue(found.raisedMetres() < 0, found::toString);
        assertEquals(after.value() / before.value() - 1, found.gainedShare(), 3 * error + 0.02);
    }

    @Test
    void whereThereIsLittleToGainNothingIsSaid() throws Exception {
        assertEquals(Optional.empty(), HeightSearch.of(scenario("tea-kitchen.yaml"), OPTIONS, Progress.NONE));
        Scenario yard = scenario("school-yard.yaml");
        double lower =
                HeightSearch.of(yard, OPTIONS, Progress.NONE).orElseThrow().raisedMetres();
        Scenario there = PanStudy.moved(yard, MoveStudy.Move.RAISE, lower);
        assertEquals(Optional.empty(), HeightSearch.of(there, OPTIONS, Progress.NONE));
    }
}
