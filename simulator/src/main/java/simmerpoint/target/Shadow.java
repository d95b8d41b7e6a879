package simmerpoint.target;

import simmerpoint.geometry.Vec;
import simmerpoint.pan.Pan;
import simmerpoint.pan.Target;

/**
 * A quick judgement which mirror points a pan's shadow may cover: those near the line from the pan's middle away from
 * the sun. Errs on the side of "may".
 */
final class Shadow {
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

    /** Of the mirror point (x, y, pz), target frame. */
    boolean mayCover(double x, double y, double pz) {
        double z = pz - middle;
        double along = x * sx + y * sy + z * sz;
        double off2 = x * x + y * y + z * z - along * along;
        double reach = radius + Math.abs(along) * perMetre;
        return off2 <= reach * reach;
    }
}
