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
    private static final int STEPS = 6000;
    private static final DishPlan PLAN = new DishPlan(2 * RIM, FOCAL, 0, 0, new Smooth());

    /** A rib as a chain of straight pieces; places at their ends. */
    private static final class Chain {
        final double[] x = new double[STEPS + 1];
        final double[] z = new double[STEPS + 1];

        Chain() {
            for (int i = 0; i <= STEPS; i++) {
                x[i] = RIM * i / STEPS;
                z[i] = x[i] * x[i] / (4 * FOCAL);
            }
        }

        /** The same, each piece turned by so many rad and laid on the end of the one before. */
        Chain turned(double[] by) {
            Chain out = new Chain();
            for (int i = 0; i < STEPS; i++) {
                double dx = x[i + 1] - x[i];
                double dz = z[i + 1] - z[i];
                out.x[i + 1] = out.x[i] + dx * Math.cos(by[i]) - dz * Math.sin(by[i]);
                out.z[i + 1] = out.z[i] + dx * Math.sin(by[i]) + dz * Math.cos(by[i]);
            }
            return out;
        }

        double heightAt(double r) {
            int i = 0;
            while (i < STEPS - 1 && x[i + 1] < r) {
                i++;
            }
            return z[i] + (z[i + 1] - z[i]) * (r - x[i]) / (x[i + 1] - x[i]);
        }

        /** Turns of a bar of stiffness 1, clamped at its first end, under forces at its joints; moments lever by lever. */
        double[] bent(double[] forceX, double[] forceZ) {
            double[] moment = new double[STEPS + 1];
            double fx = 0;
            double fz = 0;
            for (int i = STEPS - 1; i >= 0; i--) {
                fx += forceX[i + 1];
                fz += forceZ[i + 1];
                moment[i] = moment[i + 1] + fz * (x[i + 1] - x[i]) - fx * (z[i + 1] - z[i]);
            }
            double[] turn = new double[STEPS];
            double all = 0;
            for (int i = 0; i < STEPS; i++) {
                all += 0.5 * (moment[i] + moment[i + 1]) * (x[i + 1] - x[i]);
                turn[i] = all;
            }
            return turn;
        }
    }

    private static double[] times(double[] turn, double factor) {
        double[] out = turn.clone();
        for (int i = 0; i < out.length; i++) {
            out[i] *= factor;
        }
        return out;
    }

    /** Pulled at its tip towards the axis: how far in the tip goes, and where the rib then lies; to the square of the error. */
    @Test
    void pulledInAtTheTip() {
        double pulled = 1e-4;
        Chain plan = new Chain();
        double[] in = new double[STEPS + 1];
        in[STEPS] = -1;
        double[] turn = plan.bent(in, new double[STEPS + 1]);
        Chain little = plan.turned(times(turn, 1e-6));
        Chain bent = plan.turned(times(turn, 1e-6 * pulled / (RIM - little.x[STEPS])));
        Deformation pull =
                ShapeErrors.NONE.with(ShapeError.RIM_PULLED_IN, pulled).deformation(PLAN, 1);
        assertEquals(pulled, RIM - bent.x[STEPS], 2e-7);
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
        double onItsBack = rise(Math.PI / 2, 0, RIM);
        Deformation sag = ShapeErrors.NONE.with(ShapeError.DISH_SAG, hanging).deformation(PLAN, elevation);
        for (double angle : new double[] {0, Math.PI / 2, Math.PI}) {
            for (double r : new double[] {0.2, 0.4, 0.599}) {
                double expected = -hanging * rise(elevation, angle, r) / onItsBack;
                double found = sag.at(r * Math.cos(angle), r * Math.sin(angle)).height();
                assertEquals(expected, found, 0.004 * hanging, degrees + " degrees, " + angle + ", " + r);
            }
        }
    }

    /** How far a rib at some angle from the upper edge rises, to a factor. */
    private static double rise(double elevation, double angle, double r) {
        Chain plan = new Chain();
        double[] fx = new double[STEPS + 1];
        double[] fz = new double[STEPS + 1];
        for (int i = 0; i <= STEPS; i++) {
            fx[i] = -Math.cos(elevation) * Math.cos(angle) * plan.x[i] / STEPS;
            fz[i] = -Math.sin(elevation) * plan.x[i] / STEPS;
        }
        Chain bent = plan.turned(times(plan.bent(fx, fz), 1e-4));
        return bent.heightAt(r) - r * r / (4 * FOCAL);
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
