package simmerpoint.report;

import java.nio.charset.StandardCharsets;
import simmerpoint.quantities.OneLine;
import simmerpoint.quantities.StableNumber;
import simmerpoint.quantities.Version;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.budget.BudgetResult;
import simmerpoint.study.budget.FlawCost;
import simmerpoint.study.budget.Parameter;
import simmerpoint.study.budget.Sensitivity;

/**
 * A budget of flaws as one long table: a row for every figure, for a spreadsheet or a script. Lines that start with # say
 * what the columns are. Always in watts, with a decimal point.
 */
public final class BudgetCsv {
    private static final int DIGITS = 6;

    private final StringBuilder out = new StringBuilder(1 << 13);

    private BudgetCsv() {}

    /** The bytes of the file, in UTF-8. */
    public static byte[] bytes(BudgetResult result) {
        BudgetCsv csv = new BudgetCsv();
        csv.head(result);
        csv.rows(result);
        return csv.out.toString().getBytes(StandardCharsets.UTF_8);
    }

    private void head(BudgetResult result) {
        comment("Simmerpoint " + Version.text() + " budget");
        comment("title: " + OneLine.of(result.scenario().title()));
        comment("seed: " + result.run().seed() + "; watts "
                + (result.scenario().kitchen().isPresent() ? "taken up by the pan" : "caught by the disc"));
        comment("power: perfect or as-built watts");
        comment(
                "off-in-turn: what the cooker as built gains without this flaw; on-alone: what a perfect one loses by it");
        comment("all: perfect less as built; left: that less the sum of the flaws");
        comment(
                "step: change of the as-built watts when a figure goes so many units more or less; or that way on the sky");
        out.append("kind,what,way,step,unit,power_W,power_se_W\n");
    }

    private void rows(BudgetResult result) {
        plain("power", "perfect", result.perfect());
        plain("power", "as-built", result.built());
        for (FlawCost cost : result.costs()) {
            plain("off-in-turn", cost.flaw().key(), cost.offInTurn());
        }
        plain("off-in-turn", "left", result.leftInTurn());
        plain("off-in-turn", "all", result.total());
        for (FlawCost cost : result.costs()) {
            plain("on-alone", cost.flaw().key(), cost.onAlone());
        }
        plain("on-alone", "left", result.leftAlone());
        plain("on-alone", "all", result.total());
        result.sensitivities().forEach(this::steps);
    }

    private void steps(Sensitivity s) {
        Parameter parameter = s.parameter();
        for (Sensitivity.Step step : s.steps()) {
            row(
                    "step",
                    parameter.key(),
                    step.way(),
                    StableNumber.of(StepSize.of(parameter), DIGITS),
                    parameter,
                    step.change());
        }
    }

    private void row(String kind, String what, String way, String step, Parameter parameter, Estimate watts) {
        out.append(String.join(",", kind, what, way, step, parameter.unit().sign()));
        figures(watts);
    }

    private void plain(String kind, String what, Estimate watts) {
        out.append(kind).append(',').append(what).append(",,,");
        figures(watts);
    }

    private void figures(Estimate watts) {
        out.append(',').append(StableNumber.of(watts.value(), DIGITS));
        out.append(',').append(StableNumber.of(watts.standardError(), DIGITS)).append('\n');
    }

    private void comment(String text) {
        out.append("# ").append(text.replace(",", ";")).append('\n');
    }
}
