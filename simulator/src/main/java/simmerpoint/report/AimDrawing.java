package simmerpoint.report;

import java.util.List;
import simmerpoint.answer.Figures;
import simmerpoint.answer.SkyWords;
import simmerpoint.answer.TargetWords;
import simmerpoint.drawing.chart.Ticks;
import simmerpoint.study.aim.AimCurve;
import simmerpoint.study.aim.AimInterval;
import simmerpoint.study.aim.AimResult;
import simmerpoint.units.UnitSystem;

/** Aiming: watts over the time since one aiming, and over how far sun and dish are off; narrow enough for a phone. */
final class AimDrawing {
    private static final double TOP = 24;
    private static final double PLOT = 128;
    private static final double PITCH = PLOT + 66;
    private static final double HEADROOM = 1.12;
    private static final int MARKS = 6;

    private final AimResult result;
    private final Figures figures;
    private final String noun;
    private final double most;
    private SvgSheet sheet;

    AimDrawing(AimResult result, UnitSystem system) {
        this.result = result;
        figures = new Figures(system);
        noun = TargetWords.of(result.scenario().target()).noun();
        double highest = result.deadOnWatts().value();
        for (AimCurve curve : result.curves()) {
            for (AimCurve.Point p : curve.points()) {
                highest = Math.max(highest, p.watts().value());
            }
        }
        most = highest;
    }

    HtmlFigure figure() {
        sheet = new SvgSheet(
                2 * PITCH + TOP + PLOT + 36,
                "Three charts of watts: over the minutes after one aiming, over how far the sun has drifted, and over how far"
                        + " the dish is turned wrong; the table below holds the angles that matter.");
        minutes(TOP);
        degrees(false, TOP + PITCH, "Sun drifted on, dish and " + noun + " standing still: W");
        degrees(true, TOP + 2 * PITCH, "Dish turned wrong: W");
        return HtmlFigure.drawing(sheet.finished(), caption());
    }

    private String caption() {
        String ahead = result.lead()
                .map(lead -> "Dashed: aimed " + SkyWords.angle(lead.radians()) + " ahead of the sun. ")
                .orElse("");
        return "Top: the dish is aimed once and left alone; solid: aimed dead on. " + ahead
                + "Below: solid, up (above 0) and down; dashed, right (above 0) and left. Dotted line: "
                + figures.percent(result.plan().lossShare()) + " less than dead on.";
    }

    private void minutes(double top) {
        AimInterval once = result.deadOnInterval();
        AimInterval longer = result.longInterval().minutes() >= once.minutes() ? result.longInterval() : once;
        double end = Math.max(1e-3, longer.minutes());
        SvgChart chart = chart(top, 0, end);
        chart.upright("What the " + noun + " gets after one aiming: W");
        Ticks.upTo(end, MARKS).forEach(mark -> chart.below(mark, SvgChart.text(mark)));
        sheet.text("middle", (SvgChart.LEFT + SvgChart.RIGHT) / 2, top + PLOT + 31, "minutes after the aiming");
        result.lead().ifPresent(lead -> chart.curve("flux", points(lead.interval())));
        chart.curve("watts", points(longer));
        loss(chart, 0, end);
        chart.frame();
        if (result.minutes().isPresent() && once.minutes() < end) {
            sheet.line("here", chart.x(once.minutes()), top, chart.x(once.minutes()), top + PLOT);
        }
    }

    private static List<double[]> points(AimInterval interval) {
        return interval.moments().stream()
                .map(m -> new double[] {m.minutes(), m.watts().value()})
                .toList();
    }

    private SvgChart chart(double top, double first, double last) {
        sheet.rectangle("ground-of-chart", SvgChart.LEFT, top, SvgChart.RIGHT - SvgChart.LEFT, PLOT);
        return new SvgChart(sheet, SvgChart.RIGHT, top, PLOT, first, last, Math.max(1, most * HEADROOM));
    }

    private void loss(SvgChart chart, double from, double to) {
        double watts = (1 - result.plan().lossShare()) * result.deadOnWatts().value();
        sheet.line("here", chart.x(from), chart.y(watts), chart.x(to), chart.y(watts));
    }

    private void degrees(boolean turn, double top, String name) {
        List<AimCurve> two =
                result.curves().stream().filter(c -> c.turn() == turn).toList();
        double reach = two.stream()
                .flatMap(c -> c.points().stream())
                .mapToDouble(p -> Math.abs(Math.toDegrees(p.radians())))
                .max()
                .orElse(1);
        SvgChart chart = chart(top, -reach, reach);
        chart.upright(name);
        for (double mark : Ticks.upTo(reach, MARKS / 3)) {
            chart.below(mark, SvgChart.text(mark) + "°");
            if (mark > 0) {
                chart.below(-mark, "\u2212" + SvgChart.text(mark) + "°");
            }
        }
        sheet.text("middle", (SvgChart.LEFT + SvgChart.RIGHT) / 2, top + PLOT + 31, "degrees from dead on");
        for (AimCurve curve : two) {
            List<double[]> points = curve.points().stream()
                    .map(p ->
                            new double[] {Math.toDegrees(p.radians()), p.watts().value()})
                    .toList();
            chart.curve(curve.side() ? "flux" : "watts", points);
        }
        loss(chart, -reach, reach);
        chart.frame();
    }
}
