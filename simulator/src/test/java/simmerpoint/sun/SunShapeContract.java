package simmerpoint.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.Test;

/** What every sun shape keeps. Each shape has a subclass that says which shape and adds its own figures. */
abstract class SunShapeContract {
    private static final int STEPS = 10;

    private static final double[] SHARES = {
        1e-15, 1e-9, 1e-4, 0.01, 0.1, 0.25, 0.5, 0.75, 0.9, 0.95, 0.99, 0.999, 1 - 1e-6, 1 - 1e-9, 1 - 1e-13
    };

    /** The shape under test. */
    abstract SunShape shape();

    /** Its radiance over the centre's, written out a second time. */
    abstract double radianceByHand(double angle);

    /** Angles where the radiance has a corner or a step, ascending, 0 and the largest angle included. */
    double[] corners() {
        return new double[] {0, shape().largestAngle()};
    }

    /** Seed of the draws. */
    abstract long seed();

    /** Root mean square angle per axis, rad, by Commons Math's quadrature of the density between {@code corners}. */
    static double sigma(SunShape shape, double... corners) {
        double square = 0;
        double from = 0;
        for (double to : corners.length == 0 ? new double[] {shape.largestAngle()} : corners) {
            for (int k = 0; k < STEPS; k++) {
                double low = from + (to - from) * k / STEPS;
                double high = from + (to - from) * (k + 1) / STEPS;
                square += integral(x -> Math.pow(x / shape.largestAngle(), 2) * shape.density(x), low, high);
            }
            from = to;
        }
        return shape.largestAngle() * Math.sqrt(square / 2);
    }

    @Test
    void cumulativeUndoesInverse() {
        SunShape shape = shape();
        for (double u : SHARES) {
            assertEquals(u, shape.cumulative(shape.inverse(u)), 1e-12 * u + 1e-15, "u " + u);
        }
        for (int i = 0; i <= 1000; i++) {
            double u = i / 1000.0;
            assertEquals(u, shape.cumulative(shape.inverse(u)), 1e-12, "u " + u);
        }
    }

    @Test
    void inverseUndoesCumulative() {
        SunShape shape = shape();
        for (int i = 1; i < 400; i++) {
            double angle = shape.largestAngle() * i / 400;
            double steep = shape.density(angle) * shape.largestAngle();
            if (steep > 1e-3) {
                double back = shape.inverse(shape.cumulative(angle));
                assertEquals(angle, back, 1e-10 * shape.largestAngle(), "angle " + angle);
            }
        }
    }

    @Test
    void inverseRisesFromTheCentreToTheLargestAngle() {
        SunShape shape = shape();
        assertEquals(0, shape.inverse(0));
        assertEquals(shape.largestAngle(), shape.inverse(1));
        double before = 0;
        for (int i = 1; i <= 5000; i++) {
            double angle = shape.inverse(i / 5000.0);
            assertTrue(angle >= before && angle <= shape.largestAngle(), "u " + i / 5000.0);
            before = angle;
        }
    }

    @Test
    void densityIsTheDerivativeOfCumulative() {
        SunShape shape = shape();
        double h = 1e-5 * shape.largestAngle();
        for (int i = 1; i < 300; i++) {
            double angle = shape.largestAngle() * i / 300;
            if (Arrays.stream(corners()).allMatch(c -> Math.abs(c - angle) > 2 * h)) {
                double slope = (shape.cumulative(angle + h) - shape.cumulative(angle - h)) / (2 * h);
                double scale = 1 / shape.largestAngle();
                assertEquals(slope, shape.density(angle), 1e-6 * slope + 1e-9 * scale, "angle " + angle);
            }
        }
    }

    /** Quadrature of Commons Math from corner to corner, in 10 steps each. */
    @Test
    void cumulativeIsTheIntegralOfDensity() {
        SunShape shape = shape();
        double sum = 0;
        for (double[] step : steps(STEPS)) {
            sum += integral(shape::density, step[0], step[1]);
            assertEquals(sum, shape.cumulative(step[1]), 1e-10, "angle " + step[1]);
        }
        assertEquals(1, sum, 1e-10);
    }

    @Test
    void radianceMeetsTheFormulaWrittenAgain() {
        SunShape shape = shape();
        assertEquals(1, shape.relativeRadiance(0), 1e-15);
        for (int i = 0; i <= 777; i++) {
            double angle = shape.largestAngle() * i / 777.5;
            assertEquals(radianceByHand(angle), shape.relativeRadiance(angle), 1e-12, "angle " + angle);
        }
    }

