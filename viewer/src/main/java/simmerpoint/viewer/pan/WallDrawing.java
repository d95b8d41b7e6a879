package simmerpoint.viewer.pan;

import java.util.Optional;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.Font;
import javafx.scene.text.TextAlignment;
import simmerpoint.answer.Figures;
import simmerpoint.answer.TargetWords;
import simmerpoint.report.Scales;
import simmerpoint.target.FluxMap;
import simmerpoint.target.WallPeak;
import simmerpoint.viewer.theme.Shade;

/** The pan's wall unrolled, seen from outside, its side away from the sun in the middle. */
final class WallDrawing {
    private static final double LINE = 17;
    private static final double SMALL = 10;

    private WallDrawing() {}

    /** Height that shows the whole of a wall on a drawing of that width. */
    static double height(FluxMap wall, double width) {
        double shape = wall.rows() * wall.cellHeight() / (wall.columns() * wall.cellWidth());
        return Math.floor((width - 4) * shape) + 2 * LINE + 2;
    }

    /** Where the wall lies on a drawing of that size. */
    static MapFrame frame(FluxMap wall, double width, double height) {
        MapFrame fit = MapFrame.in(wall, Facing.FIRST_RIGHT, 0, LINE, width - 4, height - 2 * LINE - 2);
        double left = Math.round((width - fit.width()) / 2);
        return new MapFrame(wall, Facing.FIRST_RIGHT, left, LINE, fit.width(), fit.height());
    }

    static void paint(Pen pen, MapState state, FluxMap wall, double width, double height) {
        GraphicsContext g = pen.g();
        MapFrame frame = frame(wall, width, height);
        Optional<Double> own = ownTop(state, wall);
        g.setFill(pen.shade(Shade.WORD));
        String whole = "Wall, unrolled, from outside; " + colours(state, wall);
        boolean brief = Pen.width(whole, Pen.font(12)) > width;
        String head = brief ? "Wall, unrolled; " + colours(state, wall) : whole;
        boolean narrow = Pen.width(head, Pen.font(12)) > width - frame.left();
        double left = narrow ? 0 : frame.left();
        pen.words(head, left, frame.top() - 5, TextAlignment.LEFT, Pen.font(12), width - left);
        g.setGlobalAlpha(state.earlier() ? 0.55 : 1);
        g.drawImage(FluxImage.of(frame, own.orElse(state.top())), frame.left(), frame.top());
        g.setGlobalAlpha(1);
        g.setStroke(pen.shade(Shade.LINE));
        g.strokeRect(frame.left() - 0.5, frame.top() - 0.5, frame.width() + 1, frame.height() + 1);
        state.reading().ifPresent(place -> pen.ring(frame.x(place), frame.y(place), 5));
        sides(pen, state, frame);
    }

    /** The upper end of its colours, if it has its own, W/m². */
    private static Optional<Double> ownTop(MapState state, FluxMap wall) {
        return state.choice().ownTop(wall, state.top(), direct(state));
    }

    private static double direct(MapState state) {
        return state.result().scenario().sun().beamWattsPerSquareMetre();
    }

    /** Which colours it is drawn in. */
    static String colours(MapState state, FluxMap wall) {
        Figures figures = new Figures(state.units());
        if (!(wall.largest() > 0)) {
            return "no focused light falls on it";
        }
        if (ownTop(state, wall).isEmpty()) {
            return "the same colours";
        }
        String most = Scales.wallFlux(wall, figures);
        return WallPeak.of(wall) >= direct(state)
                ? "its own colours, up to " + most
                : "at most " + most + "; colours up to direct sun";
    }

    private static void sides(Pen pen, MapState state, MapFrame frame) {
        GraphicsContext g = pen.g();
        TargetWords words = TargetWords.of(state.result().scenario().target());
        double quarter = Math.PI / 2 * state.result().scenario().target().radiusMetres();
        double foot = frame.top() + frame.height();
        double part = frame.width() / 4;
        String[] names = {words.towardsPlusX(), "right", words.towardsMinusX(), "left"};
        Font font = Pen.font(apart(names, part, 11) ? 11 : SMALL);
        boolean narrow = !apart(names, part, font.getSize());
        double ends = 2 * Pen.width(names[2], font) + Pen.width(names[0], font) + 8;
        boolean middleOnly = ends > frame.width();
        for (int k = -2; k <= 2; k++) {
            double x = frame.x(new Place(k * quarter, 0));
            if (!(x >= frame.left() - 2 && x <= frame.left() + frame.width() + 2)) {
                continue;
            }
            g.strokeLine(x, foot, x, foot + 4);
            if ((k % 2 != 0 && narrow) || (k != 0 && middleOnly)) {
                continue;
            }
            g.setFill(pen.shade(Shade.WORD));
            TextAlignment where = k == -2 ? TextAlignment.LEFT : k == 2 ? TextAlignment.RIGHT : TextAlignment.CENTER;
            double at = k == -2 ? frame.left() : k == 2 ? frame.left() + frame.width() : x;
            pen.words(
                    names[Math.floorMod(k, 4)], at, foot + 15, where, font, (middleOnly ? 4 : narrow ? 2 : 1.3) * part);
        }
    }

    /** Whether the names of the ends leave room for those of the sides. */
    private static boolean apart(String[] names, double part, double size) {
        Font font = Pen.font(size);
        return Pen.width(names[2], font) + Pen.width(names[1], font) / 2 + 6 <= part;
    }
}
