package simmerpoint.report;

import simmerpoint.answer.words.Cautions;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.drawing.Sheet;
import simmerpoint.drawing.chart.WarmingChart;
import simmerpoint.quantities.OneLine;
import simmerpoint.quantities.Version;
import simmerpoint.study.trace.WarmingResult;
import simmerpoint.units.UnitSystem;

/** The warming curve as a picture. */
final class WarmingPicture {
    private WarmingPicture() {}

    static Sheet sheet(WarmingResult result, UnitSystem system) {
        String title = OneLine.of(result.scenario().title());
        return new Sheet(title.isEmpty() ? "How the water warms" : title)
                .subtitle("How the water warms while the light stays as it is")
                .gap(14)
                .with(WarmingChart.of(result, system))
                .gap(12)
                .caption("Sun "
                        + new FigureFormat(system)
                                .degrees(result.scenario().sun().elevationRadians()) + " high, beam "
                        + FigureFormat.rounded(result.scenario().sun().beamWattsPerSquareMetre(), 3)
                        + "\u00a0W/m\u00b2; seed " + result.seed()
                        + ". The range is that of the pan's losses. An estimate. Simmerpoint " + Version.text())
                .caption(Cautions.ALWAYS);
    }
}
