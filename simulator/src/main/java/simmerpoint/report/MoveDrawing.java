package simmerpoint.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import simmerpoint.answer.LevelWords;
import simmerpoint.answer.MoveWords;
import simmerpoint.heat.HeatLevel;
import simmerpoint.study.pan.LevelBorder;
import simmerpoint.study.pan.PanMove;
import simmerpoint.study.pan.PanPosition;
import simmerpoint.study.pan.PanResult;
import simmerpoint.units.UnitSystem;

/** One move of the pan: its heat levels as bands, watts and hottest spot as curves; narrow enough for a phone. */
final class MoveDrawing {
    private static final double TOP = 26;
    private static final double PLOT = 158;
    private static final double RIGHT = SvgSheet.WIDTH - 36;
    private static final double HEIGHT = TOP + PLOT + 62;
    private static final int FINE = 160;
    private static final int MARKS = 3;

    private final PanMove move;
    private final PanResult result;
    private final UnitSystem system;
    private final double mostWatts;
    private final double mostFlux;

    /** A drawing whose scales are those of {@code result}, so that its moves can be compared. */
    MoveDrawing(PanMove move, PanResult result, UnitSystem system) {
        this.move = move;
        this.result = result;
        this.system = system;
        mostWatts = PanSheet.mostWatts(result);
        mostFlux = PanSheet.mostFlux(result);
    }

    HtmlFigure figure() {
        SvgSheet sheet = new SvgSheet(HEIGHT, description());
        SvgChart chart = new SvgChart(sheet, RIGHT, TOP, PLOT, move.fromMetres(), move.toMetres(), mostWatts);
        move.stretches().forEach(s -> chart.stretch(s.level(), s.fromMetres(), s.toMetres()));
        move.borders().forEach(border -> border(sheet, chart, border));
        chart.upright("W");
        chart.right("kW/m²", mostFlux / 1000);
        offsets(sheet, chart);
        chart.curve("flux", points(p -> p.hottestFlux() / mostFlux * mostWatts));
        chart.curve("watts", points(p -> p.absorbed().value()));
        chart.frame();
        marks(sheet, chart);
        SvgChart.levels(sheet, HEIGHT - 4);
        return HtmlFigure.drawing(sheet.finished(), caption());
    }

    private String description() {
        return MoveWords.heading(move.move())
                + ". Watts taken up and hottest spot over the offset from where the pan stands, "
                + "from " + LevelWords.of(move.stretches().get(0).level()) + " at the one end to "
                + LevelWords.of(
                        move.stretches().get(move.stretches().size() - 1).level())
                + " at the other; the list and the table below hold the same figures.";
    }

    private String caption() {
        String simmer = recommended() ? " ◆ recommended for a simmer." : "";
        return "Solid, left scale: watts taken up. Dashed, right scale: hottest spot. ▼ where the pan stands." + simmer
                + " Bars at the foot: four in five pans like this one change their level there.";
    }

    private boolean recommended() {
        return result.simmer().filter(p -> p.move() == move.move()).isPresent();
    }

    private List<double[]> points(ToDoubleFunction<PanPosition> figure) {
        List<double[]> points = new ArrayList<>();
        for (int k = 0; k <= FINE; k++) {
            double offset = move.fromMetres() + k * (move.toMetres() - move.fromMetres()) / FINE;
            points.add(new double[] {offset, figure.applyAsDouble(move.at(offset))});
        }
        return points;
    }

    /** A bar over the border's range, each level's in its own row; an end that is nowhere stops at the border. */
    private void border(SvgSheet sheet, SvgChart chart, LevelBorder border) {
        double place = chart.x(border.offsetMetres());
        sheet.line("border", place, TOP, place, TOP + PLOT);
        double low = Double.isFinite(border.lowMetres()) ? chart.x(border.lowMetres()) : place;
        double high = Double.isFinite(border.highMetres()) ? chart.x(border.highMetres()) : place;
        HeatLevel upper = border.before().compareTo(border.after()) > 0 ? border.before() : border.after();
        double foot = TOP + PLOT - 1 - 5.0 * SvgChart.number(upper);
        double from = Math.max(SvgChart.LEFT, low);
        double to = Math.min(RIGHT, high);
        sheet.line("seam", from, foot, to, foot);
        sheet.line("range", from, foot, to, foot);
        sheet.circle("knot", place, foot, 2.4);
    }

    private void offsets(SvgSheet sheet, SvgChart chart) {
        double unit = system == UnitSystem.INCH ? 0.0254 : 0.01;
        double most = Math.max(-move.fromMetres(), move.toMetres()) / unit;
        for (double mark : NiceSteps.upTo(most, MARKS)) {
            for (double at : mark > 0 ? new double[] {-mark, mark} : new double[] {0}) {
                if (move.reaches(at * unit)) {
                    String sign = at < 0 ? "\u2212" : "";
                    chart.below(at * unit, sign + SvgChart.text(mark));
                }
            }
        }
        double y = TOP + PLOT + 33;
        sheet.text("start", 2, y, "← " + MoveWords.negative(move.move()));
        sheet.text("end", SvgSheet.WIDTH - 2, y, MoveWords.positive(move.move()) + " →");
        sheet.text("end", SvgSheet.WIDTH - 2, TOP + PLOT + 16, system == UnitSystem.INCH ? "in" : "cm");
    }

    private void marks(SvgSheet sheet, SvgChart chart) {
        double x = chart.x(0);
        double y = TOP + 24;
        sheet.line("here", x, y, x, TOP + PLOT);
        String triangle = SvgSheet.way(
                List.of(new double[] {x, y + 2}, new double[] {x - 6, y - 8}, new double[] {x + 6, y - 8}), true);
        sheet.path("mark", triangle);
        result.simmer().filter(p -> p.move() == move.move()).ifPresent(place -> {
            double sx = chart.x(place.position().offsetMetres());
            double sy = chart.y(place.position().absorbed().value());
            sheet.path(
                    "mark",
                    SvgSheet.way(
                            List.of(
                                    new double[] {sx, sy - 7},
                                    new double[] {sx + 7, sy},
                                    new double[] {sx, sy + 7},
                                    new double[] {sx - 7, sy}),
                            true));
        });
    }
}
