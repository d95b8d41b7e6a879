package simmerpoint.dish;

import simmerpoint.sampling.RootFinder;

/**
 * A chain that hangs from two points at the same height: z = c·(cosh(r/c) − 1) above its lowest place (any book on the catenary).
 *
 * @param scale c, m
 */
record HangingChain(double scale) implements Profile {
    /** Through its lowest place and a point so far from the axis and so high, m. */
    static HangingChain through(double radius, double height) {
        // A chain is steeper at the rim than the parabola through the same points, and so opener below: c lies above
        // 2f/(1 + (rim's slope)²).
        double flat = radius * radius / (2 * height);
        double least = radius / 500;
        double c = RootFinder.to(1e-15 * flat, 300)
                .find(s -> new HangingChain(s).height(radius) - height, least, 2 * flat);
        return new HangingChain(c);
    }

    @Override
    public double height(double r) {
        double s = Math.sinh(r / (2 * scale));
        return 2 * scale * s * s;
    }

    @Override
    public double slope(double r) {
        return Math.sinh(r / scale);
    }

    @Override
    public double arcLength(double r) {
        return scale * Math.sinh(r / scale);
    }

    @Override
    public double radiusAtHeight(double height) {
        double t = Math.sqrt(height * (height + 2 * scale)) / scale;
        return scale * Math.log1p(height / scale + t);
    }
}
