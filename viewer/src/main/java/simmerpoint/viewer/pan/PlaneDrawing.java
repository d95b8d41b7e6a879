package simmerpoint.viewer.pan;

import java.util.Optional;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;
import simmerpoint.answer.TargetWords;
import simmerpoint.drawing.FluxColours;
import simmerpoint.drawing.chart.Ticks;
import simmerpoint.sampling.Estimate;
import simmerpoint.target.Spot;
import simmerpoint.viewer.theme.Shade;

/** The light on underside or disc: map, colour bar, what is marked on it, which way round it is. */
final class PlaneDrawing {
    static final double[] DASHED = {9, 6};
    static final double[] DOTTED = {2, 4};

    private static final double LINE = 17;
    private static final double BAR_ROOM = 58;
    private static final double BAR = 14;
    private static final double KEY_LEAST = 130;
    private static final double KEY_MOST = 190;
    private static final double SMALLEST_WITH_KEY = 120;
    private static final double WORDS = 12;

    /** How far words over the map may reach beyond it. */
    private static final double BESIDE = 5;

    private static final int MARKS = 6;

    private final Pen pen;
    private final GraphicsContext g;
    private final MapState state;
    private final TargetWords words;
    private final MapFrame frame;

    private PlaneDrawing(Pen pen, MapState state, MapFrame frame) {
        this.pen = pen;
        g = pen.g();
        this.state = state;
        this.frame = frame;
        words = TargetWords.of(state.result().scenario().target());
    }

    /** Where the map lies on a drawing of that size. */
    static MapFrame frame(MapState state, double width, double height) {
        double side = Math.min(height - 2 * LINE - 2, width - BAR_ROOM);
        double withKey = Math.min(side, width - BAR_ROOM - KEY_LEAST);
        boolean hasKey = state.key() && withKey >= SMALLEST_WITH_KEY;
        double used = hasKey ? withKey : side;
        double key = hasKey ? Math.min(KEY_MOST, width - BAR_ROOM - used) : 0;
        double left = Math.max(0, (width - BAR_ROOM - used - key) / 2);
        return MapFrame.in(
                state.plane(),
                Facing.of(state.result().scenario()),
                left + 2,
                LINE + Math.max(0, (height - 2 * LINE - used) / 2),
                Math.max(8, used - 2),
                Math.max(8, used - 2));
    }

    static void paint(Pen pen, MapState state, double width, double height) {
        PlaneDrawing drawing = new PlaneDrawing(pen, state, frame(state, width, height));
        drawing.map();
        drawing.sides(width);
        drawing.bar();
        double left = drawing.frame.left() + drawing.frame.width() + BAR_ROOM;
        if (state.key() && width - left >= KEY_LEAST - 4) {
            new PlaneKey(pen, state).paint(left, drawing.frame.top(), width - left, drawing.frame.height());
        }
    }

    private void map() {
        g.setGlobalAlpha(state.earlier() ? 0.55 : 1);
        g.drawImage(FluxImage.of(frame, state.top()), frame.left(), frame.top());
        g.setGlobalAlpha(1);
        g.save();
        g.beginPath();
        g.rect(frame.left(), frame.top(), frame.width(), frame.height());
        g.clip();
        marks();
        state.reading().ifPresent(place -> {
            pen.ring(frame.x(place), frame.y(place), 5);
        });
        g.restore();
        g.setStroke(pen.shade(Shade.LINE));
        g.strokeRect(frame.left() - 0.5, frame.top() - 0.5, frame.width() + 1, frame.height() + 1);
    }

    private void marks() {
        double x = frame.x(new Place(0, 0));
        double y = frame.y(new Place(0, 0));
        pen.ring(x, y, state.result().scenario().target().radiusMetres() * frame.scale());
        Spot spot = state.result().spot();
        radius(spot.radius50(), "50\u00a0%", -0.30 * Math.PI, DASHED);
        radius(spot.radius90(), "90\u00a0%", -0.20 * Math.PI, DOTTED);
        if (state.result().ledger().caught().value() > 0) {
            Place hot = new Place(spot.peakX(), spot.peakY());
            pen.cross(frame.x(hot), frame.y(hot), 7);
            Place middle = new Place(spot.centroidX().value(), spot.centroidY().value());
            centroid(frame.x(middle), frame.y(middle));
        }
    }

