package simmerpoint.report;

import simmerpoint.answer.safety.SafetyAnswer;
import simmerpoint.answer.words.Cautions;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.drawing.Sheet;
import simmerpoint.drawing.cooker.FieldDrawing;
import simmerpoint.pan.Pan;
import simmerpoint.quantities.OneLine;
import simmerpoint.quantities.Version;
import simmerpoint.safety.SafetyResult;
import simmerpoint.safety.person.PersonShape;
import simmerpoint.units.UnitSystem;

/** The light around the cooker as a picture, with the pan in place and taken away. */
final class SafetyPicture {
    private SafetyPicture() {}

    static Sheet sheet(SafetyResult result, UnitSystem system) {
        String title = OneLine.of(result.scenario().title());
        Sheet sheet = new Sheet(title.isEmpty() ? "What it can burn" : title)
                .subtitle(FirstSentence.of(SafetyAnswer.of(result, system)));
        if (result.scenario().target() instanceof Pan) {
            sheet.heading("With the pan in place").with(FieldDrawing.of(result.standing(), result.people(), system));
        }
        return sheet.heading("With the pan taken away")
                .with(FieldDrawing.of(result.taken(), result.people(), system))
                .gap(10)
                .caption("Light of mirrors and sun together in the upright plane through the axis, sun "
                        + new FigureFormat(system)
                                .degrees(result.scenario().sun().elevationRadians()) + " high, beam "
                        + FigureFormat.rounded(result.scenario().sun().beamWattsPerSquareMetre(), 3)
                        + "\u00a0W/m\u00b2; the outline is a grown-up of "
                        + new FigureFormat(system).length(PersonShape.HEIGHT, 2)
                        + " as near as is safe in the strongest sun. Seed " + result.seed() + ", "
                        + FigureFormat.count(result.run().rays())
                        + " rays. An estimate, not a clearance: local codes come first. Simmerpoint " + Version.text())
                .caption(Cautions.oneLine(result.cautionFlux(), Cautions.AROUND));
    }
}
