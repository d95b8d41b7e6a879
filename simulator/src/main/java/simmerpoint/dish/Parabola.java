package simmerpoint.dish;

/**
 * The profile of the ribs, z = r²/4f, and what follows from it. Source: any book on conic sections; the forms here are
 * derived from the equation.
 *
 * @param focalLength f, m, above 0
 */
public record Parabola(double focalLength) {
    /** Height above the vertex at radius {@code r}, m. */
    public double height(double r) {
        return r * r / (4 * focalLength);
    }

    /** Slope dz/dr at radius {@code r}. */
    public double slope(double r) {
        return r / (2 * focalLength);
    }

    /** Angle at the focus between the axis and the mirror at radius {@code r}, rad: 2·atan(r/2f). */
    public double rimAngle(double r) {
        return 2 * Math.atan(r / (2 * focalLength));
    }

    /** Length along the curve from the vertex to radius {@code r}, m: ½r√(1 + t²) + f·asinh t with t = r/2f. */
    public double arcLength(double r) {
        double t = slope(r);
        return 0.5 * r * Math.sqrt(1 + t * t) + focalLength * Math.log(t + Math.sqrt(1 + t * t));
    }

    /** Radius at which the curve from the vertex is {@code length} long, m, by Newton steps from below. */
    public double radiusAtArcLength(double length) {
        double r = length;
        for (int i = 0; i < 60; i++) {
            double t = slope(r);
            double step = (arcLength(r) - length) / Math.sqrt(1 + t * t);
            r -= step;
            if (Math.abs(step) <= 1e-15 * length) {
                break;
            }
        }
        return r;
    }

    /** Area of the curved surface out to radius {@code r}, m²: (8πf²/3)·((1 + r²/4f²)^1.5 − 1). */
    public double curvedArea(double r) {
        double t = slope(r);
        return 8 * Math.PI * focalLength * focalLength / 3 * (Math.pow(1 + t * t, 1.5) - 1);
    }
}
