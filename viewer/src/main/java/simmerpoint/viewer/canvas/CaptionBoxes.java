package simmerpoint.viewer.canvas;

import java.util.ArrayList;
import java.util.List;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.Canvas;
import simmerpoint.drawing.Drawing;
import simmerpoint.drawing.Raster;
import simmerpoint.drawing.Shape;
import simmerpoint.drawing.Style;
import simmerpoint.drawing.Text;
import simmerpoint.drawing.TextMetrics;

/** Where the words of a drawing stand, for whatever must not cover them. Paints nothing. */
public final class CaptionBoxes extends Canvas {
    private static final double ABOVE = 0.8;
    private static final double BELOW = 0.25;

    private final List<Box> boxes = new ArrayList<>();

    private CaptionBoxes() {}

    /** Of a drawing in a box. */
    public static List<Box> of(Drawing drawing, Box room) {
        CaptionBoxes canvas = new CaptionBoxes();
        drawing.draw(canvas, room);
        return List.copyOf(canvas.boxes);
    }

    @Override
    public TextMetrics metrics() {
        return FxMetrics::width;
    }

    @Override
    public void image(Raster raster, Box box) {
        // Pictures hold no words.
    }

    @Override
    public void clip(Box box, Runnable drawing) {
        drawing.run();
    }

    @Override
    public void fade(double share, Runnable drawing) {
        drawing.run();
    }

    @Override
    protected void paint(Style style, Shape shape) {
        // Shapes hold no words.
    }

    @Override
    protected void letters(Text text) {
        double wide = metrics().width(text);
        double left = switch (text.anchor()) {
            case START -> 0;
            case MIDDLE -> -wide / 2;
            case END -> -wide;
        };
        double sin = Math.sin(Math.toRadians(text.degrees()));
        double cos = Math.cos(Math.toRadians(text.degrees()));
        double[] span = {Double.MAX_VALUE, -Double.MAX_VALUE, Double.MAX_VALUE, -Double.MAX_VALUE};
        for (double x : new double[] {left, left + wide}) {
            for (double y : new double[] {-ABOVE * text.size(), BELOW * text.size()}) {
                double turnedX = text.x() + x * cos - y * sin;
                double turnedY = text.y() + x * sin + y * cos;
                span[0] = Math.min(span[0], turnedX);
                span[1] = Math.max(span[1], turnedX);
                span[2] = Math.min(span[2], turnedY);
                span[3] = Math.max(span[3], turnedY);
            }
        }
        boxes.add(new Box(span[0], span[2], span[1] - span[0], span[3] - span[2]));
    }
}
