package simmerpoint.dish.shape;

/** Looks at a deformation in a few places. */
final class DeformationProbe {
    private static final int RADII = 24;
    private static final int ANGLES = 120;

    private DeformationProbe() {}

    /** Greatest slope on rings between two distances from the axis. */
    static double steepest(Deformation deformation, double from, double to) {
        Displacement at = new Displacement();
        double most = 0;
        for (int k = 0; k <= RADII; k++) {
            double r = from + (to - from) * k / RADII;
            for (int j = 0; j < ANGLES; j++) {
                double angle = 2 * Math.PI * j / ANGLES;
                at.clear();
                deformation.add(r * Math.cos(angle), r * Math.sin(angle), at);
                most = Math.max(most, Math.hypot(at.slopeX(), at.slopeY()));
            }
        }
        return most;
    }
}
