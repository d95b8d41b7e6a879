package simmerpoint.drawing.chart;

import java.util.Optional;
import java.util.function.ToDoubleFunction;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.Canvas;
import simmerpoint.drawing.Circle;
import simmerpoint.drawing.Drawing;
import simmerpoint.drawing.Path;
import simmerpoint.drawing.Style;
import simmerpoint.drawing.TextMetrics;
import simmerpoint.heat.HeatLevel;
import simmerpoint.study.pan.LevelBorder;
import simmerpoint.study.pan.LevelStretch;
import simmerpoint.study.pan.MoveStudy;
import simmerpoint.study.pan.PanPosition;
import simmerpoint.study.pan.PanResult;
import simmerpoint.units.UnitSystem;

/**
 * One move of the pan: watts and hottest spot over it, on bands of heat levels. Where the pan stands is marked, and what is recommended
 * for a simmer.
 */
public final class MoveChart implements Drawing {
    /** Room beside wide and live curves for figures, units. */
    public static final double SIDE = 72;

    private static final double WIDE = 480;
    private static final double NARROW_SIDE = 38;
    private static final double LOW = 158;
    private static final double HIGH = 196;
    private static final double STALE = 0.35;
    private static final double MARK = 8;
    private static final double RANGE_ROW = 5.5;

    private final Optional<MoveCurve> curve;
    private final MoveAxis axis;
    private final Optional<LivePan> live;

    private MoveChart(Optional<MoveCurve> curve, MoveAxis axis, Optional<LivePan> live) {
        this.curve = curve;
        this.axis = axis;
        this.live = live;
    }

    /** One of the moves of a study; lengths count from where the pan stands. */
    public static MoveChart of(PanResult result, MoveStudy.Move move, UnitSystem units) {
        MoveCurve curve = MoveCurve.of(result, move);
        MoveAxis axis =
                new MoveAxis(move, curve.move().fromMetres(), curve.move().toMetres(), 0, 0, false, units);
        return new MoveChart(Optional.of(curve), axis, Optional.empty());
    }

    /** The pull-back while somebody moves the pan; lengths count from the focus. */
    public static MoveChart live(Optional<MoveCurve> curve, double low, double high, LivePan pan, UnitSystem units) {
        double origin = curve.map(c -> c.move().presentMetres()).orElse(0.0);
        MoveAxis axis = new MoveAxis(MoveStudy.Move.PULL_BACK, low, high, origin, pan.presentMetres(), true, units);
        return new MoveChart(curve, axis, Optional.of(pan));
    }

    @Override
    public double height(double width, TextMetrics metrics) {
        return MoveAxis.HEAD + (width < WIDE ? LOW : HIGH) + MoveAxis.FOOT;
    }

    /** Where the curves lie in a box. */
    public Box inner(Box box) {
        double side = live.isEmpty() && box.width() < WIDE ? NARROW_SIDE : SIDE;
        return box.inside(side, MoveAxis.HEAD, side, MoveAxis.FOOT);
    }

    /** Where places on the way lie in a box. */
    public Scale scale(Box box) {
        Box inner = inner(box);
        return new Scale(axis.low(), axis.high(), inner.x(), inner.right());
    }

    @Override
    public void draw(Canvas canvas, Box box) {
        Box inner = inner(box);
        double top = curve.map(MoveCurve::mostWatts).orElse(1.0);
        Plot plot = Plot.of(canvas, inner, axis.low(), axis.high(), top);
        curve.ifPresent(c -> {
            canvas.clip(
                    inner, () -> canvas.fade(live.isEmpty() || live.get().fits() ? 1 : STALE, () -> curves(plot, c)));
            axis.heads(plot, box, c);
        });
        plot.frame();
        axis.lengths(plot, box);
        if (live.isPresent()) {
            live(plot, live.get());
        } else {
            standing(plot);
        }
    }

    private double x(Plot plot, double offset) {
        return plot.x().at(axis.origin() + offset);
    }

