package simmerpoint.truth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.mirror.Mirror;
import simmerpoint.pan.Plane;
import simmerpoint.scenario.Scenario;
import simmerpoint.setup.Stand;
import simmerpoint.study.pan.MoveStudy;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.study.trace.TraceStudy;
import simmerpoint.target.Ledger;

/**
 * All positions of a move from one cast of light against a trace of its own at each. The two share nothing but the cast:
 * the move adds stretches of positions and draws one error per ray, the trace lands every ray twice.
 */
class PanMovesTest {
    private static final int POSITIONS = 41;

    private static final TraceOptions OPTIONS =
            TraceOptions.defaults().withRays(1L << 14).withThreads(2);

    /** Every flaw but panel tilt, which goes with the seed: the traces have other seeds and must meet the same dish. */
    private static final Mirror MIRROR = new Mirror("own figures", 0.85, 0.02, 5e-3, 1e-3, 0.05, 0.02, 0.03, 0);

    private static Scene pan(double elevationDegrees) {
        DishPlan dish = Scene.rings(1.2, 0.8, 0.06, 24, 6);
        return Scene.of(dish, Scene.pan(0.12, 0.11)).with(MIRROR).elevation(Math.toRadians(elevationDegrees));
    }

    /**
     * Every eighth position, the first and the last among them; bounds: 5 standard errors of the difference and, for
     * light so rare that a few rays carry it, a ten-thousandth of all light.
     */
    private static void agrees(Scenario scenario, MoveStudy.Move move, double from, double to, int seed) {
        MoveStudy.Curve curve =
                MoveStudy.run(scenario, move, from, to, POSITIONS, OPTIONS.withSeed(seed), Progress.NONE);
        assertEquals(POSITIONS, curve.caught().size());
        for (int k = 0; k < POSITIONS; k += 8) {
            double offset = from + k * (to - from) / (POSITIONS - 1);
            assertEquals(offset, curve.offsets()[k], 1e-12);
            Scenario there = scenario.withStand(move.from(scenario.stand(), offset));
            TraceResult one = TraceStudy.run(there, OPTIONS.withSeed(seed + 1000L + k), Progress.NONE);
            Ledger l = one.ledger();
            String at = move + " " + offset + ": ";
            double rare = 1e-4 * l.incident().value();
            Check.same(at + "shaded", l.shaded(), curve.shaded().get(k), rare);
            Check.same(at + "underside", l.underside(), curve.underside().get(k), rare);
            Check.same(at + "wall", l.wall(), curve.wall().get(k), rare);
            Check.same(at + "lid", l.lid(), curve.lid().get(k), rare);
            Check.same(at + "caught", l.caught(), curve.caught().get(k), rare);
        }
    }

    /** At 15° much of the mirror stands above the pan's underside, so its light is judged position by position. */
    @ParameterizedTest
    @CsvSource({
        "PULL_BACK, -0.15, 0.4, 60", "SLIDE, -0.25, 0.25, 60", "RAISE, -0.2, 0.3, 60", "SIDE, -0.05, 0.3, 60",
        "PULL_BACK, -0.1, 0.3, 15", "SLIDE, -0.25, 0.25, 15", "RAISE, -0.3, 0.3, 15", "PULL_BACK, -0.1, 0.4, 90"
    })
    void fortyOnePositionsEqualSingleTraces(MoveStudy.Move move, double from, double to, double elevation) {
        agrees(pan(elevation).scenario(), move, from, to, 4100);
    }

    /** From a stand that is off already, under a sun that has drifted, with the dish turned. */
    @Test
    void movesStartFromTheScenariosStand() {
        Scene scene = pan(40).with(new Stand(0.05, -0.03, 0.02, 0.01))
                .turn(0.01, -0.005, 0.1)
                .drift(0.005, 0.01);
        agrees(scene.scenario(), MoveStudy.Move.SLIDE, -0.2, 0.2, 4200);
    }

    @ParameterizedTest
    @CsvSource({"PULL_BACK", "SLIDE", "SIDE"})
    void aBareDiscIsMovedAsWell(MoveStudy.Move move) {
        Scene scene = pan(50).with(new Plane(0.15, 0.4));
        agrees(scene.scenario(), move, -0.1, 0.3, 4300);
    }

    @Test
    void movesAreTheSameOnAnyNumberOfThreads() {
        MoveStudy.Curve one = MoveStudy.run(
                pan(30).scenario(), MoveStudy.Move.RAISE, 0, 0.2, 11, OPTIONS.withThreads(1), Progress.NONE);
        MoveStudy.Curve three = MoveStudy.run(
                pan(30).scenario(), MoveStudy.Move.RAISE, 0, 0.2, 11, OPTIONS.withThreads(3), Progress.NONE);
        assertEquals(one.caught(), three.caught());
        assertEquals(one.shaded(), three.shaded());
    }

    @Test
    void refusesMovesThatGoNowhere() {
        Scenario s = pan(30).scenario();
        for (List<Double> ends : List.of(List.of(0.1, 0.1), List.of(0.1, 0.0), List.of(0.0, Double.NaN))) {
            assertThrows(
                    IllegalArgumentException.class,
                    () -> MoveStudy.run(s, MoveStudy.Move.RAISE, ends.get(0), ends.get(1), 5, OPTIONS, Progress.NONE));
        }
        assertThrows(
                IllegalArgumentException.class,
                () -> MoveStudy.run(s, MoveStudy.Move.RAISE, 0, 1, 1, OPTIONS, Progress.NONE));
    }
}
