package simmerpoint.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import simmerpoint.answer.words.TimeWords;
import simmerpoint.heat.HeatLevel;
import simmerpoint.study.day.DayHour;
import simmerpoint.study.day.DayResult;
import simmerpoint.study.day.HourLight;

/** A day: watts before bands of the heat levels, below them the sun's height and the beam; narrow enough for a phone. */
final class DayDrawing {
    private static final double TOP = 24;
    private static final double WATTS = 190;
    private static final double SMALL = 62;
    private static final double GAP = 44;
    private static final double HEIGHT = TOP + WATTS + 2 * (GAP + SMALL) + 46;
    private static final double HEADROOM = 1.12;
    private static final int MOST_LABELS = 7;

    private final DayResult result;
    private final HourAxis axis;

    /** A drawing of a day with sun. */
    DayDrawing(DayResult result) {
        this.result = result;
        List<DayHour> all = result.curve();
        axis = HourAxis.around(all.get(0).time(), all.get(all.size() - 1).time());
    }

    HtmlFigure figure() {
        SvgSheet sheet = new SvgSheet(
                HEIGHT,
                "The watts taken up over the hours of "
                        + TimeWords.date(result.plan().date())
                        + " before bands of the heat levels, the sun’s height and the beam; the tables below hold the same"
                        + " figures.");
        watts(chart(sheet, TOP, WATTS, DayPicture.mostWatts(result)));
        elevation(chart(sheet, TOP + WATTS + GAP, SMALL, 90));
        beam(chart(sheet, TOP + WATTS + 2 * GAP + SMALL, SMALL, DayPicture.mostBeam(result)));
        SvgChart.levels(sheet, HEIGHT - 4);
        return HtmlFigure.drawing(
                sheet.finished(),
                "A clear day by the clock of " + result.day().site().zone()
                        + ". Pale bands about the curves: how far models of a clear sky differ.");
    }

    private SvgChart chart(SvgSheet sheet, double top, double height, double most) {
        return new SvgChart(sheet, SvgChart.RIGHT, top, height, 0, 1, Math.max(1, most * HEADROOM));
    }

    private double x(DayHour hour) {
        return axis.share(hour.time());
    }

    private List<double[]> points(List<DayHour> run, ToDoubleFunction<DayHour> figure) {
        return run.stream()
                .map(h -> new double[] {x(h), figure.applyAsDouble(h)})
                .toList();
    }

    private List<double[]> spans(List<DayHour> run, ToDoubleFunction<DayHour> low, ToDoubleFunction<DayHour> high) {
        return run.stream()
                .map(h -> new double[] {x(h), low.applyAsDouble(h), high.applyAsDouble(h)})
                .toList();
    }

    private void hours(SvgChart chart) {
        int step = (int) Math.ceil((axis.hours().size() - 1) / (double) MOST_LABELS);
        for (int k = 0; k < axis.hours().size(); k += step) {
            chart.below(axis.share(axis.hours().get(k)), axis.label(k));
        }
    }

    private void watts(SvgChart chart) {
        List<List<DayHour>> runs = DayPicture.runs(result);
        for (List<DayHour> run : runs) {
            for (HeatLevel level : HeatLevel.values()) {
                chart.area(
                        SvgChart.style(level),
                        spans(run, h -> DayPicture.begins(h, level), h -> DayPicture.ends(h, level)));
            }
        }
        chart.upright("Taken up by the pan, W");
        for (List<DayHour> run : runs) {
            chart.area("doubt", spans(run, h -> light(h).lowWatts(), h -> light(h).highWatts()));
            chart.curve("watts", points(run, h -> light(h).absorbed().value()));
        }
        hours(chart);
        chart.frame();
    }

    private static HourLight light(DayHour hour) {
        return hour.light().orElseThrow();
    }

    private void elevation(SvgChart chart) {
        chart.upright("Sun above the horizon, degrees");
        chart.line(points(result.curve(), h -> Math.toDegrees(h.elevationRadians())));
        hours(chart);
        chart.frame();
    }

    private void beam(SvgChart chart) {
        List<DayHour> all = new ArrayList<>(result.curve());
        chart.upright("Beam, W/m²");
        chart.area(
                "spread",
                spans(all, h -> h.beam().lowWattsPerSquareMetre(), h -> h.beam().highWattsPerSquareMetre()));
        chart.line(points(all, h -> h.beam().likelyWattsPerSquareMetre()));
        hours(chart);
        chart.frame();
    }
}
