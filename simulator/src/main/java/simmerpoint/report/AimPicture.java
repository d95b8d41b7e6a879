package simmerpoint.report;

import java.util.List;
import simmerpoint.answer.aim.AimAnswer;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.SkyWords;
import simmerpoint.answer.words.TargetWords;
import simmerpoint.drawing.Row;
import simmerpoint.drawing.Sheet;
import simmerpoint.drawing.chart.AimCharts;
import simmerpoint.drawing.chart.AimMaps;
import simmerpoint.quantities.OneLine;
import simmerpoint.quantities.Version;
import simmerpoint.study.aim.AimResult;
import simmerpoint.units.UnitSystem;

/** Aiming as a picture: watts over time and over both kinds of aiming mistakes, maps of both. */
final class AimPicture {
    private static final double TIME = 236;
    private static final double CURVES = 214;
    private static final double BETWEEN = 20;

    private AimPicture() {}

    static Sheet sheet(AimResult result, UnitSystem system) {
        String title = OneLine.of(result.scenario().title());
        AimCharts charts = new AimCharts(result);
        String noun = TargetWords.of(result.scenario().target()).noun();
        return new Sheet(title.isEmpty() ? "Aiming" : title)
                .subtitle(FirstSentence.of(AimAnswer.of(result, system)))
                .gap(14)
                .with(charts.minutes().tall(TIME))
                .gap(BETWEEN)
                .with(new Row(
                        BETWEEN,
                        List.of(charts.drift().tall(CURVES), charts.turn().tall(CURVES))))
                .gap(BETWEEN)
                .with(AimMaps.of(result))
                .gap(4)
                .caption(
                        "White line on the maps: " + SkyWords.loss(result.plan().lossShare())
                                + " of the watts dead on (cross) are lost. Grey: the sun is down or the " + noun
                                + " would touch the mirror.")
                .caption("Sun "
                        + new FigureFormat(system)
                                .degrees(result.scenario().sun().elevationRadians()) + " high, beam "
                        + FigureFormat.rounded(result.scenario().sun().beamWattsPerSquareMetre(), 3)
                        + "\u00a0W/m\u00b2; seed " + result.options().seed() + ", "
                        + FigureFormat.count(result.run().mapRays()) + " rays for each of "
                        + FigureFormat.count(result.run().aims()) + " aims of the maps. An estimate. Simmerpoint "
                        + Version.text())
                .caption("Focused sunlight blinds and burns: aim by a shadow, never look along the axis or into the"
                        + " mirror.");
    }
}
