package simmerpoint.report;

import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.SkyWords;
import simmerpoint.drawing.Stack;
import simmerpoint.drawing.chart.AimCharts;
import simmerpoint.study.aim.AimResult;
import simmerpoint.units.UnitSystem;

/** The charts of aiming with their words for the page. */
final class AimFigure {
    private static final double BETWEEN = 12;

    private AimFigure() {}

    static HtmlFigure of(AimResult result, UnitSystem system) {
        AimCharts charts = new AimCharts(result);
        return HtmlFigure.drawing(
                new Stack(charts.minutes())
                        .gap(BETWEEN)
                        .with(charts.drift())
                        .gap(BETWEEN)
                        .with(charts.turn()),
                "Three charts of watts: over the minutes after one aiming, over how far the sun has drifted, and over how far"
                        + " the dish is turned wrong; the table below holds the angles that matter.",
                caption(result, system));
    }

    private static String caption(AimResult result, UnitSystem system) {
        String ahead = result.lead()
                .map(lead -> "Dashed: aimed " + SkyWords.angle(lead.radians()) + " ahead of the sun. ")
                .orElse("");
        return "Top: the dish is aimed once and left alone; solid: aimed dead on. " + ahead
                + "Below: solid, up (above 0) and down; dashed, right (above 0) and left. Dotted line: "
                + new FigureFormat(system).percent(result.plan().lossShare()) + " less than dead on.";
    }
}
