package simmerpoint.fuzz;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.regex.Pattern;
import simmerpoint.answer.Answer;
import simmerpoint.answer.cut.CutAnswer;
import simmerpoint.answer.trace.TraceAnswer;
import simmerpoint.report.ResultFiles;
import simmerpoint.report.TextReport;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.units.UnitSystem;
import simmerpoint.workshop.CutPlan;
import simmerpoint.workshop.CuttingException;

/** What holds for the words and figures of every answer: there is one, and nothing in it that is no number. */
final class AnswerLaws {
    private static final int WIDTH = 100;
    private static final Pattern NO_NUMBER = Pattern.compile("\\b(NaN|Infinity|null)\\b|�|∞");

    private AnswerLaws() {}

    /** What a trace says, in words and as JSON. */
    static void check(TraceResult result) {
        check(TraceAnswer.brief(result, UnitSystem.INCH));
        check(TraceAnswer.of(result, UnitSystem.METRIC));
        assertTrue(ResultFiles.of(result, UnitSystem.METRIC).json().get().length > 0);
    }

    /** What to cut, unless a sentence says why not. */
    static void checkCut(CheckedScenario read) {
        CutPlan plan;
        try {
            plan = CutPlan.of(read, UnitSystem.METRIC);
        } catch (CuttingException e) {
            Sentences.check(e.getMessage());
            return;
        }
        check(CutAnswer.brief(plan, UnitSystem.METRIC, false));
        check(CutAnswer.of(plan, UnitSystem.INCH));
    }

    private static void check(Answer answer) {
        List<String> lines = TextReport.lines(answer, WIDTH, false);
        for (String line : lines) {
            assertFalse(NO_NUMBER.matcher(line).find(), line);
        }
    }
}
