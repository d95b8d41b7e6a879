package simmerpoint.report;

import java.util.List;
import simmerpoint.answer.safety.SheetWords;
import simmerpoint.drawing.Sheet;
import simmerpoint.drawing.cooker.FieldDrawing;
import simmerpoint.drawing.output.Paper;
import simmerpoint.drawing.output.PdfFile;
import simmerpoint.safety.CookerLight;
import simmerpoint.units.UnitSystem;

/** One page to keep with the cooker and for a class of children: a few rules in plain words, a picture, how far to stay away. */
public final class SafetySheet {
    private static final double WIDTH = 640;

    private SafetySheet() {}

    /** As a PDF of one page for light in the strongest sun. */
    public static byte[] pdf(CookerLight light, Paper paper, UnitSystem system) {
        return PdfFile.fitted(paper, WIDTH, List.of(sheet(light, system)));
    }

    static Sheet sheet(CookerLight light, UnitSystem system) {
        SheetWords words = new SheetWords(light, system);
        Sheet sheet = new Sheet(words.title()).subtitle(words.why());
        sheet.heading("Stay this far away");
        words.distances().forEach(sheet::subtitle);
        sheet.gap(6).with(FieldDrawing.of(light.taken(), light.people(), system));
        sheet.heading("Rules");
        words.rules().forEach(sheet::subtitle);
        return sheet.gap(6).caption(words.estimate());
    }
}
