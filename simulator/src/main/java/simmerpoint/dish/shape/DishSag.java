package simmerpoint.dish.shape;

/**
 * A dish whose ribs hang under its weight: each a bar of equal stiffness clamped at the axis, with a load that grows with the distance
 * from there as a sector does, ribs not holding each other. With ρ = r/R the moment of a load ~ρ along the axis is 1/3 − ρ/2 + ρ³/6, that
 * of one towards the lower edge, which bends ribs because they rise, R/4f·(1 − ρ²)²/4 times the cosine of the rib's angle from the upper
 * edge (derived here). On its back the tip goes down as that of any bar under such a load, 11qL⁴/120EI (any text on strength of
 * materials).
 */
final class DishSag implements Deformation {
    private final RibBending back;
    private final RibBending down;

    /**
     * By so much.
     *
     * @param metres how far the rim hangs down with the dish on its back
     * @param focalLength m
     * @param rim its radius, m
     * @param weight where it pulls
     */
    DishSag(double metres, double focalLength, double rim, WeightDirection weight) {
        double[] axial = {0, 1.0 / 3, -1.0 / 4, 0, 1.0 / 24};
        double[] sideways = {0, 1.0 / 4, 0, -1.0 / 6, 0, 1.0 / 20};
        double scale = -metres / new RibBending(axial, focalLength, rim).height(rim);
        back = new RibBending(times(axial, scale * weight.back()), focalLength, rim);
        double lever = rim / (4 * focalLength);
        down = new RibBending(times(sideways, -scale * weight.down() * lever), focalLength, rim);
    }

    private static double[] times(double[] c, double factor) {
        double[] out = c.clone();
        for (int k = 0; k < out.length; k++) {
            out[k] *= factor;
        }
        return out;
    }

    @Override
    public void add(double x, double y, Displacement to) {
        double r = Math.sqrt(x * x + y * y);
        if (r == 0) {
            return;
        }
        double cos = x / r;
        double sin = y / r;
        double leaning = down.height(r) / r;
        double radial = back.slope(r) + down.slope(r) * cos;
        to.add(
                back.height(r) + down.height(r) * cos,
                radial * cos + leaning * sin * sin,
                radial * sin - leaning * sin * cos);
    }
}
