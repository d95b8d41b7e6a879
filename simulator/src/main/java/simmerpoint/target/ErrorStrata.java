package simmerpoint.target;

import simmerpoint.sampling.ArrayFunctions;
import simmerpoint.sampling.FastSignedRayleigh;
import simmerpoint.tracing.LightBatch;
import simmerpoint.tracing.ReflectedDirections;

/**
 * Chooses which errors of each ray are followed. Its errors fall into two strata: those that bring it into the disc, as {@link
 * DiscHitProbability} places them, and all others. One error of the heavier stratum is always followed. The lighter one is
 * followed where it weighs {@value #LEAST_WEIGHT} or more; a smaller weight w becomes {@value #LEAST_WEIGHT} with
 * probability w ÷ {@value #LEAST_WEIGHT} and else 0, and the heavier one has what is left of 1. So weights are right on
 * average, and those of every ray add up to 1.
 */
final class ErrorStrata {
    /**
     * At 0.1 two in five lighter strata are followed where a bare disc stands in the focus, one in eight to five under a pan. At 0.25 the
     * error of one dish hardly grows (measured: 2 %), but that of the difference of two by two thirds.
     */
    static final float LEAST_WEIGHT = 0.1f;

    /** Digits of a number of single precision after its first, and all of them set. */
    private static final int DIGITS = 23;

    private static final int FRACTION = (1 << DIGITS) - 1;

    private static final int ONE = 0x3F800000;

    /** Weight of the lighter stratum of each ray. */
    final float[] lighterWeight;
    /** Rays whose lighter stratum is followed. */
    final int[] lighter;

    private final DiscHitProbability hits;
    private final float[] both;
    private final float[] inside;
    /** Probability that the lighter stratum is followed, in steps of single precision. */
    private final int[] step;

    private final Sample heavierSample;
    private final Sample lighterSample;

    ErrorStrata(int batch, double radius) {
        hits = new DiscHitProbability(batch, radius);
        both = new float[batch];
        inside = new float[batch];
        step = new int[batch];
        lighterWeight = new float[batch];
        lighter = new int[batch + 1];
        heavierSample = new Sample(batch);
        lighterSample = new Sample(batch);
    }

    /** Places the strata of a batch and weighs them. */
    void place(LightBatch light) {
        int n = light.capacity;
        hits.compute(light);
        float[] first = hits.within[0];
        float[] second = hits.within[1];
        for (int i = 0; i < n; i++) {
            both[i] = first[i] + second[i];
        }
        for (int i = 0; i < n; i++) {
            inside[i] = ArrayFunctions.notBelow0(both[i] - 1);
        }
        for (int i = 0; i < n; i++) {
            both[i] = 0.5f - 0.5f * Math.abs(both[i] - 1);
        }
        for (int i = 0; i < n; i++) {
            lighterWeight[i] = LEAST_WEIGHT + ArrayFunctions.positivePart(both[i] - LEAST_WEIGHT);
        }
        for (int i = 0; i < n; i++) {
            step[i] = Float.floatToRawIntBits(1 + both[i] / lighterWeight[i]) - ONE;
        }
        choose(light.choice, n);
    }

    /**
     * Leaves a weight to the lighter strata that are followed. Probabilities are added up ray by ray from a random start, and a ray is followed
     * where the sum passes a whole number: each with its own probability, but all of a batch together as often as expected, to one ray. What
     * is inside and what is outside are added up apart, so that light is not taken from one and given to the other.
     */
    private void choose(float start, int n) {
        int ofInside = Float.floatToRawIntBits(1 + start) & FRACTION;
        int ofOutside = ofInside;
        for (int i = 0; i < n; i++) {
            int heavierIsInside = -(Float.floatToRawIntBits(inside[i]) >>> 29);
            ofOutside += step[i] & heavierIsInside;
            ofInside += step[i] & ~heavierIsInside;
            int followed = -((ofInside | ofOutside) >>> DIGITS);
            ofInside &= FRACTION;
            ofOutside &= FRACTION;
            lighterWeight[i] = Float.intBitsToFloat(Float.floatToRawIntBits(lighterWeight[i]) & followed);
        }
    }

