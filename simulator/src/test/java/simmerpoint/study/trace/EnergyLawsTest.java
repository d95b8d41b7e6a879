package simmerpoint.study.trace;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collection;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import simmerpoint.dish.MirrorSurface;
import simmerpoint.frozen.OddScenes;
import simmerpoint.sampling.Estimate;
import simmerpoint.scenario.Scenario;
import simmerpoint.setup.Aim;
import simmerpoint.study.Cookers;
import simmerpoint.target.Ledger;

/** Light that came from nowhere is noticed after a trace, whichever figure it shows in. */
class EnergyLawsTest {
    private static final Scenario USUAL = Cookers.usual(Cookers.HILLSIDE, Cookers.COUNTRY);
    private static final MirrorSurface SURFACE =
            USUAL.built().surface(USUAL.setup().sunInDish());
    private static final Ledger TRUE = TraceStudy.run(
                    USUAL, TraceOptions.defaults().withRays(4096).withThreads(1), Progress.NONE)
            .ledger();

    @Test
    void whatWasTracedHolds() {
        assertDoesNotThrow(() -> EnergyLaws.check(TRUE, SURFACE, USUAL));
    }

    /** Odd dishes of every cut, some with a sun far off the axis, and panels that stand over one another. */
    @ParameterizedTest
    @MethodSource("scenes")
    void noOddDishBreaksThem(Scenario odd) {
        for (double up : new double[] {-25, 0, 25}) {
            Scenario turned = odd.withAim(odd.aim().plusTurn(Math.toRadians(up), 0));
            assertDoesNotThrow(() -> TraceStudy.run(
                    turned, TraceOptions.defaults().withRays(4096).withThreads(1), Progress.NONE));
        }
    }

    static Collection<Scenario> scenes() {
        return OddScenes.all().values();
    }

    @Test
    void lightThatIsCountedTwiceIsNoticed() {
        assertBroken(with(twice(TRUE.outline()), TRUE.caught(), TRUE.absorbed()), "outline");
        assertBroken(with(TRUE.outline(), twice(TRUE.caught()), TRUE.absorbed()), "caught");
        assertBroken(with(TRUE.outline(), TRUE.caught(), twice(TRUE.absorbed())), "taken up");
    }

    /** The bound covers every slope of the dish and every sun as far off the axis: tried one by one in a plane. */
    @Test
    void noSlopeMeetsMoreSunThanTheBoundSays() {
        double turn = Math.toRadians(20);
        Scenario turned = USUAL.withAim(Aim.PERFECT.withTurn(turn, 0));
        double most = 0;
        for (double slope = 0; slope <= SURFACE.steepestSlope(); slope += 0.001) {
            most = Math.max(most, Math.cos(slope - turn) / Math.cos(slope));
        }
        double bound = EnergyLaws.mostGain(SURFACE, turned);
        assertTrue(bound >= most, bound + " for " + most);
        assertEquals(most, bound, 0.12);
    }

    private static void assertBroken(Ledger ledger, String figure) {
        IllegalStateException e =
                assertThrows(IllegalStateException.class, () -> EnergyLaws.check(ledger, SURFACE, USUAL));
        assertTrue(e.getMessage().contains(figure), e.getMessage());
    }

    private static Estimate twice(Estimate figure) {
        return new Estimate(2 * figure.value(), figure.standardError());
    }

    private static Ledger with(Estimate outline, Estimate caught, Estimate absorbed) {
        return new Ledger(
                outline,
                TRUE.gap(),
                TRUE.incident(),
                TRUE.shaded(),
                TRUE.mirrorLoss(),
                TRUE.scattered(),
                TRUE.reflected(),
                TRUE.missed(),
                TRUE.underside(),
                TRUE.wall(),
                TRUE.lid(),
                caught,
                TRUE.directOnPan(),
                absorbed,
                TRUE.stopped(),
                TRUE.covered(),
                List.of());
    }
}
