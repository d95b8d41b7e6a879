package simmerpoint.target;

import simmerpoint.geometry.Vec;
import simmerpoint.tracing.LightBatch;

/**
 * A quick judgement which mirror points a pan's shadow may cover: those near the line from the pan's middle away from
 * the sun. Errs on the side of "may".
 */
final class Shadow {
    private final double middle;
    private final double sx;
    private final double sy;
    private final double sz;
    private final double radius;
    private final double perMetre;

    Shadow(double panRadius, double height, Vec sun, double largestSunAngle) {
        middle = height / 2;
        sx = sun.x();
        sy = sun.y();
        sz = sun.z();
        radius = Math.hypot(panRadius, middle) * 1.000001;
        perMetre = Math.tan(Math.min(1.5, largestSunAngle)) * 1.000001;
    }

    boolean mayCover(LightBatch light, int i) {
        double x = light.px[i];
        double y = light.py[i];
        double z = light.pz[i] - middle;
        double along = x * sx + y * sy + z * sz;
        double off2 = x * x + y * y + z * z - along * along;
        double reach = radius + Math.abs(along) * perMetre;
        return off2 <= reach * reach;
    }
}
