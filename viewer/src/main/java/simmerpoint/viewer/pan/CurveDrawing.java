package simmerpoint.viewer.pan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import javafx.geometry.Point2D;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;
import javafx.scene.text.TextAlignment;
import simmerpoint.answer.LevelWords;
import simmerpoint.report.LevelColours;
import simmerpoint.report.Scales;
import simmerpoint.study.LevelStretch;
import simmerpoint.study.MoveStudy;
import simmerpoint.study.PanPosition;
import simmerpoint.viewer.theme.Shade;
import simmerpoint.viewer.theme.Theme;

/** Watts and hottest spot over the pull-back, on bands of heat levels; where the pan stands is marked. */
final class CurveDrawing {
    static final double[] DASHES = {8, 5};
    private static final Color FLUX_ON_DARK = Color.rgb(0x8F, 0xBF, 0xFF);
    private static final double MARK_ROOM = 46;
    private static final double SAMPLE_ROOM = 50;
    private static final double MARK = 7;

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
        BandNames.Curve flux = curve(line, p -> p.hottestFlux() / mostFlux);
        BandNames.Curve watts = curve(line, p -> p.absorbed().value() / mostWatts);
        stroke(flux, colour(Scales.fluxColour()), DASHES);
        stroke(watts, colour(Scales.wattsColour()));
        List<BandNames.Obstacle> drawn = new ArrayList<>(List.of(flux, watts));
        Optional<Point2D> diamond = recommended(line, mostWatts);
        diamond.ifPresent(p -> drawn.add(BandNames.Obstacle.mark(p.getX(), p.getY(), MARK)));
        BandNames names = new BandNames(pen, frame, frame.x(state.pull().presentMetres()), drawn);
        line.move().stretches().forEach(stretch -> name(line, stretch, names));
        diamond.ifPresent(p -> PlaneKey.diamond(g, p.getX(), p.getY()));
        g.restore();
        axes(mostWatts, mostFlux);
    }

    private static Color colour(java.awt.Color c) {
        return Color.rgb(c.getRed(), c.getGreen(), c.getBlue());
    }

    private void band(CurveLine line, LevelStretch stretch) {
        double from = frame.x(line.move().presentMetres() + stretch.fromMetres());
        double to = frame.x(line.move().presentMetres() + stretch.toMetres());
        g.setFill(colour(LevelColours.of(stretch.level())));
        g.fillRect(from, frame.top(), to - from, frame.height());
        if (stretch.after().isPresent()) {
            g.setStroke(Color.rgb(0x55, 0x55, 0x55));
            g.strokeLine(to, frame.top(), to, frame.top() + frame.height());
        }
    }

    private void name(CurveLine line, LevelStretch stretch, BandNames names) {
        names.write(
                LevelWords.of(stretch.level()),
                frame.x(line.move().presentMetres() + stretch.fromMetres()),
                frame.x(line.move().presentMetres() + stretch.toMetres()),
                colour(LevelColours.of(stretch.level())),
                colour(LevelColours.textOn(stretch.level())));
    }

    private BandNames.Curve curve(CurveLine line, ToDoubleFunction<PanPosition> share) {
        int n = line.positions().size();
        double[] xs = new double[n];
        double[] ys = new double[n];
        for (int k = 0; k < n; k++) {
            PanPosition position = line.positions().get(k);
            xs[k] = frame.x(line.move().presentMetres() + position.offsetMetres());
            ys[k] = frame.y(share.applyAsDouble(position));
        }
        return new BandNames.Curve(xs, ys);
    }

    private void stroke(BandNames.Curve curve, Color colour, double... dashes) {
        g.setLineJoin(StrokeLineJoin.ROUND);
        g.setLineCap(StrokeLineCap.BUTT);
        g.setStroke(Color.color(1, 1, 1, 0.85));
        g.setLineWidth(5);
        g.strokePolyline(curve.xs(), curve.ys(), curve.xs().length);
        g.setStroke(colour);
        g.setLineWidth(2.2);
        g.setLineDashes(dashes);
        g.strokePolyline(curve.xs(), curve.ys(), curve.xs().length);
        g.setLineDashes();
        g.setLineWidth(1);
    }

    /** Where the recommended place lies among the curves, px; empty if it does not lie on this way. */
    private Optional<Point2D> recommended(CurveLine line, double mostWatts) {
        return line.result()
                .simmer()
                .filter(place -> place.move() == MoveStudy.Move.PULL_BACK)
                .map(place -> new Point2D(
                        frame.x(line.move().presentMetres() + place.position().offsetMetres()),
                        frame.y(place.position().absorbed().value() / mostWatts)));
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
        String where = words.unitName() + " from the focus";
        double side = Math.max(Pen.width(in, Pen.font(11)), Pen.width(out, Pen.font(11)));
        double middle = width - 2 * side - 24;
        boolean fits = Pen.width(where, Pen.font(11)) <= middle;
        pen.words(in, 4, y, TextAlignment.LEFT, Pen.font(11), width / 2 - 16);
        pen.words(fits ? where : words.unitName(), width / 2, y, TextAlignment.CENTER, Pen.font(11), width);
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
