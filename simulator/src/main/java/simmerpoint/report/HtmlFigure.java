package simmerpoint.report;

import java.util.function.Consumer;
import simmerpoint.drawing.Drawing;
import simmerpoint.drawing.output.SvgCanvas;
import simmerpoint.drawing.output.XmlWriter;

/** A picture of the page with what it shows in words, for eyes and for whoever cannot see it. */
public final class HtmlFigure {
    private static final double WIDTH = 360;

    private final String caption;
    private final Consumer<XmlWriter> picture;

    private HtmlFigure(String caption, Consumer<XmlWriter> picture) {
        this.caption = caption;
        this.picture = picture;
    }

    /** A drawing, 360 units wide, with what it shows in words for whoever cannot see it. */
    static HtmlFigure drawing(Drawing drawing, String description, String caption) {
        return new HtmlFigure(caption, pen -> SvgCanvas.write(pen, drawing, WIDTH, description));
    }

    void write(XmlWriter pen) {
        pen.open("figure");
        picture.accept(pen);
        pen.leaf("figcaption", caption).close("figure").line();
    }
}
