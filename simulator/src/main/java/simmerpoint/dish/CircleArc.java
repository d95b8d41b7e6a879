package simmerpoint.dish;

/**
 * A circle through the vertex, its middle on the axis (any book on geometry).
 *
 * @param radius m, above every distance from the axis that is asked for
 */
record CircleArc(double radius) implements Profile {
    @Override
    public double height(double r) {
        return r * r / (radius + Math.sqrt(radius * radius - r * r));
    }

    @Override
    public double slope(double r) {
        return r / Math.sqrt(radius * radius - r * r);
    }

    @Override
    public double arcLength(double r) {
        return radius * Math.asin(r / radius);
    }

    @Override
    public double radiusAtHeight(double height) {
        return Math.sqrt(height * (2 * radius - height));
    }

    /** A chord longer than the arc is sought from inside the circle. */
    @Override
    public double radiusAtArcLength(double length) {
        return radius * Math.sin(length / radius);
    }
}
