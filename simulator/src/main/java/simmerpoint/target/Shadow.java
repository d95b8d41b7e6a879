package simmerpoint.target;

import simmerpoint.geometry.Vec;
import simmerpoint.pan.Pan;
import simmerpoint.pan.Target;

/**
 * Conservative bound of a pan's shadow: the mirror points near the line from the pan's centre away from the sun. Points
 * outside the bound are not shaded; points inside it may be.
 */
final class Shadow {
    /** Bound of the relative rounding error of a squared distance in single precision. */
    private static final float SINGLE_PRECISION = 1e-5f;

    private final boolean isCast;
    private final double middle;
    private final double sx;
    private final double sy;
    private final double sz;
    private final double radius;
    private final double spreadPerMetre;

    /** For a target in its own frame; a bare disc casts no shadow. */
    Shadow(Target target, Vec sun, double largestSunAngle) {
        isCast = target instanceof Pan pan && pan.castsShadow();
        middle = target instanceof Pan pan ? pan.heightMetres() / 2 : 0;
        sx = sun.x();
        sy = sun.y();
        sz = sun.z();
        radius = Math.hypot(target.radiusMetres(), middle) * 1.000001;
        spreadPerMetre = Math.tan(Math.min(1.5, largestSunAngle)) * 1.000001;
    }

    /** Whether there is a shadow; if not, the other methods have no meaning. */
    boolean isCast() {
        return isCast;
    }

    /** Fills {@code out} for {@code n} mirror points in the target frame: negative where the shadow cannot cover the point. */
    private void margins(float[] px, float[] py, float[] pz, int n, float[] out) {
        float up = (float) middle;
        float ax = (float) sx;
        float ay = (float) sy;
        float az = (float) sz;
        float r = (float) radius;
        float spread = (float) spreadPerMetre;
        for (int i = 0; i < n; i++) {
            float z = pz[i] - up;
            float along = px[i] * ax + py[i] * ay + z * az;
            float far2 = px[i] * px[i] + py[i] * py[i] + z * z;
            float bound = r + Math.abs(along) * spread;
            out[i] = bound * bound + far2 * SINGLE_PRECISION - (far2 - along * along);
        }
    }

    /**
     * Lists the mirror points that the shadow may cover; returns their number.
     *
     * @param margins room for n numbers
     * @param list room for one more
     */
    int list(float[] px, float[] py, float[] pz, int n, float[] margins, int[] list) {
        margins(px, py, pz, n, margins);
        int k = 0;
        for (int i = 0; i < n; i++) {
            list[k] = i;
            k += 1 + RayIntersections.negativeMask(margins[i]);
        }
        return k;
    }
}
