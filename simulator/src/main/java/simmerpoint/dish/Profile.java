package simmerpoint.dish;

/** The curve of a rib: its height over the distance from the axis, from the vertex outwards. */
public interface Profile {
    /** Height above the vertex at radius {@code r}, m. */
    double height(double r);

    /** Slope dz/dr at radius {@code r}. */
    double slope(double r);

    /** Length along the curve from the vertex to radius {@code r}, m. */
    double arcLength(double r);

    /** Radius at which it is {@code height} above the vertex, m. */
    double radiusAtHeight(double height);

    /** Radius at which the curve from the vertex is {@code length} long, m, by Newton steps. */
    default double radiusAtArcLength(double length) {
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

    /** The same curve drawn out sideways: at {@code factor}·r as high as this one at r. */
    default Profile stretched(double factor) {
        return new StretchedProfile(this, factor);
    }
}
