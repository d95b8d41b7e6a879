package simmerpoint.target;

import simmerpoint.geometry.Vec;
import simmerpoint.pan.Pan;
import simmerpoint.pan.Target;

/**
 * A quick judgement which mirror points a pan's shadow may cover: those near the line from the pan's middle away from
 * the sun. Errs on the side of "may".
 */
final class Shadow {
    /** More than what single precision can lose of a squared distance, as a share of it. */
    private static final float SINGLE_PRECISION = 1e-5f;

    private final boolean isCast;
    private final double middle;
    private final double sx;
    private final double sy;
    private final double sz;
    private final double radius;
    private final double perMetre;

    /** Of a target in its own frame; a bare disc casts none. */
    Shadow(Target target, Vec sun, double largestSunAngle) {
        isCast = target instanceof Pan pan && pan.castsShadow();
        middle = target instanceof Pan pan ? pan.heightMetres() / 2 : 0;
        sx = sun.x();
        sy = sun.y();
        sz = sun.z();
        radius = Math.hypot(target.radiusMetres(), middle) * 1.000001;
        perMetre = Math.tan(Math.min(1.5, largestSunAngle)) * 1.000001;
    }

    /** Whether there is one; if not, nothing else here means anything. */
    boolean isCast() {
        return isCast;
    }

    /** For each of {@code n} mirror points, target frame: not negative if the shadow may cover it. */
    void nearness(float[] px, float[] py, float[] pz, int n, float[] out) {
        float up = (float) middle;
        float ax = (float) sx;
        float ay = (float) sy;
        float az = (float) sz;
        float wide = (float) radius;
        float spread = (float) perMetre;
        for (int i = 0; i < n; i++) {
            float z = pz[i] - up;
            float along = px[i] * ax + py[i] * ay + z * az;
            float far2 = px[i] * px[i] + py[i] * py[i] + z * z;
            float reach = wide + Math.abs(along) * spread;
            out[i] = reach * reach + far2 * SINGLE_PRECISION - (far2 - along * along);
        }
    }

    /** Of the mirror point (x, y, pz), target frame. */
    boolean mayCover(double x, double y, double pz) {
        double z = pz - middle;
        double along = x * sx + y * sy + z * sz;
        double off2 = x * x + y * y + z * z - along * along;
        double reach = radius + Math.abs(along) * perMetre;
        return off2 <= reach * reach;
    }
}
