package simmerpoint.report;

import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import simmerpoint.answer.Section;
import simmerpoint.answer.cut.CutAnswer;
import simmerpoint.drawing.Drawing;
import simmerpoint.drawing.Sheet;
import simmerpoint.drawing.output.Paper;
import simmerpoint.drawing.output.PdfFile;
import simmerpoint.drawing.pattern.PanelMap;
import simmerpoint.drawing.pattern.PatternSet;
import simmerpoint.drawing.pattern.SheetsDrawing;
import simmerpoint.quantities.OneLine;
import simmerpoint.units.UnitSystem;
import simmerpoint.workshop.CookerStudy;
import simmerpoint.workshop.CutPlan;
import simmerpoint.workshop.SheetLayout;

/**
 * Files to cut by.
 *
 * @param pdf patterns at full size, on pages
 * @param svg sheets for a cutter
 * @param dxf the same
 * @param ribs table of the ribs' depths, to be overwritten with what was measured
 */
public record CutFiles(Supplier<byte[]> pdf, Supplier<byte[]> svg, Supplier<byte[]> dxf, Supplier<byte[]> ribs) {
    private static final double MILLIMETRE = 0.001;
    private static final String HEADING = "What to cut";
    private static final String FILM = "Film";

    /** Of a plan, its patterns on that paper. */
    public static CutFiles of(CutPlan plan, Paper paper, UnitSystem units) {
        return new CutFiles(
                () -> pdf(plan, paper, units),
                () -> CutterSvg.bytes(plan),
                () -> CutterDxf.bytes(plan),
                () -> RibForm.bytes(plan, units));
    }

    private static byte[] pdf(CutPlan plan, Paper paper, UnitSystem units) {
        double margins = 2 * PdfFile.MARGIN_MILLIMETRES;
        List<Drawing> pages = PatternSet.pages(
                plan,
                (paper.widthMillimetres() - margins) * MILLIMETRE,
                (paper.heightMillimetres() - margins) * MILLIMETRE,
                PdfFile.UNIT_MILLIMETRES * MILLIMETRE,
                units);
        return PdfFile.trueToScale(paper, pages);
    }

    /** The sheets as a picture. */
    static Sheet picture(CutPlan plan, UnitSystem units) {
        String title = OneLine.of(plan.scenario().title());
        Sheet sheet = new Sheet(title.isEmpty() ? "What to cut" : title)
                .subtitle(FirstSentence.of(CutAnswer.of(plan, units)));
        layout(sheet, "Ribs", plan.ribSheets(), units);
        layout(sheet, "Panels", plan.panelSheets(), units);
        plan.filmByMaterial().forEach((material, layout) -> layout(sheet, filmHeading(plan, material), layout, units));
        return sheet;
    }

    /** What to cut, or why it cannot be built so, as a chapter of the page. */
    static HtmlChapter chapter(CookerStudy all, UnitSystem units) {
        return all.cut()
                .map(plan -> chapter(plan, units))
                .orElseGet(() -> HtmlChapter.of(
                        "cut",
                        HEADING,
                        List.of(Section.headed(HEADING).say(all.whyNotCut()).build())));
    }

    private static HtmlChapter chapter(CutPlan plan, UnitSystem units) {
        HtmlChapter chapter = HtmlChapter.of("cut", HEADING, CutAnswer.of(plan, units));
        for (Map.Entry<String, SheetLayout> film : plan.filmByMaterial().entrySet()) {
            String what = filmHeading(plan, film.getKey());
            chapter = chapter.with(
                    1,
                    HtmlFigure.drawing(
                            new SheetsDrawing(film.getValue(), units),
                            "The pieces of film laid out on the roll or sheets they are cut from.",
                            what.equals(FILM) ? "The film on its roll or sheets." : what + ", on its roll or sheets."));
        }
        return chapter.with(
                1,
                HtmlFigure.drawing(
                        PanelMap.of(plan),
                        "Every panel of the dish in its place, with the name of the piece or its number.",
                        "Which panel goes where, seen from the sun."));
    }

    /** "Film", or with its name where mirrors are of several materials. */
    public static String filmHeading(CutPlan plan, String material) {
        return plan.filmByMaterial().size() == 1 ? FILM : FILM + ": " + material;
    }

    private static void layout(Sheet sheet, String heading, SheetLayout layout, UnitSystem units) {
        if (!layout.sheets().isEmpty()) {
            sheet.heading(heading).gap(6).with(new SheetsDrawing(layout, units));
        }
    }
}