    private void curves(Plot plot, MoveCurve c) {
        for (LevelStretch s : c.move().stretches()) {
            plot.stripe(Style.of(s.level()), axis.origin() + s.fromMetres(), axis.origin() + s.toMetres());
        }
        c.move().borders().forEach(border -> border(plot, border));
        curve(plot, c, Style.FLUX_CURVE, p -> p.hottestFlux() / c.mostFlux());
        curve(plot, c, Style.WATTS_CURVE, p -> p.cookingPower().value() / c.mostWatts());
        Optional<Flag> flag = flag(plot, c);
        BandNames names = new BandNames(plot.canvas(), plot.box(), marks(plot, flag));
        for (LevelStretch s : c.move().stretches()) {
            names.write(s.level(), x(plot, s.fromMetres()), x(plot, s.toMetres()));
        }
        flag.ifPresent(f -> f.draw(plot.canvas()));
    }

    /** What names of levels keep clear of: the line of the pan's place, and the flag. */
    private Box[] marks(Plot plot, Optional<Flag> flag) {
        double top = plot.box().y() + (live.isPresent() ? 0 : MoveMarks.BELOW_NAMES);
        Box line = new Box(
                plot.x().at(axis.present()) - MARK, top, 2 * MARK, plot.box().height());
        return flag.map(f -> new Box[] {line, f.room()}).orElse(new Box[] {line});
    }

    private void curve(Plot plot, MoveCurve c, Style style, ToDoubleFunction<PanPosition> share) {
        int n = c.positions().size();
        double[] xs = new double[n];
        double[] ys = new double[n];
        for (int k = 0; k < n; k++) {
            PanPosition position = c.positions().get(k);
            xs[k] = x(plot, position.offsetMetres());
            ys[k] = plot.box().bottom()
                    - share.applyAsDouble(position) * plot.box().height();
        }
        plot.canvas().draw(style, Path.through(xs, ys));
    }

    /**
     * The border and, at the foot, a bar over its range with a knot at the border, each level's in its own row. A bar whose end is
     * nowhere stops at the border.
     */
    private void border(Plot plot, LevelBorder border) {
        plot.upright(Style.BORDER, axis.origin() + border.offsetMetres());
        if (live.isPresent()) {
            return;
        }
        double place = x(plot, border.offsetMetres());
        double low = Double.isFinite(border.lowMetres()) ? x(plot, border.lowMetres()) : place;
        double high = Double.isFinite(border.highMetres()) ? x(plot, border.highMetres()) : place;
        HeatLevel upper = border.before().compareTo(border.after()) > 0 ? border.before() : border.after();
        double foot = plot.box().bottom() - 1 - RANGE_ROW * row(upper);
        plot.canvas().line(Style.RANGE, low, foot, high, foot);
        plot.canvas().draw(Style.KNOT, new Circle(place, foot, 2.9));
    }

    private static int row(HeatLevel level) {
        return switch (level) {
            case TOO_COOL, KEEP_WARM -> 1;
            case SIMMER -> 2;
            case BOIL -> 3;
            case FAST_BOIL -> 4;
        };
    }

    /** The place recommended for a simmer, if it lies on this way. */
    private Optional<Flag> flag(Plot plot, MoveCurve c) {
        return c.result()
                .simmer()
                .filter(place -> place.move() == axis.move())
                .map(place -> new Flag(
                        x(plot, place.position().offsetMetres()),
                        plot.y().at(place.position().cookingPower().value()),
                        plot.box().y()));
    }

    private void standing(Plot plot) {
        double x = plot.x().at(axis.present());
        double top = plot.box().y() + MoveMarks.BELOW_NAMES;
        plot.canvas().line(Style.PRESENT, x, top + MoveMarks.HIGH, x, plot.box().bottom());
        MoveMarks.triangle(plot.canvas(), x, top);
    }

    /** A line with a handle at its foot that can be taken hold of, and a knob at the watts that are traced there. */
    private void live(Plot plot, LivePan pan) {
        Canvas canvas = plot.canvas();
        pan.pointedMetres().ifPresent(place -> plot.upright(Style.POINTED, place));
        plot.upright(Style.PRESENT_HELD, pan.presentMetres());
        double x = plot.x().at(pan.presentMetres());
        curve.filter(c -> pan.fits()).ifPresent(c -> {
            double watts = pan.tracedWatts()
                    .orElseGet(() -> c.at(pan.presentMetres()).cookingPower().value());
            canvas.draw(Style.KNOB_RIM, new Circle(x, plot.y().at(watts), 6.5));
            canvas.draw(Style.KNOB, new Circle(x, plot.y().at(watts), 4.5));
        });
        MoveMarks.handle(canvas, x, plot.box().bottom());
    }
}