    /** A diamond. */
    private void centroid(double x, double y) {
        PlaneKey.diamond(g, x, y);
    }

    private void radius(Optional<Estimate> radius, String tag, double direction, double... dashes) {
        if (radius.isEmpty() || !Double.isFinite(radius.get().value())) {
            return;
        }
        double pixels = radius.get().value() * frame.scale();
        double x = frame.x(new Place(0, 0));
        double y = frame.y(new Place(0, 0));
        pen.ring(x, y, Math.min(pixels, 1e4), dashes);
        double tagX = x + pixels * Math.cos(direction);
        double tagY = y + pixels * Math.sin(direction);
        boolean inside = tagX < frame.left() + frame.width() - 18 && tagY > frame.top() + 12;
        if (pixels > 24 && inside) {
            g.setFill(Color.color(0, 0, 0, 0.66));
            g.fillRoundRect(tagX - 16, tagY - 8, 32, 16, 6, 6);
            g.setFill(Color.WHITE);
            pen.words(tag, tagX, tagY + 4, TextAlignment.CENTER, Pen.font(11), 30);
        }
    }

    private void sides(double width) {
        g.setFill(pen.shade(Shade.WORD));
        String up = words.isPan() ? words.towardsMinusX() : words.towardsPlusX();
        String down = words.isPan() ? words.towardsPlusX() : words.towardsMinusX();
        up("\u2191 " + up);
        down("\u2193 " + down, width);
    }

    /** Under the middle, or from the left edge if they are too wide for that. */
    private void down(String text, double width) {
        double middle = frame.left() + frame.width() / 2;
        double foot = frame.top() + frame.height() + 13;
        double room = 2 * Math.min(middle, width - middle);
        boolean wide = Pen.width(text, Pen.font(WORDS)) > room;
        pen.words(
                text,
                wide ? 0 : middle,
                foot,
                wide ? TextAlignment.LEFT : TextAlignment.CENTER,
                Pen.font(WORDS),
                wide ? width : room);
    }

    /** Over the middle; words wider than a small map end with it, since the unit of the colour bar stands to the right. */
    private void up(String text) {
        double free = frame.width() + 2 * BESIDE;
        boolean wide = Pen.width(text, Pen.font(WORDS)) > free;
        double right = frame.left() + frame.width() + BESIDE;
        pen.words(
                text,
                wide ? right : frame.left() + frame.width() / 2,
                frame.top() - 5,
                wide ? TextAlignment.RIGHT : TextAlignment.CENTER,
                Pen.font(WORDS),
                wide ? right : free);
    }

    private void bar() {
        double left = frame.left() + frame.width() + 10;
        int height = (int) frame.height();
        for (int k = 0; k < height; k++) {
            int rgb = FluxColours.rgb((k + 0.5) / height);
            g.setFill(Color.rgb(rgb >> 16 & 0xFF, rgb >> 8 & 0xFF, rgb & 0xFF));
            g.fillRect(left, frame.top() + height - 1 - k, BAR, 1);
        }
        g.setStroke(pen.shade(Shade.LINE));
        g.strokeRect(left - 0.5, frame.top() - 0.5, BAR + 1, height + 1.0);
        g.setFill(pen.shade(Shade.WORD));
        pen.words("kW/m\u00b2", left, frame.top() - 5, TextAlignment.LEFT, Pen.bold(11), BAR_ROOM - 6);
        for (double mark : Ticks.upTo(state.top() / 1000, Math.max(2, Math.min(MARKS, height / 24)))) {
            double y = frame.top() + height * (1 - mark * 1000 / state.top());
            g.strokeLine(left + BAR, y, left + BAR + 4, y);
            pen.words(Ticks.text(mark), left + BAR + 7, y + 4, TextAlignment.LEFT, Pen.font(11), 27);
        }
    }
}
