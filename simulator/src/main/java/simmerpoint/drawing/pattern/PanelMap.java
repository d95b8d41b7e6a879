package simmerpoint.drawing.pattern;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.Canvas;
import simmerpoint.drawing.Drawing;
import simmerpoint.drawing.Path;
import simmerpoint.drawing.Style;
import simmerpoint.drawing.Text;
import simmerpoint.drawing.TextMetrics;
import simmerpoint.drawing.TextStyle;
import simmerpoint.geometry.Point;
import simmerpoint.geometry.Polygon;
import simmerpoint.workshop.CutPlan;
import simmerpoint.workshop.PanelPlace;
import simmerpoint.workshop.RibShape;

/**
 * Which panel goes where, seen from the sun, the dish's upper edge up: each with the name of its piece, or, where all are alike, with
 * its number. Panels that stand on no rib have their lean from level in degrees below it; ribs have their number beyond the rim.
 *
 * @param panels all of them
 * @param ribs how many ribs there are
 * @param ribRadius where a rib's number stands at the dish's edge, m from the axis
 */
public record PanelMap(List<PanelPlace> panels, int ribs, double ribRadius) implements Drawing {
    private static final double MARGIN = 4;
    private static final double RIB_MARGIN = 36;

    /** Letters get as small as this: a printed page bears it. */
    private static final double LEAST = 5;

    /** Of a plan. */
    public static PanelMap of(CutPlan plan) {
        int ribs = plan.rib().map(RibShape::count).orElse(0);
        return new PanelMap(plan.places(), ribs, plan.scenario().dish().radiusMetres());
    }

    @Override
    public double height(double width, TextMetrics metrics) {
        return width;
    }

    private double scale(Box box) {
        double reach = panels.stream()
                .flatMap(panel -> panel.edge().stream())
                .mapToDouble(v -> Math.max(Math.abs(v.x()), Math.abs(v.y())))
                .max()
                .orElse(1);
        double margin = ribs > 0 ? RIB_MARGIN : MARGIN;
        return (Math.min(box.width(), box.height()) / 2 - margin) / reach;
    }

    private static Path path(PanelPlace panel, Box box, double scale) {
        List<double[]> corners = panel.edge().stream()
                .map(v -> new double[] {box.middleX() - scale * v.y(), box.middleY() - scale * v.x()})
                .toList();
        return Path.through(corners, true);
    }

    @Override
    public void draw(Canvas canvas, Box box) {
        double scale = scale(box);
        boolean alike = panels.stream().map(PanelPlace::piece).distinct().count() == 1;
        for (PanelPlace panel : panels) {
            Path path = path(panel, box, scale);
            canvas.draw(Style.PIECE, path);
            String words = alike ? Integer.toString(panel.number()) : letter(panel.piece());
            Point middle = plan(panel).centroid();
            double[] at = {box.middleX() - scale * middle.x(), box.middleY() - scale * middle.y()};
            name(canvas, path.bounds(), at, words, panel);
        }
        for (int k = 0; k < ribs; k++) {
            double angle = 2 * Math.PI * k / ribs;
            double far = scale * ribRadius + 17;
            canvas.write(Text.at(
                            box.middleX() - far * Math.sin(angle),
                            box.middleY() - far * Math.cos(angle) + 4,
                            "rib " + (k + 1))
                    .in(TextStyle.SOFT)
                    .size(8)
                    .middle());
        }
    }

    /** The last word of "panel A" and of "rim panel A". */
    private static String letter(String piece) {
        return piece.substring(piece.lastIndexOf(' ') + 1);
    }

    /** The panel seen from the sun, x to the left and y up, m. */
    private static Polygon plan(PanelPlace panel) {
        return new Polygon(
                panel.edge().stream().map(v -> new Point(v.y(), v.x())).toList());
    }

    /** In the middle of the panel; its lean in the line below. */
    private void name(Canvas canvas, Box around, double[] at, String words, PanelPlace panel) {
        double size = Math.max(LEAST, Math.min(Text.SIZE, 0.36 * Math.min(around.width(), around.height())));
        boolean leans = ribs == 0;
        double up = leans ? 0.15 * size : -size / 3;
        canvas.write(
                Text.at(at[0], at[1] - up, words).in(TextStyle.LABEL).size(size).middle());
        if (leans) {
            canvas.write(Text.at(
                            at[0],
                            at[1] + 0.75 * size,
                            FigureFormat.fixed(Math.toDegrees(panel.cantRadians()), 1) + "\u00b0")
                    .in(TextStyle.LABEL)
                    .size(0.75 * size)
                    .middle());
        }
    }

    /** Marks the panels with those numbers, counted from 0, in a drawing in that box. */
    public void mark(Canvas canvas, Box box, Collection<Integer> numbers) {
        panels.stream()
                .filter(panel -> numbers.contains(panel.number() - 1))
                .forEach(panel -> canvas.draw(Style.POINTED_PANEL, path(panel, box, scale(box))));
    }

    /** The panel at a point of a drawing in that box. */
    public Optional<PanelPlace> at(Box box, double x, double y) {
        double scale = scale(box);
        double across = (box.middleX() - x) / scale;
        double up = (box.middleY() - y) / scale;
        return panels.stream().filter(panel -> plan(panel).contains(across, up)).findFirst();
    }
}
