package simmerpoint.dish.cut;

/**
 * An off-axis shell as a tape measures it, or how badly each of its lengths is known (standard deviations). Its rim is a plane ellipse
 * that seems a circle along the axis of the paraboloid z = r²/4f it is a part of. With W its width, H its height, h its greatest
 * depth, t the angle between the rim's plane and one square to the axis, y₀ the distance of the rim's middle from the axis: cos t =
 * W/H, f = W³/(16 h H), y₀ = 2f·tan t; the deepest place lies H/2 − h·tan t from the end nearer the axis (J. A. R. Legon's formula for
 * offset dishes; derived again here from the plane cut of a paraboloid).
 *
 * @param width across, W, m
 * @param height along the long way, H, m
 * @param depth greatest depth below a straight edge laid across the rim, h, m
 */
public record ShellTape(double width, double height, double depth) {
    /** f, m. */
    public double focalLength() {
        return width * width * width / (16 * depth * height);
    }

    /** By how much f changes with the depth, m/m: f goes as 1/h. */
    public double focusPerDepth() {
        return focalLength() / depth();
    }

    /** Angle between the rim's plane and a plane square to the axis, rad. */
    public double tilt() {
        return Math.acos(width / height);
    }

    /** Distance of the rim's middle from the axis, m. */
    public double offset() {
        return 2 * focalLength() * Math.tan(tilt());
    }

    /** Distance of the focus from the end of the rim that is nearer the axis, m. */
    public double nearString() {
        return string(offset() - width / 2);
    }

    /** Distance of the focus from the other end, m. */
    public double farString() {
        return string(offset() + width / 2);
    }

    /** Focus to the place of the paraboloid at a distance from the axis: f + r²/4f. */
    private double string(double fromAxis) {
        return focalLength() + fromAxis * fromAxis / (4 * focalLength());
    }

    /** Distance of the deepest place from the end nearer the axis, along the rim's plane, m. */
    public double deepestAt() {
        return height / 2 - depth * Math.tan(tilt());
    }

    /**
     * Area of the mirror itself, m²: its circle seen along the axis times √(1 + r²/4f²) at the mean of r² over that, y₀² + W²/8 (derived
     * here; too much by some thousandths).
     */
    public double mirrorArea() {
        double slope = Math.sqrt(offset() * offset() + width * width / 8) / (2 * focalLength());
        return Math.PI * width * width / 4 * Math.sqrt(1 + slope * slope);
    }
}
