package simmerpoint.viewer.pan;

import java.util.Optional;
import java.util.function.ToDoubleFunction;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;
import javafx.scene.text.TextAlignment;
import simmerpoint.answer.LevelWords;
import simmerpoint.report.LevelColours;
import simmerpoint.report.Scales;
import simmerpoint.study.pan.LevelStretch;
import simmerpoint.study.pan.MoveStudy;
import simmerpoint.study.pan.PanPosition;
import simmerpoint.viewer.theme.Shade;
import simmerpoint.viewer.theme.Theme;

/** Watts and hottest spot over the pull-back, on bands of heat levels; where the pan stands is marked. */
final class CurveDrawing {
    static final double[] DASHES = {8, 5};
    private static final Color FLUX_ON_DARK = Color.rgb(0x8F, 0xBF, 0xFF);
    private static final double MARK_ROOM = 46;
    private static final double SAMPLE_ROOM = 50;

    private final Pen pen;
    private final GraphicsContext g;
    private final CurveState state;
    private final CurveFrame frame;

    private CurveDrawing(Pen pen, CurveState state, CurveFrame frame) {
        this.pen = pen;
        g = pen.g();
        this.state = state;
        this.frame = frame;
    }

    static void paint(Pen pen, CurveState state, double width, double height) {
        CurveFrame frame = CurveFrame.of(state.pull(), width, height);
        CurveDrawing drawing = new CurveDrawing(pen, state, frame);
        state.pull().line().ifPresent(drawing::curves);
        drawing.box();
        drawing.lengths(width);
        drawing.pointed();
        drawing.present();
    }

    private void curves(CurveLine line) {
        g.save();
        g.beginPath();
        g.rect(frame.left(), frame.top(), frame.width(), frame.height());
        g.clip();
        g.setGlobalAlpha(state.pull().fits() ? 1 : 0.35);
        line.move().stretches().forEach(stretch -> band(line, stretch));
        double mostWatts = Scales.mostWatts(line.result());
        double mostFlux = Scales.mostFlux(line.result());
        curve(line, p -> p.hottestFlux() / mostFlux, colour(Scales.fluxColour()), DASHES);
        curve(line, p -> p.absorbed().value() / mostWatts, colour(Scales.wattsColour()));
        Optional<double[]> flag = recommended(line, mostWatts);
        names(line, flag.map(p -> Flag.room(p[0], p[1], frame.top())).orElse(new double[0]));
        flag.ifPresent(p -> Flag.paint(g, p[0], p[1], frame.top()));
        g.restore();
        axes(mostWatts, mostFlux);
    }

    private static Color colour(java.awt.Color c) {
        return Color.rgb(c.getRed(), c.getGreen(), c.getBlue());
    }

    private double[] ends(CurveLine line, LevelStretch stretch) {
        return new double[] {
            frame.x(line.move().presentMetres() + stretch.fromMetres()),
            frame.x(line.move().presentMetres() + stretch.toMetres())
        };
    }

    private void band(CurveLine line, LevelStretch stretch) {
        double[] ends = ends(line, stretch);
        g.setFill(colour(LevelColours.of(stretch.level())));
        g.fillRect(ends[0], frame.top(), ends[1] - ends[0], frame.height());
        if (stretch.after().isPresent()) {
            g.setStroke(Color.rgb(0x55, 0x55, 0x55));
            g.strokeLine(ends[1], frame.top(), ends[1], frame.top() + frame.height());
        }
    }

    private void names(CurveLine line, double... flag) {
        double mark = frame.x(state.pull().presentMetres());
        BandNames names = new BandNames(g, frame.top(), frame.height(), mark, flag);
        for (LevelStretch stretch : line.move().stretches()) {
            double[] ends = ends(line, stretch);
            names.paint(
                    LevelWords.of(stretch.level()),
                    Math.max(frame.left(), ends[0]),
                    Math.min(frame.left() + frame.width(), ends[1]),
                    colour(LevelColours.of(stretch.level())),
                    colour(LevelColours.textOn(stretch.level())));
        }
    }

    private void curve(CurveLine line, ToDoubleFunction<PanPosition> share, Color colour, double... dashes) {
        int n = line.positions().size();
        double[] xs = new double[n];
        double[] ys = new double[n];
        for (int k = 0; k < n; k++) {
            PanPosition position = line.positions().get(k);
            xs[k] = frame.x(line.move().presentMetres() + position.offsetMetres());
            ys[k] = frame.y(share.applyAsDouble(position));
        }
        g.setLineJoin(StrokeLineJoin.ROUND);
        g.setLineCap(StrokeLineCap.BUTT);
        g.setStroke(Color.color(1, 1, 1, 0.85));
        g.setLineWidth(5);
        g.strokePolyline(xs, ys, n);
        g.setStroke(colour);
        g.setLineWidth(2.2);
        g.setLineDashes(dashes);
        g.strokePolyline(xs, ys, n);
        g.setLineDashes();
        g.setLineWidth(1);
    }

    /** The place recommended for a simmer, if it lies on this way: x and y, px. */
    private Optional<double[]> recommended(CurveLine line, double mostWatts) {
        return line.result()
                .simmer()
                .filter(place -> place.move() == MoveStudy.Move.PULL_BACK)
                .map(place -> new double[] {
                    frame.x(line.move().presentMetres() + place.position().offsetMetres()),
                    frame.y(place.position().absorbed().value() / mostWatts)
                });
    }

    private void box() {
        g.setStroke(pen.shade(Shade.LINE));
        g.strokeRect(frame.left() - 0.5, frame.top() - 0.5, frame.width() + 1, frame.height() + 1);
    }

