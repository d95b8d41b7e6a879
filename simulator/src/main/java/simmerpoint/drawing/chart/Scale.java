package simmerpoint.drawing.chart;

/**
 * Where figures lie along an axis.
 *
 * @param first figure at the beginning
 * @param last figure at the end, another one
 * @param from where the first lies, units
 * @param to where the last lies
 */
public record Scale(double first, double last, double from, double to) {
    /** Where a figure lies. */
    public double at(double figure) {
        return from + (figure - first) / (last - first) * (to - from);
    }

    /** The same, kept between the ends. */
    public double within(double figure) {
        double share = Math.max(0, Math.min(1, (figure - first) / (last - first)));
        return from + share * (to - from);
    }

    /** The figure at a place, kept between the ends. */
    public double figure(double at) {
        double share = Math.max(0, Math.min(1, (at - from) / (to - from)));
        return first + share * (last - first);
    }
}