    /**
     * Splits the watts of each ray between its strata. The lighter part is rounded to a step of the whole, so that both add up
     * to it exactly.
     */
    void split(float[] watts, int n, float[] heavier, float[] lighter) {
        for (int i = 0; i < n; i++) {
            lighter[i] = (watts[i] * lighterWeight[i] + watts[i]) - watts[i];
        }
        for (int i = 0; i < n; i++) {
            heavier[i] = watts[i] - lighter[i];
        }
    }

    /** Lists the rays whose lighter stratum has light in {@link #lighter}; returns their number. */
    int listLighter(float[] watts, int n) {
        int k = 0;
        for (int i = 0; i < n; i++) {
            lighter[k] = i;
            k += Float.floatToRawIntBits(0 - watts[i]) >>> 31;
        }
        return k;
    }

    /** An error of the heavier stratum of each ray. */
    void sampleHeavier(LightBatch light, ReflectedDirections out) {
        Sample s = heavierSample;
        s.within0 = hits.within[0];
        s.within1 = hits.within[1];
        s.below0 = hits.below[0];
        s.below1 = hits.below[1];
        s.inside = inside;
        s.draw(light.errorSample, light.capacity, out.radius);
        out.selectLines(light, s.line);
    }

    /** An error of the lighter stratum of each of the {@code n} rays listed. */
    void sampleLighter(LightBatch light, float[] errorSample, int n, ReflectedDirections out) {
        Sample s = lighterSample;
        LightBatch.copyListed(hits.within[0], lighter, n, s.within0);
        LightBatch.copyListed(hits.within[1], lighter, n, s.within1);
        LightBatch.copyListed(hits.below[0], lighter, n, s.below0);
        LightBatch.copyListed(hits.below[1], lighter, n, s.below1);
        LightBatch.copyListed(inside, lighter, n, s.inside);
        for (int k = 0; k < n; k++) {
            s.inside[k] = 1 - s.inside[k];
        }
        s.draw(errorSample, n, out.radius);
        out.selectLines(light, s.line, lighter, n);
    }

    /** Draws radii from strata of two lines; a stratum is inside (1) or outside (0) of the interval placed on each line. */
    private static final class Sample {
        final float[] line;
        private float[] within0;
        private float[] within1;
        private float[] below0;
        private float[] below1;
        private float[] inside;
        private final float[] share;
        private final float[] first;
        private final float[] scratch;

        Sample(int batch) {
            line = new float[batch];
            within0 = new float[batch];
            within1 = new float[batch];
            below0 = new float[batch];
            below1 = new float[batch];
            inside = new float[batch];
            share = new float[batch];
            first = new float[batch];
            scratch = new float[batch];
        }

        /** Sets {@link #line} and {@code radius} from a uniform number for each ray. */
        void draw(float[] uniform, int n, float[] radius) {
            for (int i = 0; i < n; i++) {
                first[i] = 1 - inside[i] + (2 * inside[i] - 1) * within0[i];
            }
            for (int i = 0; i < n; i++) {
                scratch[i] = 1 - inside[i] + (2 * inside[i] - 1) * within1[i];
            }
            for (int i = 0; i < n; i++) {
                share[i] = uniform[i] * (first[i] + scratch[i]);
            }
            for (int i = 0; i < n; i++) {
                line[i] = ArrayFunctions.notBelow0(share[i] - first[i]);
            }
            for (int i = 0; i < n; i++) {
                share[i] -= line[i] * first[i];
            }
            ofLine(below0, below1, n, first);
            ofLine(within0, within1, n, scratch);
            for (int i = 0; i < n; i++) {
                scratch[i] *= ArrayFunctions.notBelow0(share[i] - first[i]);
            }
            for (int i = 0; i < n; i++) {
                radius[i] = share[i] + inside[i] * first[i] + (1 - inside[i]) * scratch[i];
            }
            FastSignedRayleigh.inverse(radius, n, scratch);
        }

        private void ofLine(float[] line0, float[] line1, int n, float[] out) {
            for (int i = 0; i < n; i++) {
                out[i] = (1 - line[i]) * line0[i] + line[i] * line1[i];
            }
        }
    }
}
