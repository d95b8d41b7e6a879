package simmerpoint.target;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import simmerpoint.tracing.LightBatch;
import simmerpoint.tracing.ReflectedDirections;

/** Whatever is placed and followed, the weighted errors of a ray must have the Gaussian law of its error lines. */
class ErrorStrataTest {
    private static final int DRAWS = 1 << 20;
    private static final double SIGMA = 5e-3;

    /** A level mirror under an upright sun, d to the side of the middle of a disc 1 m above it, with the same error on both lines. */
    private static LightBatch ray(double d, SplittableRandom random) {
        LightBatch light = new LightBatch(DRAWS);
        for (int i = 0; i < DRAWS; i++) {
            light.px[i] = (float) d;
            light.pz[i] = -1;
            light.sz[i] = 1;
            light.nz[i] = 1;
            light.cosine[i] = 1;
            light.tilts[0].x()[i] = (float) (0.6 * SIGMA);
            light.tilts[0].y()[i] = (float) (0.8 * SIGMA);
            light.tilts[1].x()[i] = (float) (-0.8 * SIGMA);
            light.tilts[1].y()[i] = (float) (0.6 * SIGMA);
            light.errorSample[i] = (float) random.nextDouble(1e-7, 1 - 1e-7);
        }
        light.choice = (float) random.nextDouble(1e-7, 1 - 1e-7);
        return light;
    }

    /**
     * Light that leaves a mirror exactly level with the disc, in the disc's plane: with cos i = ½ and both
     * normal and sun ½ upwards, 2cos i·n − s is exactly 0 upwards. Its strata must be probabilities too.
     */
    @Test
    void levelLightHasStrata() {
        LightBatch light = ray(0.5, new SplittableRandom(4));
        for (int i = 0; i < DRAWS; i++) {
            light.pz[i] = i % 2 == 0 ? 0 : 0.0015f;
            light.nx[i] = (float) -Math.sqrt(0.75);
            light.nz[i] = 0.5f;
            light.sx[i] = (float) (-0.25 / Math.sqrt(0.75));
            light.sy[i] = (float) Math.sqrt(2.0 / 3);
            light.sz[i] = 0.5f;
            light.cosine[i] = 0.5f;
        }
        ErrorStrata strata = new ErrorStrata(DRAWS, 0.03);
        strata.place(light);
        ReflectedDirections errors = new ReflectedDirections(DRAWS);
        strata.sampleHeavier(light, errors);
        for (int i = 0; i < DRAWS; i++) {
            assertTrue(strata.lighterWeight[i] >= 0 && strata.lighterWeight[i] <= 0.5);
            assertTrue(Math.abs(errors.radius[i]) < 6);
        }
    }

    /**
     * Closed forms of the signed Rayleigh law: E ρ = 0, E ρ² = 2, P(ρ > 1) = ½e^(−1/2), P(ρ &lt; −1) the same. 5 standard errors. At
     * 40 mm the ray's disc of 30 mm is hit by one error in thirteen of line 0's size, at 55 mm by one in two hundred.
     */
    @Test
    void weightedErrorsHaveTheLawOfTheirLines() {
        for (double d : new double[] {0, 0.02, 0.029, 0.04, 0.055}) {
            SplittableRandom random = new SplittableRandom(71_000 + Math.round(1000 * d));
            LightBatch light = ray(d, random);
            ErrorStrata strata = new ErrorStrata(DRAWS, 0.03);
            ReflectedDirections heavier = new ReflectedDirections(DRAWS);
            ReflectedDirections lighter = new ReflectedDirections(DRAWS);
            strata.place(light);
            strata.sampleHeavier(light, heavier);
            float[] watts = new float[DRAWS];
            Arrays.fill(watts, 1);
            float[] heavierWatts = new float[DRAWS];
            float[] lighterWatts = new float[DRAWS];
            strata.split(watts, DRAWS, heavierWatts, lighterWatts);
            int n = strata.listLighter(lighterWatts, DRAWS);
            LightBatch listed = new LightBatch(DRAWS);
            listed.copyListed(light, strata.lighter, n);
            strata.sampleLighter(light, listed.errorSample, n, lighter);
            double[][] ofRay = new double[DRAWS][4];
            for (int i = 0; i < DRAWS; i++) {
                assertEquals(1, (double) heavierWatts[i] + lighterWatts[i]);
                put(ofRay[i], heavier.radius[i], heavierWatts[i]);
            }
            for (int k = 0; k < n; k++) {
                int i = strata.lighter[k];
                assertTrue(lighterWatts[i] >= ErrorStrata.LEAST_WEIGHT * 0.999);
                put(ofRay[i], lighter.radius[k], lighterWatts[i]);
            }
            double tail = 0.5 * Math.exp(-0.5);
            check("mean at " + d, 0, ofRay, 0);
            check("square at " + d, 1, ofRay, 2);
            check("above 1 at " + d, 2, ofRay, tail);
            check("below -1 at " + d, 3, ofRay, tail);
        }
    }

    private static void put(double[] sums, double radius, double weight) {
        sums[0] += weight * radius;
        sums[1] += weight * radius * radius;
        sums[2] += radius > 1 ? weight : 0;
        sums[3] += radius < -1 ? weight : 0;
    }

    private static void check(String what, int k, double[][] ofRay, double wanted) {
        double sum = 0;
        double squares = 0;
        for (double[] ray : ofRay) {
            sum += ray[k];
            squares += ray[k] * ray[k];
        }
        double mean = sum / DRAWS;
        double error = Math.sqrt((squares / DRAWS - mean * mean) / DRAWS);
        assertEquals(wanted, mean, 5 * error + 1e-6, what);
    }
}
