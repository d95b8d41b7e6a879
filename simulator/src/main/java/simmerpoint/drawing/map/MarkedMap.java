package simmerpoint.drawing.map;

import simmerpoint.answer.words.FigureFormat;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.Canvas;
import simmerpoint.drawing.Circle;
import simmerpoint.drawing.Path;
import simmerpoint.drawing.RoundBox;
import simmerpoint.drawing.Style;
import simmerpoint.drawing.Text;
import simmerpoint.drawing.TextStyle;
import simmerpoint.drawing.chart.MapMarks;
import simmerpoint.drawing.chart.Ticks;
import simmerpoint.units.UnitSystem;

/**
 * A map with what lies on it; lines show on any colour.
 *
 * @param canvas to draw on
 * @param frame where the map lies
 */
record MarkedMap(Canvas canvas, MapFrame frame) {
    private static final double EARLIER = 0.55;
    private static final double TAG = 11;

    /** The map in colours up to {@code top} W/m², paler if it is an earlier one, and {@code marks} over it. */
    void map(double top, boolean earlier, Runnable marks) {
        Runnable image = () -> canvas.image(MapRaster.of(frame.map(), frame.facing(), top), frame.box());
        if (earlier) {
            canvas.fade(EARLIER, image);
        } else {
            image.run();
        }
        canvas.clip(frame.box(), marks);
        canvas.draw(Style.FRAME, frame.box().inside(-0.5, -0.5, -0.5, -0.5));
    }

    /** A circle about the middle; none if nothing of it would be seen. */
    void circle(Style style, double radius) {
        double r = radius * frame.scale();
        if (r < Math.hypot(frame.box().width(), frame.box().height())) {
            canvas.draw(style, new Circle(x(), y(), r));
        }
    }

    /** A few letters on a circle, in a direction from the middle clockwise from the right, if there is room. */
    void tag(String words, double radius, double direction) {
        double r = radius * frame.scale();
        double x = x() + r * Math.cos(direction);
        double y = y() + r * Math.sin(direction);
        if (r > 24 && x < frame.box().right() - 18 && y > frame.box().y() + 12) {
            MapMarks.plate(canvas, Text.at(x, y + 4, words).size(TAG).middle());
        }
    }

    private double x() {
        return frame.x(new Place(0, 0));
    }

    private double y() {
        return frame.y(new Place(0, 0));
    }

    /** The place that is read. */
    void ring(Place place) {
        canvas.draw(Style.OUTLINE, new Circle(frame.x(place), frame.y(place), 5));
    }

    /** A diamond: the centre of the light. */
    static void diamond(Canvas canvas, double x, double y) {
        canvas.draw(Style.DOT, Path.closed(x, y - 5, x + 5, y, x, y + 5, x - 5, y));
    }

    /** A bar of a round length in the lower left corner. */
    void scaleBar(UnitSystem units) {
        double unit = units.shortUnitMetres();
        double count = Ticks.below(0.25 * frame.box().width() / frame.scale() / unit);
        double wide = count * unit * frame.scale();
        double left = frame.box().x() + 14;
        double bottom = frame.box().bottom() - 14;
        String words = FigureFormat.rounded(count, 1) + FigureFormat.NBSP + units.shortUnit();
        canvas.draw(Style.PLATE, new RoundBox(new Box(left - 7, bottom - 20, Math.max(wide, 40) + 14, 28), 4));
        canvas.draw(Style.ON_PLATE, new Box(left, bottom, wide, 3));
        canvas.write(Text.at(left, bottom - 5, words).in(TextStyle.ON_PLATE).within(Math.max(wide, 40)));
    }
}
