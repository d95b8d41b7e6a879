package simmerpoint.target;

import simmerpoint.sampling.ArrayFunctions;
import simmerpoint.sampling.FastSignedRayleigh;
import simmerpoint.tracing.ArrayKernels;
import simmerpoint.tracing.LightBatch;

/**
 * For each ray of a batch and each of its two error lines, the probability that its mirror error brings it into the disc in
 * the target's plane. The intersection is taken to move linearly with the signed radius of the error, and probabilities are
 * rough. Both only place the strata: each sampled ray is intersected exactly, so nothing is biased (derived here: stratified
 * sampling with exact weights of the strata, whatever they are).
 */
final class DiscHitProbability {
    /** Keeps the step finite of errors that do not move the intersection, m². */
    private static final float LEAST_STEP2 = 1e-20f;

    /** Probability of a radius below those that hit the disc; line 0, then line 1. */
    final float[][] below;

    /** Probability of a radius that hits the disc; line 0, then line 1. */
    final float[][] within;

    private final float[] inverseZ;
    private final float[] rayParameter;
    private final float[] reaches;
    private final float[] directionX;
    private final float[] directionY;
    private final float[] x;
    private final float[] y;
    private final float[] off2;
    private final float[] towardsSun;
    private final float[] slope;
    private final float[] stepX;
    private final float[] stepY;
    private final float[] inverseStep2;
    private final float[] closest;
    private final float[] half;
    private final float[] edge;
    private final float radius2;

    DiscHitProbability(int batch, double radius) {
        below = new float[2][batch];
        within = new float[2][batch];
        inverseZ = new float[batch];
        rayParameter = new float[batch];
        reaches = new float[batch];
        directionX = new float[batch];
        directionY = new float[batch];
        x = new float[batch];
        y = new float[batch];
        off2 = new float[batch];
        towardsSun = new float[batch];
        slope = new float[batch];
        stepX = new float[batch];
        stepY = new float[batch];
        inverseStep2 = new float[batch];
        closest = new float[batch];
        half = new float[batch];
        edge = new float[batch];
        radius2 = (float) (radius * radius);
    }

    /** Fills {@link #below} and {@link #within} for a batch. */
    void compute(LightBatch light) {
        intersectWithoutErrors(light);
        for (int line = 0; line < 2; line++) {
            findSteps(light, light.tilts[line]);
            findEdges(light.capacity);
            computeProbabilities(light.capacity, below[line], within[line]);
        }
    }

    /** Where the rays would go without errors: along 2cos i·n − s. */
    private void intersectWithoutErrors(LightBatch light) {
        int n = light.capacity;
        for (int i = 0; i < n; i++) {
            inverseZ[i] = 1 / (2 * light.cosine[i] * light.nz[i] - light.sz[i]);
        }
        for (int i = 0; i < n; i++) {
            rayParameter[i] = -light.pz[i] * inverseZ[i];
        }
        for (int i = 0; i < n; i++) {
            reaches[i] = ArrayFunctions.above0(-light.pz[i]);
        }
        for (int i = 0; i < n; i++) {
            reaches[i] *= ArrayFunctions.above0(rayParameter[i]);
        }
        reflect(light.cosine, light.nx, light.sx, n, directionX);
        reflect(light.cosine, light.ny, light.sy, n, directionY);
        for (int i = 0; i < n; i++) {
            x[i] = light.px[i] + rayParameter[i] * directionX[i];
        }
        for (int i = 0; i < n; i++) {
            y[i] = light.py[i] + rayParameter[i] * directionY[i];
        }
        for (int i = 0; i < n; i++) {
            off2[i] = x[i] * x[i] + y[i] * y[i] - radius2;
        }
    }

    private static void reflect(float[] cosine, float[] normal, float[] sun, int n, float[] out) {
        for (int i = 0; i < n; i++) {
            out[i] = 2 * cosine[i] * normal[i] - sun[i];
        }
    }

    /** Movement of the intersection per unit of radius: the direction changes by 2(T·s)n + 2cos i·T. */
    private void findSteps(LightBatch light, LightBatch.Tilts tilts) {
        int n = light.capacity;
        float[] tiltX = tilts.x();
        float[] tiltY = tilts.y();
        float[] tiltZ = tilts.z();
        ArrayKernels.dot(towardsSun, n, tiltX, light.sx, tiltY, light.sy, tiltZ, light.sz);
        change(light.nz, light.cosine, tiltZ, n, slope);
        for (int i = 0; i < n; i++) {
            slope[i] *= inverseZ[i];
        }
        change(light.nx, light.cosine, tiltX, n, stepX);
        change(light.ny, light.cosine, tiltY, n, stepY);
        step(directionX, n, stepX);
        step(directionY, n, stepY);
    }

    /** A component of 2(T·s)n + 2cos i·T. */
    private void change(float[] normal, float[] cosine, float[] tilt, int n, float[] out) {
        for (int i = 0; i < n; i++) {
            out[i] = 2 * (towardsSun[i] * normal[i] + cosine[i] * tilt[i]);
        }
    }

    /** From the change of the direction to the movement of the intersection. */
    private void step(float[] direction, int n, float[] change) {
        for (int i = 0; i < n; i++) {
            change[i] = rayParameter[i] * (change[i] - direction[i] * slope[i]);
        }
    }

    /** Signed radii at which the intersection crosses the disc's edge: {@link #closest} ± {@link #half}; the latter 0 if it never does. */
    private void findEdges(int n) {
        for (int i = 0; i < n; i++) {
            inverseStep2[i] = 1 / (stepX[i] * stepX[i] + stepY[i] * stepY[i] + LEAST_STEP2);
        }
        for (int i = 0; i < n; i++) {
            closest[i] = -(x[i] * stepX[i] + y[i] * stepY[i]) * inverseStep2[i];
        }
        for (int i = 0; i < n; i++) {
            half[i] =
                    (float) Math.sqrt(ArrayFunctions.positivePart(closest[i] * closest[i] - off2[i] * inverseStep2[i]));
        }
    }

    private void computeProbabilities(int n, float[] below, float[] within) {
        for (int i = 0; i < n; i++) {
            edge[i] = closest[i] - half[i];
        }
        FastSignedRayleigh.roughCumulative(edge, n, below);
        for (int i = 0; i < n; i++) {
            edge[i] = closest[i] + half[i];
        }
        FastSignedRayleigh.roughCumulative(edge, n, within);
        for (int i = 0; i < n; i++) {
            within[i] = reaches[i] * ArrayFunctions.positivePart(within[i] - below[i]);
        }
    }
}
