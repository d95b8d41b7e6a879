package simmerpoint.drawing.pattern;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
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
import simmerpoint.workshop.PanelPlace;

/**
 * Which panel goes where, seen from the sun, the dish's upper edge up: each with the name of its piece, or, where all are alike, with
 * its number.
 *
 * @param panels all of them
 */
public record PanelMap(List<PanelPlace> panels) implements Drawing {
    private static final double MARGIN = 4;

    /** Letters get as small as this: a printed page bears it. */
    private static final double LEAST = 5;

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
        return (Math.min(box.width(), box.height()) / 2 - MARGIN) / reach;
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
            double x = box.middleX() - scale * panel.middle().y();
            double y = box.middleY() - scale * panel.middle().x();
            String words =
                    alike ? Integer.toString(panel.number()) : panel.piece().replace("panel ", "");
            Box around = path.bounds();
            double size = Math.max(LEAST, Math.min(Text.SIZE, 0.4 * Math.min(around.width(), around.height())));
            canvas.write(Text.at(x, y + size / 3, words)
                    .in(TextStyle.LABEL)
                    .size(size)
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
        return panels.stream()
                .filter(panel -> new Polygon(panel.edge().stream()
                                .map(v -> new Point(v.y(), v.x()))
                                .toList())
                        .contains(across, up))
                .findFirst();
    }
}
