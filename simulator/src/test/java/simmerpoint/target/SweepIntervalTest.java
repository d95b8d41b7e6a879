package simmerpoint.target;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import simmerpoint.geometry.Vec;

/** Stretches of a walk, and sums over them, position by position. */
class SweepIntervalTest {
    private static final double RADIUS = 0.12;

    private static double between(SplittableRandom random, double reach) {
        return random.nextDouble(-reach, reach);
    }

    @Test
    void discIsLeftAndEnteredWhereItShouldBe() {
        SplittableRandom random = new SplittableRandom(91_001);
        SweepInterval span = new SweepInterval();
        int inside = 0;
        for (int i = 0; i < 2000; i++) {
            Vec q = new Vec(between(random, 0.3), between(random, 0.3), 0);
            Vec w = i % 10 == 0 ? Vec.ZERO : new Vec(between(random, 0.02), between(random, 0.02), 0);
            Vec m = new Vec(between(random, 0.1), between(random, 0.1), 0);
            span.setToDisc(q.x(), q.y(), w.x(), w.y(), m.x(), m.y(), RADIUS * RADIUS);
            for (double k = -20; k <= 20; k += 0.7) {
                boolean wanted = q.plus(w.times(k)).minus(m).length() <= RADIUS;
                inside += wanted ? 1 : 0;
                assertEquals(wanted, k >= span.low && k <= span.high, "walk " + i + " at " + k);
            }
        }
        assertTrue(inside > 1000);
    }

    /**
     * What a cylinder covers along a slanting ray: the union of its slices, each cast along the ray. Places closer to the
     * outline than the slices resolve are passed over.
     */
    @Test
    void outlineIsTheUnionOfTheSlices() {
        SplittableRandom random = new SplittableRandom(91_002);
        SweepInterval span = new SweepInterval();
        int inside = 0;
        for (int i = 0; i < 1000; i++) {
            Vec q = new Vec(between(random, 0.3), between(random, 0.3), 0);
            Vec w = walk(random, i);
            Vec m = i % 7 == 0 ? Vec.ZERO : new Vec(between(random, 0.4), between(random, 0.4), 0);
            if (i % 7 == 1) {
                w = m.times(0.05);
            }
            span.setToOutline(q.x(), q.y(), w.x(), w.y(), m.x(), m.y(), RADIUS * RADIUS);
            for (double k = -20; k <= 20; k += 0.9) {
                double off = nearest(q.plus(w.times(k)), m);
                if (Math.abs(off - RADIUS) > 1e-5) {
                    inside += off < RADIUS ? 1 : 0;
                    assertEquals(off < RADIUS, k >= span.low && k <= span.high, "walk " + i + " at " + k);
                }
            }
        }
        assertTrue(inside > 1000);
    }

    private static Vec walk(SplittableRandom random, int i) {
        return i % 10 == 0 ? Vec.ZERO : new Vec(between(random, 0.02), between(random, 0.02), 0);
    }

    /** Distance of p from the nearest slice's middle: from the line from the origin to m. */
    private static double nearest(Vec p, Vec m) {
        double best = Double.POSITIVE_INFINITY;
        int slices = 400;
        for (int k = 0; k <= slices; k++) {
            best = Math.min(best, p.minus(m.times((double) k / slices)).length());
        }
        return best;
    }

    @Test
    void sumsCountEveryPositionOfEveryStretch() {
        SplittableRandom random = new SplittableRandom(91_003);
        int count = 41;
        DifferenceArray sums = new DifferenceArray(count);
        double[] wanted = new double[count];
        for (int i = 0; i < 3000; i++) {
            double low = end(random);
            double high = end(random);
            double holeLow = end(random);
            double holeHigh = end(random);
            double amount = random.nextInt(1, 9);
            if (i % 2 == 0) {
                sums.add(low, high, amount);
            } else {
                sums.addOutside(low, high, holeLow, holeHigh, amount);
            }
            for (int k = 0; k < count; k++) {
                boolean hole = i % 2 == 1 && k >= holeLow && k <= holeHigh;
                wanted[k] += k >= low && k <= high && !hole ? amount : 0;
            }
        }
        assertArrayEquals(wanted, sums.sums(), 1e-9);
    }

    /** Ends before, between, on and beyond the positions, and at infinity. */
    private static double end(SplittableRandom random) {
        int kind = random.nextInt(12);
        if (kind == 0) {
            return Double.NEGATIVE_INFINITY;
        } else if (kind == 1) {
            return Double.POSITIVE_INFINITY;
        }
        double x = random.nextDouble(-20, 60);
        return kind < 6 ? Math.rint(x) : x;
    }
}
