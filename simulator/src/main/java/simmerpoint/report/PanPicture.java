package simmerpoint.report;

import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.MoveWords;
import simmerpoint.drawing.Sheet;
import simmerpoint.drawing.chart.LevelLegend;
import simmerpoint.drawing.chart.MoveChart;
import simmerpoint.drawing.chart.MoveLegend;
import simmerpoint.quantities.OneLine;
import simmerpoint.quantities.Version;
import simmerpoint.study.pan.PanMove;
import simmerpoint.study.pan.PanResult;
import simmerpoint.units.UnitSystem;

/** The three moves as a picture: watts and hottest spot over each on the same scales, heat levels as bands. */
final class PanPicture {
    private PanPicture() {}

    static Sheet sheet(PanResult result, UnitSystem system) {
        String title = OneLine.of(result.base().scenario().title());
        Sheet sheet = new Sheet(title.isEmpty() ? "Where the pan stands" : title)
                .subtitle(
                        "The heat into the water, how hot its hottest spot gets and what its water does, over the three"
                                + " moves")
                .gap(8)
                .with(MoveLegend.of())
                .with(LevelLegend.of());
        for (PanMove move : result.moves()) {
            sheet.heading(MoveWords.heading(move.move())).with(MoveChart.of(result, move.move(), system));
        }
        return sheet.gap(12)
                .caption("Sun "
                        + new FigureFormat(system)
                                .degrees(result.base().scenario().sun().elevationRadians())
                        + " high, beam "
                        + FigureFormat.rounded(result.base().scenario().sun().beamWattsPerSquareMetre(), 3)
                        + "\u00a0W/m\u00b2; seed " + result.base().seed() + ", "
                        + FigureFormat.count(result.run().rays())
                        + " rays. Heat levels for the likely losses of this pan, lid and wind. An estimate. Simmerpoint "
                        + Version.text())
                .caption(
                        "Focused sunlight blinds and burns: cover the mirror before moving the pan; keep eyes, face and"
                                + " hands out of the beam.");
    }
}
