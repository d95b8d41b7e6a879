package simmerpoint.report;

import java.util.List;
import simmerpoint.drawing.lesson.LessonSheet;
import simmerpoint.drawing.output.Paper;
import simmerpoint.drawing.output.PdfFile;
import simmerpoint.scenario.Scenario;
import simmerpoint.units.UnitSystem;

/** The sheet for a lesson as PDF. */
public final class LessonFile {
    private LessonFile() {}

    /** Of a scenario with a pan, on the paper that goes with the units. */
    public static byte[] pdf(Scenario scenario, UnitSystem units) {
        return PdfFile.trueToScale(Paper.usual(units), List.of(new LessonSheet(scenario, units)));
    }
}
