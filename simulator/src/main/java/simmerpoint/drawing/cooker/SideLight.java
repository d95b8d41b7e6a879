package simmerpoint.drawing.cooker;

import java.util.List;
import java.util.function.Function;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.Canvas;
import simmerpoint.drawing.Circle;
import simmerpoint.drawing.Path;
import simmerpoint.drawing.Style;
import simmerpoint.drawing.Text;
import simmerpoint.drawing.TextStyle;
import simmerpoint.drawing.chart.Legend;
import simmerpoint.setup.SideView.Place;
import simmerpoint.study.light.RayPath;

/**
 * The light in a side view.
 *
 * @param canvas to draw on
 * @param scene what is seen
 * @param frame where it lies
 */
record SideLight(Canvas canvas, SideScene scene, SideFrame frame) {
    /** Half of the widest words at the sun, units. */
    static final double LABEL = 54;

    private static final double SUN = 10;
    private static final double HEAD = 6;
    private static final double SAMPLE = 26;

    /** What the lines mean. */
    static Legend legend(SideScene scene) {
        String noun = scene.noun();
        return new Legend()
                .with(
                        SAMPLE,
                        (canvas, x, y) -> {
                            canvas.line(Style.SUNLIGHT, x, y - 4, x + SAMPLE, y - 4);
                            head(canvas, Style.SUN, x + SAMPLE / 3, y - 4, -1, 0);
                        },
                        "sunlight")
                .line(Style.LIGHT_PATH, "reaches the " + noun)
                .line(Style.LOST_PATH, "goes past the " + noun)
                .line(Style.HOLDER, "holds the " + noun)
                .line(Style.AXIS, scene.besideAxis() ? "strings that find the focus" : "the dish\u2019s axis");
    }

    /** On its way to the mirror. */
    void sunlight() {
        lines(Style.SUNLIGHT, scene.rays(), SideScene.Ray::from, SideScene.Ray::mirror);
        for (SideScene.Ray ray : scene.rays()) {
            double x1 = frame.x(ray.from());
            double y1 = frame.y(ray.from());
            double dx = frame.x(ray.mirror()) - x1;
            double dy = frame.y(ray.mirror()) - y1;
            head(canvas, Style.SUN, x1 + 0.3 * dx, y1 + 0.3 * dy, dx, dy);
        }
    }

    /** On its way from the mirror. */
    void reflected() {
        List<SideScene.Ray> missed = of(RayPath.Fate.MISSED);
        lines(Style.LIGHT_PATH, of(RayPath.Fate.CAUGHT), SideScene.Ray::mirror, SideScene.Ray::end);
        lines(Style.LOST_PATH, missed, SideScene.Ray::mirror, SideScene.Ray::end);
        for (SideScene.Ray ray : missed) {
            double x2 = frame.x(ray.end());
            double y2 = frame.y(ray.end());
            head(canvas, Style.LOST, x2, y2, x2 - frame.x(ray.mirror()), y2 - frame.y(ray.mirror()));
        }
    }

    private List<SideScene.Ray> of(RayPath.Fate fate) {
        return scene.rays().stream().filter(ray -> ray.fate() == fate).toList();
    }

    /** Straight lines as one shape, which a window paints in half the time of single ones. */
    private void lines(
            Style style,
            List<SideScene.Ray> rays,
            Function<SideScene.Ray, Place> from,
            Function<SideScene.Ray, Place> to) {
        List<Path.Part> parts = rays.stream()
                .map(ray -> new Path.Part(
                        new double[] {frame.x(from.apply(ray)), frame.x(to.apply(ray))},
                        new double[] {frame.y(from.apply(ray)), frame.y(to.apply(ray))},
                        false))
                .toList();
        if (!parts.isEmpty()) {
            canvas.draw(style, new Path(parts));
        }
    }

    /** The sun, {@code high} said at it. */
    void sun(String high, Box box) {
        double[] at = frame.sun(scene, box);
        canvas.draw(Style.SUN, new Circle(at[0], at[1], SUN));
        double middle = Math.max(box.x() + LABEL, Math.min(box.right() - LABEL, at[0]));
        canvas.write(Text.at(middle, at[1] - SUN - 9, "sun " + high + " high")
                .in(TextStyle.NOTE)
                .middle());
    }

    /** The head of an arrow with its point at (x, y) that flies along (dx, dy). */
    private static void head(Canvas canvas, Style style, double x, double y, double dx, double dy) {
        double length = Math.hypot(dx, dy);
        if (length > 0) {
            double ux = HEAD * dx / length;
            double uy = HEAD * dy / length;
            canvas.draw(style, Path.closed(x, y, x - ux - uy / 2, y - uy + ux / 2, x - ux + uy / 2, y - uy - ux / 2));
        }
    }
}
