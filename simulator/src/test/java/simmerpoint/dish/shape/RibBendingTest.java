package simmerpoint.dish.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.cut.Smooth;

/** Bent ribs against ribs bent here step by step: their pieces keep their length and turn, with forces taken one by one. */
class RibBendingTest {
    private static final double RIM = 0.6;
    private static final double FOCAL = 0.65;
    private static final DishPlan PLAN = new DishPlan(2 * RIM, FOCAL, 0, 0, new Smooth());

    /** Pulled at its tip towards the axis: how far in the tip goes, and where the rib then lies; to the square of the error. */
    @Test
    void pulledInAtTheTip() {
        double pulled = 1e-4;
        RibChain bent = RibChain.straight(RIM, FOCAL).pulledIn(pulled);
        Deformation pull =
                ShapeErrors.NONE.with(ShapeError.RIM_PULLED_IN, pulled).deformation(PLAN, 1);
        assertEquals(pulled, RIM - bent.tip(), 2e-7);
        for (double r : new double[] {0.1, 0.2, 0.3, 0.4, 0.5, 0.59}) {
            double rise = bent.heightAt(r) - r * r / (4 * FOCAL);
            assertEquals(rise, pull.at(0, r).height(), 2e-6 * r + 0.004 * rise, "at " + r);
        }
        assertTrue(pull.at(0.5, 0).height() > pulled, "a little inwards is much upwards");
    }

    /** Weight that grows with the distance from the axis, pulling straight down, on ribs of the upper and lower edge and of a side. */
    @ParameterizedTest
    @ValueSource(doubles = {15, 45, 75})
    void hangingUnderItsWeight(double degrees) {
        double elevation = Math.toRadians(degrees);
        double hanging = 1e-4;
        RibChain plan = RibChain.straight(RIM, FOCAL);
        Deformation sag = ShapeErrors.NONE.with(ShapeError.DISH_SAG, hanging).deformation(PLAN, elevation);
        for (double angle : new double[] {0, Math.PI / 2, Math.PI}) {
            for (double r : new double[] {0.2, 0.4, 0.599}) {
                double expected = plan.hanging(hanging, elevation, angle).heightAt(r) - r * r / (4 * FOCAL);
                double found = sag.at(r * Math.cos(angle), r * Math.sin(angle)).height();
                assertEquals(expected, found, 0.004 * hanging, degrees + " degrees, " + angle + ", " + r);
            }
        }
    }

    /** On its back the tip of a shallow dish goes down by 11/120 of qL⁴/EI, its middle by the curve between (handbook of beams, derived). */
    @Test
    void onItsBackTheCurveIsThatOfABarUnderAGrowingLoad() {
        DishPlan shallow = new DishPlan(2 * RIM, 50, 0, 0, new Smooth());
        Deformation sag = ShapeErrors.NONE.with(ShapeError.DISH_SAG, 0.001).deformation(shallow, Math.PI / 2);
        assertEquals(-0.001, sag.at(RIM, 0).height(), 1e-12);
        double half = (1.0 / 24 - 1.0 / 96 + 1.0 / 3840) / (11.0 / 120);
        assertEquals(-0.001 * half, sag.at(0, RIM / 2).height(), 1e-7);
    }
}
