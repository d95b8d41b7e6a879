package simmerpoint.report;

import java.nio.ByteBuffer;
import java.util.Base64;
import java.util.function.Consumer;
import simmerpoint.drawing.Drawing;
import simmerpoint.drawing.output.SvgCanvas;
import simmerpoint.drawing.output.XmlWriter;

/** A picture of the page with what it shows in words, for eyes and for whoever cannot see it. */
public final class HtmlFigure {
    private static final double WIDTH = 360;
    private static final int WIDTH_AT = 16;
    private static final int HEIGHT_AT = 20;

    private final String caption;
    private final Consumer<XmlWriter> picture;

    private HtmlFigure(String caption, Consumer<XmlWriter> picture) {
        this.caption = caption;
        this.picture = picture;
    }

    /**
     * A PNG file, which goes into the page itself. Where the page is narrow it can be scrolled sideways within its frame.
     *
     * @param png bytes of the file
     * @param alternative what it shows, for whoever cannot see it
     * @param caption stands below it
     */
    public static HtmlFigure png(byte[] png, String alternative, String caption) {
        ByteBuffer header = ByteBuffer.wrap(png);
        String width = Integer.toString(header.getInt(WIDTH_AT));
        String height = Integer.toString(header.getInt(HEIGHT_AT));
        String data = "data:image/png;base64," + Base64.getEncoder().encodeToString(png);
        return new HtmlFigure(
                caption,
                pen -> pen.open("div", "class", "wide", "role", "region", "aria-label", caption, "tabindex", "0")
                        .empty("img", "src", data, "width", width, "height", height, "alt", alternative)
                        .close("div"));
    }

    /** A drawing. */
    static HtmlFigure drawing(XmlWriter svg, String caption) {
        return new HtmlFigure(caption, pen -> pen.put(svg));
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
