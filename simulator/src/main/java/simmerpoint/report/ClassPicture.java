package simmerpoint.report;

import simmerpoint.answer.trial.ClassAnswer;
import simmerpoint.drawing.Sheet;
import simmerpoint.drawing.chart.ClassChart;
import simmerpoint.quantities.OneLine;
import simmerpoint.quantities.Version;
import simmerpoint.trial.ClassResult;
import simmerpoint.units.UnitSystem;

/** A class of cookers as a picture. */
final class ClassPicture {
    private ClassPicture() {}

    static Sheet sheet(ClassResult result, UnitSystem units) {
        String title = OneLine.of(result.scenario().scenario().title());
        return new Sheet(title.isEmpty() ? "A class of cookers" : title)
                .subtitle(ClassAnswer.brief(result, units).sections().get(0).heading() + ".")
                .gap(14)
                .with(new ClassChart(result))
                .caption("Watts: " + ClassAnswer.basisWords(result)
                        + " at 50 K above the air, with 95 % intervals. Simmerpoint " + Version.text());
    }
}