    @Test
    void darkBeyondTheLargestAngle() {
        SunShape shape = shape();
        double beyond = Math.nextUp(shape.largestAngle());
        for (double angle : new double[] {beyond, 0.5, -1e-9}) {
            assertEquals(0, shape.relativeRadiance(angle), "angle " + angle);
            assertEquals(0, shape.density(angle), 1e-300, "angle " + angle);
        }
        assertEquals(1, shape.cumulative(beyond));
        assertEquals(0, shape.cumulative(-1e-9), 1e-300);
    }

    /**
     * Chi-square of 100,000 draws in 50 cells of equal expected count, whose borders come from quadrature of the radiance
     * by hand with the weight sin θ cos θ. Upper bound 85.3506 and, for draws too good to be random, lower bound 23.9828
     * (chi-square with 49 degrees of freedom, 0.001 at either end): false-alarm rate 0.002, seed fixed.
     */
    @Test
    void drawsFollowTheRadiance() {
        SunShape shape = shape();
        int cells = 50;
        int draws = 100_000;
        double[] counts = new double[cells];
        DoubleUnaryOperator share = shareByHand(2000);
        SplittableRandom random = new SplittableRandom(seed());
        for (int i = 0; i < draws; i++) {
            double u = share.applyAsDouble(shape.inverse(random.nextDouble()));
            counts[Math.min(cells - 1, (int) (u * cells))]++;
        }
        double expected = draws / (double) cells;
        double chiSquare = Arrays.stream(counts)
                .map(c -> (c - expected) * (c - expected) / expected)
                .sum();
        String seen = "chi-square " + chiSquare + ", expected " + expected + " each, counts " + Arrays.toString(counts);
        assertTrue(chiSquare < 85.3506 && chiSquare > 23.9828, seen);
    }

    @Test
    void inverseRefusesWhatIsNoShare() {
        for (double u : new double[] {-1e-12, 1.0000001, Double.NaN}) {
            assertThrows(IllegalArgumentException.class, () -> shape().inverse(u));
        }
    }

    @Test
    void saysWhatItIs() {
        String text = shape().describe();
        assertTrue(text.length() > 10 && !text.contains("null") && !text.contains("@"), text);
    }

    /** The tracer fills such a table when it starts. Seldom above 1 ms; the bound leaves room for a busy machine. */
    @Test
    void fillsATableFast() {
        SunShape shape = shape();
        long best = Long.MAX_VALUE;
        double sum = 0;
        for (int run = 0; run < 30; run++) {
            long start = System.nanoTime();
            for (int i = 0; i < 4096; i++) {
                sum += shape.inverse(i / 4095.0);
            }
            best = Math.min(best, System.nanoTime() - start);
        }
        assertTrue(sum > 0);
        assertTrue(best < 20_000_000, best + " ns");
    }

    /** Share of the light within an angle, by Simpson's rule on {@code n} intervals of every stretch between corners. */
    private DoubleUnaryOperator shareByHand(int n) {
        double[][] steps = steps(n);
        double[] sums = new double[steps.length + 1];
        for (int i = 0; i < steps.length; i++) {
            sums[i + 1] = sums[i] + simpson(steps[i][0], steps[i][1]);
        }
        double[] starts = Arrays.stream(steps).mapToDouble(s -> s[0]).toArray();
        return angle -> {
            int found = Arrays.binarySearch(starts, angle);
            int i = found >= 0 ? found : -found - 2;
            return (sums[i] + simpson(steps[i][0], angle)) / sums[steps.length];
        };
    }

    private double simpson(double from, double to) {
        // Inside by a hair, so that a step of the radiance at a corner is taken from the right side.
        double hair = 1e-9 * (to - from);
        return (to - from) / 6 * (weighted(from + hair) + 4 * weighted(0.5 * (from + to)) + weighted(to - hair));
    }

    private double weighted(double angle) {
        return radianceByHand(angle) * Math.sin(angle) * Math.cos(angle);
    }

    private double[][] steps(int n) {
        double[] corners = corners();
        double[][] steps = new double[(corners.length - 1) * n][];
        for (int i = 0; i < steps.length; i++) {
            double from = corners[i / n];
            double width = corners[i / n + 1] - from;
            steps[i] = new double[] {from + width * (i % n) / n, from + width * (i % n + 1) / n};
        }
        return steps;
    }

    private static double integral(DoubleUnaryOperator f, double from, double to) {
        IterativeLegendreGaussIntegrator rule = new IterativeLegendreGaussIntegrator(24, 1e-11, 1e-14);
        return rule.integrate(5_000_000, f::applyAsDouble, from, to);
    }
}
