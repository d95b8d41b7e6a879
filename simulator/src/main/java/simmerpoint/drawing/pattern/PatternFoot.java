package simmerpoint.drawing.pattern;

import simmerpoint.drawing.Box;
import simmerpoint.drawing.Canvas;
import simmerpoint.drawing.Drawing;
import simmerpoint.drawing.Style;
import simmerpoint.drawing.Text;
import simmerpoint.drawing.TextMetrics;
import simmerpoint.drawing.TextStyle;

/**
 * The foot of each page of a pattern: what it belongs to and two rulers to check the printer by.
 *
 * @param heading piece and title
 * @param page its name
 * @param unit metres of a unit
 */
record PatternFoot(String heading, String page, double unit) implements Drawing {
    /** Its height, units. */
    static final double HEIGHT = 64;

    private static final double INCH = 0.0254;

    @Override
    public double height(double width, TextMetrics metrics) {
        return HEIGHT;
    }

    @Override
    public void draw(Canvas canvas, Box box) {
        canvas.write(Text.at(box.x(), box.y() + 18, page).in(TextStyle.HEADING).size(16));
        canvas.write(Text.at(box.x() + 40, box.y() + 18, heading).within(box.width() - 40));
        ruler(canvas, box.x(), box.y() + 40, 0.01, 10, "100 mm");
        ruler(canvas, box.x(), box.y() + 58, INCH, 4, "4 in");
        canvas.write(Text.at(box.x() + 0.125 / unit, box.y() + 52, "Both must measure true: print at 100 %.")
                .in(TextStyle.SOFT)
                .within(box.width() - 0.125 / unit));
    }

    private void ruler(Canvas canvas, double x, double y, double part, int parts, String words) {
        double end = x + parts * part / unit;
        canvas.line(Style.RULER, x, y, end, y);
        for (int k = 0; k <= parts; k++) {
            double at = x + k * part / unit;
            canvas.line(Style.RULER, at, y - (k == 0 || k == parts ? 9 : 5), at, y);
        }
        canvas.write(Text.at(end + 6, y, words));
    }
}
