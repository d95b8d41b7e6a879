package simmerpoint.drawing.pattern;

import java.util.List;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.Canvas;
import simmerpoint.drawing.Drawing;
import simmerpoint.drawing.Path;
import simmerpoint.drawing.Style;
import simmerpoint.drawing.Text;
import simmerpoint.drawing.TextMetrics;
import simmerpoint.drawing.TextStyle;
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

    @Override
    public void draw(Canvas canvas, Box box) {
        double reach = panels.stream()
                .flatMap(panel -> panel.edge().stream())
                .mapToDouble(v -> Math.max(Math.abs(v.x()), Math.abs(v.y())))
                .max()
                .orElse(1);
        double scale = (Math.min(box.width(), box.height()) / 2 - MARGIN) / reach;
        boolean alike = panels.stream().map(PanelPlace::piece).distinct().count() == 1;
        for (PanelPlace panel : panels) {
            List<double[]> corners = panel.edge().stream()
                    .map(v -> new double[] {box.middleX() - scale * v.y(), box.middleY() - scale * v.x()})
                    .toList();
            Path path = Path.through(corners, true);
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
}
