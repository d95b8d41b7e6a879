package simmerpoint.dish.shape;

/**
 * A rim pulled inwards all round: every rib is a bar of equal stiffness, clamped at the axis, whose tip is pulled towards the axis. The
 * pull's moment is that of the height still above: 1 − ρ² on a parabola, so that it turns by ω ~ ρ − ρ³/3, and its tip goes inwards by
 * 4/15·R²/2f of the factor (derived here).
 */
final class RimPull implements Deformation {
    private final RibBending rib;

    /**
     * By so much.
     *
     * @param metres how much nearer to the axis the rim stands
     * @param focalLength m
     * @param rim its radius, m
     */
    RimPull(double metres, double focalLength, double rim) {
        double factor = 7.5 * focalLength * metres / (rim * rim);
        rib = new RibBending(new double[] {0, factor, 0, -factor / 3}, focalLength, rim);
    }

    @Override
    public void add(double x, double y, Displacement to) {
        double r = Math.sqrt(x * x + y * y);
        if (r == 0) {
            return;
        }
        double slope = rib.slope(r) / r;
        to.add(rib.height(r), slope * x, slope * y);
    }
}
