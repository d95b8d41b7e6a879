package simmerpoint.viewer.pan;

import java.util.Optional;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.TextAlignment;
import simmerpoint.answer.Figures;
import simmerpoint.answer.TargetWords;
import simmerpoint.sampling.Estimate;
import simmerpoint.target.FluxMap;
import simmerpoint.viewer.theme.Shade;

/** The pan's wall unrolled, seen from outside, its side away from the sun in the middle. */
final class WallDrawing {
    private static final double LINE = 17;
    private static final double LEAST_FOR_ALL = 76;

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
        Optional<Double> own = state.choice().ownTop(wall, state.top());
        g.setFill(pen.shade(Shade.WORD));
        String head = "Wall, unrolled, from outside; " + colours(state, wall, own);
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

    /** Which colours it is drawn in. */
    static String colours(MapState state, FluxMap wall, Optional<Double> own) {
        if (!(wall.largest() > 0)) {
            return "no focused light falls on it";
        }
        return own.map(top ->
                        "its own colours, up to " + new Figures(state.units()).plainFlux(new Estimate(top, 0.05 * top)))
                .orElse("the same colours");
    }

    private static void sides(Pen pen, MapState state, MapFrame frame) {
        GraphicsContext g = pen.g();
        TargetWords words = TargetWords.of(state.result().scenario().target());
        double quarter = Math.PI / 2 * state.result().scenario().target().radiusMetres();
        double foot = frame.top() + frame.height();
        double part = frame.width() / 4;
        double between = part - Pen.width("right", Pen.font(11)) / 2 - 6;
        boolean narrow = Pen.width(words.towardsMinusX(), Pen.font(11)) > between;
        String[] names = {words.towardsPlusX(), "right", narrow ? "sun side" : words.towardsMinusX(), "left"};
        double ends = 2 * Pen.width(names[2], Pen.font(11)) + Pen.width(names[0], Pen.font(11)) + 12;
        boolean middleOnly = ends > frame.width();
        for (int k = -2; k <= 2; k++) {
            double x = frame.x(new Place(k * quarter, 0));
            if (!(x >= frame.left() - 2 && x <= frame.left() + frame.width() + 2)) {
                continue;
            }
            g.strokeLine(x, foot, x, foot + 4);
            if ((k % 2 != 0 && part < LEAST_FOR_ALL) || (k != 0 && middleOnly)) {
                continue;
            }
            g.setFill(pen.shade(Shade.WORD));
            TextAlignment where = k == -2 ? TextAlignment.LEFT : k == 2 ? TextAlignment.RIGHT : TextAlignment.CENTER;
            double at = k == -2 ? frame.left() : k == 2 ? frame.left() + frame.width() : x;
            pen.words(
                    names[Math.floorMod(k, 4)],
                    at,
                    foot + 15,
                    where,
                    Pen.font(11),
                    (middleOnly ? 4 : part < LEAST_FOR_ALL ? 2 : 1.3) * part);
        }
    }
}
