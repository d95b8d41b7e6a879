package simmerpoint.dish;

/**
 * The profile of the ribs, z = r²/4f, and what follows from it. Source: any book on conic sections; the forms here are
 * derived from the equation.
 *
 * @param focalLength f, m, above 0
 */
public record Parabola(double focalLength) implements Profile {
    @Override
    public double height(double r) {
        return r * r / (4 * focalLength);
    }

    @Override
    public double slope(double r) {
        return r / (2 * focalLength);
    }

    /** Angle at the focus between the axis and the mirror at radius {@code r}, rad: 2·atan(r/2f). */
    public double rimAngle(double r) {
        return 2 * Math.atan(r / (2 * focalLength));
    }

    /** ½r√(1 + t²) + f·asinh t with t = r/2f. */
    @Override
    public double arcLength(double r) {
        double t = slope(r);
        return 0.5 * r * Math.sqrt(1 + t * t) + focalLength * Math.log(t + Math.sqrt(1 + t * t));
    }

    @Override
    public double radiusAtHeight(double height) {
        return Math.sqrt(4 * focalLength * height);
    }

    @Override
    public Parabola stretched(double factor) {
        return new Parabola(focalLength * factor * factor);
    }

    /** Area of the curved surface out to radius {@code r}, m²: (8πf²/3)·((1 + r²/4f²)^1.5 − 1). */
    public double curvedArea(double r) {
        double t = slope(r);
        return 8 * Math.PI * focalLength * focalLength / 3 * (Math.pow(1 + t * t, 1.5) - 1);
    }
}
