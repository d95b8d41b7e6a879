package simmerpoint.report;

import java.util.List;
import java.util.Locale;
import simmerpoint.drawing.output.XmlWriter;

/**
 * A drawing that scales with the page: lines, areas and text in sheet units, 360 of them across, so that text of 12 units
 * can be read where the page is as wide as a phone. Colours come from the page's style sheet by class, so that they suit
 * light, dark and paper.
 */
final class SvgSheet {
    /** Width of every sheet, units. */
    static final double WIDTH = 360;

    /** Size of letters, units. */
    static final double LETTERS = 12;

    private static final double TICK = 4;
    private static final double HEAD = 8;

    private final XmlWriter pen = new XmlWriter();

    /** Begins a drawing of the given height, which {@code description} tells to whoever cannot see it. */
    SvgSheet(double height, String description) {
        pen.open(
                "svg",
                "class",
                "drawing",
                "viewBox",
                "0 0 " + number(WIDTH) + " " + number(height),
                "role",
                "img",
                "aria-label",
                description);
    }

    /** A coordinate as text: a hundredth of a unit is finer than any screen. */
    static String number(double x) {
        String text = String.format(Locale.ROOT, "%.2f", x);
        String bare = text.replaceAll("0+$", "").replaceAll("\\.$", "");
        return bare.equals("-0") ? "0" : bare;
    }

    /** The closed or open way through points, each x and y, for {@link #path}. */
    static String way(List<double[]> points, boolean closed) {
        StringBuilder way = new StringBuilder();
        for (double[] p : points) {
            way.append(way.isEmpty() ? 'M' : 'L')
                    .append(number(p[0]))
                    .append(' ')
                    .append(number(p[1]));
        }
        return closed ? way.append('Z').toString() : way.toString();
    }

    void path(String style, String way) {
        pen.empty("path", "class", style, "d", way).line();
    }

    void line(String style, double x1, double y1, double x2, double y2) {
        path(style, way(List.of(new double[] {x1, y1}, new double[] {x2, y2}), false));
    }

    void circle(String style, double x, double y, double r) {
        pen.empty("circle", "class", style, "cx", number(x), "cy", number(y), "r", number(r))
                .line();
    }

    void rectangle(String style, double x, double y, double width, double height) {
        pen.empty(
                        "rect",
                        "class",
                        style,
                        "x",
                        number(x),
                        "y",
                        number(y),
                        "width",
                        number(width),
                        "height",
                        number(height))
                .line();
    }

    /** A rectangle of one colour, the same in light, dark and on paper. */
    void coloured(String colour, double x, double y, double width, double height) {
        pen.empty(
                        "rect",
                        "class",
                        "own",
                        "fill",
                        colour,
                        "x",
                        number(x),
                        "y",
                        number(y),
                        "width",
                        number(width),
                        "height",
                        number(height))
                .line();
    }

    /** A picture within the drawing. */
    void image(String data, double x, double y, double width, double height) {
        pen.empty(
                        "image",
                        "href",
                        data,
                        "x",
                        number(x),
                        "y",
                        number(y),
                        "width",
                        number(width),
                        "height",
                        number(height),
                        "preserveAspectRatio",
                        "none")
                .line();
    }

    /** Text whose place is its start, middle or end. */
    void text(String anchor, double x, double y, String text) {
        text("label", anchor, x, y, 0, text);
    }

    /** Text turned about its place by so many degrees, clockwise. */
    void text(String style, String anchor, double x, double y, double degrees, String text) {
        String turn = degrees == 0 ? null : "rotate(" + number(degrees) + " " + number(x) + " " + number(y) + ")";
        pen.leaf("text", text, "class", style, "text-anchor", anchor, "x", number(x), "y", number(y), "transform", turn)
                .line();
    }

    /** A level dimension: a line with ends, its length below. */
    void across(double x1, double x2, double y, String length) {
        line("dimension", x1, y, x2, y);
        tick(x1, y);
        tick(x2, y);
        double middle = (x1 + x2) / 2;
        double half = LETTERS * 0.3 * length.length();
        text("middle", Math.max(half, Math.min(WIDTH - half, middle)), y + LETTERS + 2, length);
    }

    /** An upright dimension, its length along it. */
    void upright(double x, double y1, double y2, String length) {
        line("dimension", x, y1, x, y2);
        tick(x, y1);
        tick(x, y2);
        text("label", "middle", x - 4, (y1 + y2) / 2, -90, length);
    }

    /** The head of an arrow on the way from one point to another, so far along it (share). */
    void arrow(String style, double[] from, double[] to, double share) {
        double dx = to[0] - from[0];
        double dy = to[1] - from[1];
        double length = Math.hypot(dx, dy);
        double x = from[0] + share * dx;
        double y = from[1] + share * dy;
        double ux = HEAD * dx / length;
        double uy = HEAD * dy / length;
        path(
                style,
                way(
                        List.of(new double[] {x, y}, new double[] {x - ux - uy / 2, y - uy + ux / 2}, new double[] {
                            x - ux + uy / 2, y - uy - ux / 2
                        }),
                        true));
    }

    private void tick(double x, double y) {
        line("dimension", x - TICK, y + TICK, x + TICK, y - TICK);
    }

    /** The finished drawing. */
    XmlWriter finished() {
        pen.close("svg");
        return pen;
    }
}
