package simmerpoint.truth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import simmerpoint.dish.built.Mask;
import simmerpoint.dish.mirror.Mirror;
import simmerpoint.geometry.Direction;
import simmerpoint.sampling.Estimate;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.light.StoredLight;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.study.trace.TraceStudy;
import simmerpoint.target.Ledger;

/** Light that a mask over part of the mirror keeps off. */
class MaskTest {
    private static final double DIAMETER = 1.2;
    private static final TraceOptions OPTIONS =
            TraceOptions.defaults().withRays(1L << 16).withThreads(2);

    private static TraceResult trace(Scenario scenario, long seed) {
        return TraceStudy.run(scenario, OPTIONS.withSeed(seed), Progress.NONE);
    }

    /**
     * Closed form: of a full round dish a round mask of width w leaves 1 − w²/D², one of width b along the rim (1 − 2b/D)². A sun so small
     * that it is parallel falls on equal areas alike: 4 standard errors and what the lattice of the aperture may be off.
     */
    @ParameterizedTest
    @CsvSource({"MIDDLE, 0.5, 0.826389", "MIDDLE, 0.9, 0.4375", "RIM, 0.15, 0.5625", "RIM, 0.02, 0.934444"})
    void aRoundMaskLeavesTheRestOfTheArea(Mask.Part part, double width, double open) {
        Scenario bare = Scene.of(Scene.smooth(DIAMETER, 0.7, 0), Scene.disc(0.1))
                .with(Scene.POINT)
                .scenario();
        TraceResult masked = trace(bare.withMask(new Mask(part, width)), 3);
        double outline = Math.PI / 4 * DIAMETER * DIAMETER;
        assertEquals(outline, masked.outlineArea(), 1e-12);
        assertEquals(open * outline, masked.apertureArea(), 2e-4 * outline);
        Ledger ledger = masked.ledger();
        near(1000 * open * outline, ledger.incident(), 1e-6);
        near(1000 * (1 - open) * outline, ledger.covered(), 1e-6);
        assertEquals(ledger.gap().value(), ledger.covered().value(), 1e-9, "there is no other gap");
    }

    private static void near(double expected, Estimate found, double rounding) {
        assertEquals(expected, found.value(), 4 * found.standardError() + rounding);
    }

    private static Scenario cooker() {
        return Scene.of(Scene.rings(DIAMETER, 0.7, 0.1, 12, 4), Scene.pan(0.11, 0.11))
                .with(Mirror.plain(0.85, 6e-3))
                .elevation(Math.toRadians(50))
                .turn(0.01, 0.015, 0.05)
                .pullBack(0.03)
                .scenario();
    }

    /** What falls on one half and what falls on the other is all there is, each with rays of its own: 4 standard errors of the three. */
    @ParameterizedTest
    @CsvSource({"UPPER, LOWER", "LEFT, RIGHT"})
    void halvesAddUpToTheWhole(Mask.Part one, Mask.Part other) {
        Ledger whole = trace(cooker(), 1).ledger();
        Ledger without = trace(cooker().withMask(new Mask(one, 0)), 2).ledger();
        Ledger with = trace(cooker().withMask(new Mask(other, 0)), 3).ledger();
        addUp(whole.caught(), without.caught(), with.caught());
        addUp(whole.missed(), without.missed(), with.missed());
        addUp(whole.shaded(), without.shaded(), with.shaded());
        addUp(whole.incident(), without.covered(), with.covered());
    }

    private static void addUp(Estimate whole, Estimate one, Estimate other) {
        double error = Math.sqrt(Math.pow(whole.standardError(), 2)
                + Math.pow(one.standardError(), 2)
                + Math.pow(other.standardError(), 2));
        assertEquals(whole.value(), one.value() + other.value(), 4 * error);
    }

    /**
     * On a card near the mirror the light of the open half stays on its side. Closed form: the centroid of half a disc is 2D/3π from its
     * middle, and the card is a twelfth of the way to the focus; 0.001 for the depth of the dish.
     */
    @Test
    void upperIsTowardsTheUpperEdgeAndRightTowardsY() {
        double off = 11.0 / 12 * 2 / (3 * Math.PI);
        assertEquals(off, Math.hypot(middle(Mask.Part.UPPER)[0], middle(Mask.Part.UPPER)[1]), 1e-3);
        assertEquals(-1, Math.signum(middle(Mask.Part.UPPER)[0]));
        assertEquals(1, Math.signum(middle(Mask.Part.LOWER)[0]));
        assertEquals(-1, Math.signum(middle(Mask.Part.RIGHT)[1]));
        assertEquals(1, Math.signum(middle(Mask.Part.LEFT)[1]));
    }

    /** Where the light of the open half crosses a card near the mirror, in units of the dish's width. */
    private static double[] middle(Mask.Part part) {
        Scenario card = Scene.of(Scene.smooth(DIAMETER, 6, 0), Scene.disc(0.59))
                .with(Scene.POINT)
                .pullBack(-5.5)
                .scenario()
                .withMask(new Mask(part, 0));
        TraceResult result = trace(card, 5);
        return new double[] {
            result.spot().centroidX().value() / DIAMETER,
            result.spot().centroidY().value() / DIAMETER
        };
    }

    /** Stored light and a trace see the same mask, within 5 standard errors of both; light of another mask does not serve. */
    @ParameterizedTest
    @EnumSource(
            value = Mask.Part.class,
            names = {"RIM", "LOWER"})
    void everyWayToCatchLightSeesTheMask(Mask.Part part) {
        Scenario masked = cooker().withMask(new Mask(part, 0.2));
        Ledger traced = trace(masked, 1).ledger();
        StoredLight light = StoredLight.cast(masked, OPTIONS.withSeed(9), Progress.NONE);
        Ledger stored = light.catchFor(masked, Progress.NONE).ledger();
        same(traced.caught(), stored.caught());
        same(traced.covered(), stored.covered());
        same(traced.gap(), stored.gap());
        assertFalse(light.serves(cooker()));
    }

    private static void same(Estimate a, Estimate b) {
        assertEquals(a.value(), b.value(), 5 * Math.hypot(a.standardError(), b.standardError()) + 1e-9);
    }

    /** Flat rings are alike on both sides of the axis, so that a half is a half: 1e-3 for the lattice at their edges. */
    @Test
    void halfOfASymmetricDishIsHalfOfItsAperture() {
        Scenario upper = cooker().withMask(new Mask(Mask.Part.UPPER, 0));
        double whole = upper.dish().surface(Direction.Z).apertureArea();
        assertEquals(whole / 2, upper.built().surface(Direction.Z).apertureArea(), 1e-3 * whole);
    }
}
