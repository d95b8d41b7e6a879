package simmerpoint.drawing.output;

import java.util.Base64;
import java.util.Locale;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.Canvas;
import simmerpoint.drawing.Circle;
import simmerpoint.drawing.Drawing;
import simmerpoint.drawing.Path;
import simmerpoint.drawing.Raster;
import simmerpoint.drawing.RoundBox;
import simmerpoint.drawing.Shape;
import simmerpoint.drawing.Style;
import simmerpoint.drawing.Text;
import simmerpoint.drawing.TextMetrics;
import simmerpoint.units.DecimalFormatter;

/**
 * Draws as SVG, well formed and without any style of its own: classes say what things mean, and the page's style sheet ({@link
 * SvgStyles}) gives them colours that suit light, dark and paper.
 */
public final class SvgCanvas extends Canvas {
    private final XmlWriter writer;

    private SvgCanvas(XmlWriter writer) {
        this.writer = writer;
    }

    /**
     * Writes a drawing into a page.
     *
     * @param writer of the page
     * @param drawing what is drawn
     * @param width units
     * @param description tells it to whoever cannot see it
     */
    public static void write(XmlWriter writer, Drawing drawing, double width, String description) {
        double height = drawing.height(width, SvgMetrics::width);
        writer.open(
                "svg",
                "class",
                "drawing",
                "viewBox",
                "0 0 " + number(width) + " " + number(height),
                "role",
                "img",
                "aria-label",
                description);
        drawing.draw(new SvgCanvas(writer), new Box(0, 0, width, height));
        writer.close("svg");
    }

    /** A coordinate as text: a hundredth of a unit is finer than any screen. */
    private static String number(double x) {
        String bare = DecimalFormatter.stripped(String.format(Locale.ROOT, "%.2f", x));
        return bare.equals("-0") ? "0" : bare;
    }

    @Override
    public TextMetrics metrics() {
        return SvgMetrics::width;
    }

    @Override
    protected void paint(Style style, Shape shape) {
        if (shape instanceof Box box) {
            rectangle(style, box, 0);
        } else if (shape instanceof RoundBox round) {
            rectangle(style, round.box(), round.corner());
        } else if (shape instanceof Circle circle) {
            writer.empty(
                    "circle",
                    "class",
                    style.cssClass(),
                    "cx",
                    number(circle.x()),
                    "cy",
                    number(circle.y()),
                    "r",
                    number(circle.radius()));
        } else {
            writer.empty("path", "class", style.cssClass(), "d", way((Path) shape));
        }
        writer.line();
    }

    private void rectangle(Style style, Box box, double corner) {
        writer.empty(
                "rect",
                "class",
                style.cssClass(),
                "x",
                number(box.x()),
                "y",
                number(box.y()),
                "width",
                number(box.width()),
                "height",
                number(box.height()),
                "rx",
                corner == 0 ? null : number(corner));
    }

    private static String way(Path path) {
        StringBuilder way = new StringBuilder();
        for (Path.Part part : path.parts()) {
            for (int k = 0; k < part.xs().length; k++) {
                way.append(k == 0 ? 'M' : 'L')
                        .append(number(part.xs()[k]))
                        .append(' ')
                        .append(number(part.ys()[k]));
            }
            way.append(part.closed() ? "Z" : "");
        }
        return way.toString();
    }

    @Override
    protected void letters(Text text) {
        String place = number(text.x()) + " " + number(text.y());
        writer.leaf(
                        "text",
                        text.words(),
                        "class",
                        SvgStyles.of(text),
                        "text-anchor",
                        text.anchor().name().toLowerCase(Locale.ROOT),
                        "x",
                        number(text.x()),
                        "y",
                        number(text.y()),
                        "transform",
                        text.degrees() == 0 ? null : "rotate(" + number(text.degrees()) + " " + place + ")")
                .line();
    }

    @Override
    public void image(Raster raster, Box box) {
        writer.empty(
                        "image",
                        "href",
                        "data:image/png;base64," + Base64.getEncoder().encodeToString(PngFile.bytes(raster)),
                        "x",
                        number(box.x()),
                        "y",
                        number(box.y()),
                        "width",
                        number(box.width()),
                        "height",
                        number(box.height()),
                        "preserveAspectRatio",
                        "none",
                        "image-rendering",
                        raster.sharp() ? "pixelated" : null)
                .line();
    }

    /** By an inner drawing whose edges cut, so that no name is needed that other drawings of the page must not have. */
    @Override
    public void clip(Box box, Runnable drawing) {
        String x = number(box.x());
        String y = number(box.y());
        String width = number(box.width());
        String height = number(box.height());
        writer.open(
                        "svg",
                        "x",
                        x,
                        "y",
                        y,
                        "width",
                        width,
                        "height",
                        height,
                        "viewBox",
                        x + " " + y + " " + width + " " + height,
                        "preserveAspectRatio",
                        "none",
                        "aria-hidden",
                        "true")
                .line();
        drawing.run();
        writer.close("svg").line();
    }

    @Override
    public void fade(double share, Runnable drawing) {
        writer.open("g", "opacity", number(share)).line();
        drawing.run();
        writer.close("g").line();
    }
}
