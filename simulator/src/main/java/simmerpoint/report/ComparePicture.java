package simmerpoint.report;

import simmerpoint.answer.compare.CompareAnswer;
import simmerpoint.answer.compare.CompareWords;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.drawing.Sheet;
import simmerpoint.drawing.chart.CompareChart;
import simmerpoint.quantities.CompareQuantities;
import simmerpoint.quantities.Version;
import simmerpoint.study.compare.Comparison;
import simmerpoint.units.UnitSystem;

/** Compared cookers as a picture: bars of watts with error bars, the best on top; the best 64 if there are more. */
final class ComparePicture {
    /** More rows are left to the table. */
    static final int MOST_ROWS = 64;

    private ComparePicture() {}

    static Sheet sheet(Comparison comparison, UnitSystem system) {
        String title = CompareQuantities.title(comparison);
        int all = comparison.rows().size();
        String left = all > MOST_ROWS ? " The best " + MOST_ROWS + " of " + all + "." : "";
        return new Sheet(title.isEmpty() ? "Cookers compared" : title)
                .subtitle(CompareAnswer.first(comparison, system))
                .gap(14)
                .with(new CompareChart(comparison, MOST_ROWS, new CompareWords(comparison).where(), system))
                .caption(
                        "Whiskers: two standard errors to both sides. Dark and bold: no difference is seen to the best."
                                + left + " Same samples for all, "
                                + FigureFormat.count(comparison.run().rays())
                                + " rays each, seed " + comparison.seed() + ". An estimate. Simmerpoint "
                                + Version.text())
                .caption(
                        "Focused sunlight blinds and burns: keep eyes, face and hands out of the beam, and cover the mirror"
                                + " when it is not in use.");
    }
}
