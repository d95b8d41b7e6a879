package simmerpoint.truth;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import simmerpoint.pan.GrazingAbsorptance;
import simmerpoint.sampling.Estimate;
import simmerpoint.sampling.Replicates;
import simmerpoint.target.CaughtByFace;

/**
 * Light is absorbed at the angle of each ray. In a perfect paraboloid under a point sun a ray from distance ρ off the axis
 * meets the focus at ψ = 2·atan(ρ/2f) to the axis (definition of the parabola). A pan about the axis whose underside lies h
 * below the focus is met on the underside at cos ψ where h·tan ψ is within its radius, else on the wall at sin ψ. The means
 * over ρ are summed here over 200,000 narrow rings.
 */
class AngularAbsorptionTest {
    private static final double FOCAL = 0.5;
    private static final double RIM = 0.6;
    private static final double RADIUS = 0.05;
    private static final double BELOW = 0.1;
    private static final double BORDER = 2 * FOCAL * Math.tan(Math.atan(RADIUS / BELOW) / 2);

    private static final List<CaughtByFace> SEEDS = LongStream.rangeClosed(1, 16)
            .mapToObj(seed -> Scene.of(Scene.smooth(2 * RIM, FOCAL, 0), Scene.pan(RADIUS, 0.2))
                    .with(Scene.POINT)
                    .pullBack(-BELOW)
                    .trace(1L << 14, seed)
                    .faces())
            .toList();

    private static double mean(double from, double to, DoubleUnaryOperator cosine) {
        int rings = 200_000;
        double sum = 0;
        for (int k = 0; k < rings; k++) {
            double rho = Math.sqrt(from * from + (to * to - from * from) * (k + 0.5) / rings);
            sum += GrazingAbsorptance.relativeAbsorptance(cosine.applyAsDouble(2 * Math.atan(rho / (2 * FOCAL))));
        }
        return sum / rings;
    }

    /** Mean of 16 seeds within 4 of its standard errors: passed by chance once in 900 times. */
    private static void check(double expected, ToDoubleFunction<CaughtByFace> figure) {
        Estimate mean = Replicates.mean(SEEDS.size(), r -> figure.applyAsDouble(SEEDS.get(r)));
        assertEquals(expected, mean.value(), 4 * mean.standardError() + 1e-9);
    }

    /** The pan's shadow takes the rings within its radius. */
    @Test
    void underside() {
        check(mean(RADIUS, BORDER, Math::cos), CaughtByFace::undersideAbsorptance);
    }

    @Test
    void wall() {
        check(mean(BORDER, RIM, Math::sin), faces -> faces.wallAbsorptanceBelow(1));
    }

    /** Below a water line at height w only rings with h − radius/tan ψ below w land: the steepest. w borders two bands. */
    @Test
    void wetAndDryWall() {
        int bands = SEEDS.get(0).wallByHeight().length;
        double share = (double) Math.round(0.3 * bands) / bands;
        double line = share * 0.2;
        double ring = 2 * FOCAL * Math.tan(Math.atan2(RADIUS, BELOW - line) / 2);
        check(mean(BORDER, ring, Math::sin), faces -> faces.wallAbsorptanceBelow(share));
        check(mean(ring, RIM, Math::sin), faces -> faces.wallAbsorptanceAbove(share));
    }
}
