package simmerpoint.target;

import simmerpoint.geometry.Vec;

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

    /** Of the mirror point (x, y, pz), target frame. */
    boolean mayCover(double x, double y, double pz) {
        double z = pz - middle;
        double along = x * sx + y * sy + z * sz;
        double off2 = x * x + y * y + z * z - along * along;
        double reach = radius + Math.abs(along) * perMetre;
        return off2 <= reach * reach;
    }
}