    private void axes(double mostWatts, double mostFlux) {
        double left = frame.left();
        double right = left + frame.width();
        int marks = (int) Math.max(2, Math.min(5, frame.height() / 26));
        g.setFill(pen.shade(Shade.WORD));
        g.setStroke(pen.shade(Shade.WORD));
        double head = frame.top() - 7;
        sample(left - SAMPLE_ROOM, head - 4, pen.shade(Shade.WORD));
        String watts = "W taken up";
        double wattsWide = Pen.width(watts, Pen.bold(11.5));
        pen.words(watts, left - SAMPLE_ROOM + 26, head, TextAlignment.LEFT, Pen.bold(11.5), frame.width());
        for (double mark : Scales.marks(mostWatts, marks)) {
            double y = frame.y(mark / mostWatts);
            g.strokeLine(left - 5, y, left, y);
            pen.words(Scales.text(mark), left - 8, y + 4, TextAlignment.RIGHT, Pen.font(11), MARK_ROOM);
        }
        Color flux = pen.theme() == Theme.DARK ? FLUX_ON_DARK : colour(Scales.fluxColour());
        g.setFill(flux);
        g.setStroke(flux);
        String name = "hottest spot, kW/m\u00b2";
        double end = right + SAMPLE_ROOM;
        double room = end - (left - SAMPLE_ROOM) - wattsWide - 26 - 28 - 12;
        double wide = Math.min(Pen.width(name, Pen.bold(11.5)), room);
        pen.words(name, end, head, TextAlignment.RIGHT, Pen.bold(11.5), room);
        sample(end - wide - 28, head - 4, flux, DASHES);
        for (double mark : Scales.marks(mostFlux / 1000, marks)) {
            double y = frame.y(mark * 1000 / mostFlux);
            g.strokeLine(right, y, right + 5, y);
            pen.words(Scales.text(mark), right + 8, y + 4, TextAlignment.LEFT, Pen.font(11), MARK_ROOM);
        }
    }

    private void sample(double x, double y, Color colour, double... dashes) {
        g.setStroke(colour);
        g.setLineWidth(2.4);
        g.setLineDashes(dashes);
        g.strokeLine(x, y, x + 22, y);
        g.setLineDashes();
        g.setLineWidth(1);
    }

    private void lengths(double width) {
        PullWords words = new PullWords(state.units());
        g.setFill(pen.shade(Shade.WORD));
        g.setStroke(pen.shade(Shade.LINE));
        double foot = frame.top() + frame.height();
        double unit = words.unit();
        double step =
                Scales.roundBelow((frame.high() - frame.low()) / unit / Math.max(2, Math.min(8, frame.width() / 48)));
        for (long k = (long) Math.ceil(frame.low() / unit / step - 1e-9); k * step * unit <= frame.high() + 1e-9; k++) {
            double x = frame.x(k * step * unit);
            g.strokeLine(x, foot, x, foot + 5);
            String text = k < 0 ? "\u2212" + Scales.text(-k * step) : Scales.text(k * step);
            pen.words(text, x, foot + 17, TextAlignment.CENTER, Pen.font(11), 44);
        }
        g.setFill(pen.shade(Shade.QUIET));
        double y = foot + 31;
        String in = "\u2190 " + PullWords.in();
        String out = PullWords.out() + " \u2192";
        String where = "pull-back, " + words.unitName();
        double from = 4 + Pen.width(in, Pen.font(11)) + 6;
        double to = width - 4 - Pen.width(out, Pen.font(11)) - 6;
        if (Pen.width(where, Pen.font(11)) > to - from) {
            where = words.unitName();
        }
        double half = Pen.width(where, Pen.font(11)) / 2;
        double middle = Math.max(from + half, Math.min(to - half, width / 2));
        pen.words(in, 4, y, TextAlignment.LEFT, Pen.font(11), width / 2 - 16);
        pen.words(where, middle, y, TextAlignment.CENTER, Pen.font(11), to - from);
        pen.words(out, width - 4, y, TextAlignment.RIGHT, Pen.font(11), width / 2 - 16);
    }

    private void pointed() {
        state.pointed().ifPresent(place -> {
            double x = frame.x(place);
            g.setStroke(Color.BLACK);
            g.setLineDashes(2, 3);
            g.strokeLine(x, frame.top(), x, frame.top() + frame.height());
            g.setLineDashes();
        });
    }

    /** A line with a handle at its foot that can be taken hold of, and a knob at the watts that are traced there. */
    private void present() {
        double x = frame.x(state.pull().presentMetres());
        double foot = frame.top() + frame.height();
        g.setStroke(Color.WHITE);
        g.setLineWidth(4.5);
        g.strokeLine(x, frame.top(), x, foot);
        g.setStroke(Color.BLACK);
        g.setLineWidth(1.8);
        g.strokeLine(x, frame.top(), x, foot);
        g.setLineWidth(1);
        state.pull().line().filter(line -> state.pull().fits()).ifPresent(line -> {
            double watts = state.traced()
                    .map(e -> e.value())
                    .orElseGet(() ->
                            line.at(state.pull().presentMetres()).absorbed().value());
            knob(x, frame.y(watts / Scales.mostWatts(line.result())));
        });
        g.setFill(pen.shade(Shade.HANDLE));
        double[] xs = {x, x + 8, x + 8, x - 8, x - 8};
        double[] ys = {foot - 1, foot + 8, foot + 16, foot + 16, foot + 8};
        g.fillPolygon(xs, ys, 5);
        g.setStroke(pen.shade(Shade.SHEET));
        g.strokePolygon(xs, ys, 5);
    }

    private void knob(double x, double y) {
        g.setFill(Color.WHITE);
        g.fillOval(x - 6.5, y - 6.5, 13, 13);
        g.setFill(Color.BLACK);
        g.fillOval(x - 4.5, y - 4.5, 9, 9);
    }
}
