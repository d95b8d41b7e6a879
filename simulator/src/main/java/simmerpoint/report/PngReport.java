package simmerpoint.report;

import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.PowerWords;
import simmerpoint.answer.words.TargetWords;
import simmerpoint.drawing.Paragraph;
import simmerpoint.drawing.Sheet;
import simmerpoint.drawing.TextStyle;
import simmerpoint.drawing.map.PlaneMap;
import simmerpoint.drawing.map.WallMap;
import simmerpoint.quantities.OneLine;
import simmerpoint.quantities.Version;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.units.UnitSystem;

/**
 * The flux map as a picture: for a pan the plane of its underside from above with the sun's side at the top, the lid, and
 * the unrolled wall from outside; for a bare disc its plane as seen from the dish. Lid and wall in colours of their own, where light falls on them.
 */
final class PngReport {
    private static final double FIGURES = 14;

    private PngReport() {}

    static Sheet sheet(TraceResult result, UnitSystem system) {
        String title = OneLine.of(result.scenario().title());
        Sheet sheet = new Sheet(title.isEmpty() ? "Flux map" : title)
                .subtitle(
                        TargetWords.of(result.scenario().target()).isPan()
                                ? "Focused light in the plane of the pan\u2019s underside, as if seen from above through the pan"
                                : "Focused light in the plane of the disc, seen from the dish")
                .gap(10)
                .with(PlaneMap.of(result, system));
        WallMap.of(result, system).ifPresent(wall -> sheet.gap(16).with(wall));
        return sheet.gap(14)
                .with(new Paragraph(watts(result, new FigureFormat(system)), TextStyle.LABEL, FIGURES))
                .caption("Seed " + result.seed() + ", "
                        + FigureFormat.count(result.run().rays()) + " rays in "
                        + result.replicates() + " replicates. \u00b1 is one standard error. An estimate. Simmerpoint "
                        + Version.text())
                .caption(
                        "Focused sunlight blinds and burns: keep eyes, face and hands out of the beam; cover the mirror"
                                + " when not in use.");
    }

    private static String watts(TraceResult result, FigureFormat figures) {
        String reach = figures.plainWatts(result.ledger().caught()) + " of focused sunlight ";
        String first = TargetWords.of(result.scenario().target()).isPan()
                ? new PowerWords(result.heat(), figures.system()).gets(result.useful()) + "; " + reach + "reach the pan"
                : reach + "land on the disc";
        return first + "; sun " + figures.degrees(result.scenario().sun().elevationRadians()) + " high, beam "
                + FigureFormat.rounded(result.scenario().sun().beamWattsPerSquareMetre(), 3) + "\u00a0W/m\u00b2";
    }
}
