package simmerpoint.report;

import java.io.IOException;
import simmerpoint.quantities.OneLine;
import simmerpoint.quantities.Version;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.budget.BudgetResult;
import simmerpoint.study.budget.Flaw;
import simmerpoint.study.budget.FlawCost;
import simmerpoint.study.budget.Sensitivity;
import simmerpoint.study.budget.Significance;

/**
 * A budget of flaws as one JSON object in UTF-8: watts with their standard error as {@code name_se}, shares of the perfect
 * cooker's watts. The same scenario and seed give the same bytes but for the object {@code run}, which comes last.
 */
public final class BudgetJson {
    private BudgetJson() {}

    /** The bytes of the file. */
    public static byte[] bytes(BudgetResult result) {
        return JsonObject.bytes(json -> {
            json.text("title", OneLine.of(result.scenario().title()));
            json.text("version", Version.text());
            json.whole("seed", result.run().seed());
            json.text("power", result.scenario().kitchen().isPresent() ? "absorbed" : "caught");
            json.estimate("perfect_power_W", result.perfect());
            json.estimate("as_built_power_W", result.built());
            json.estimate("all_flaws_cost_W", result.total());
            json.list("flaws", result.costs(), (each, cost) -> flaw(each, cost, result));
            json.estimate("left_in_turn_W", result.leftInTurn());
            json.estimate("left_alone_W", result.leftAlone());
            json.list("absent", result.absent(), BudgetJson::name);
            json.list("not_separable", result.fixed(), BudgetJson::name);
            json.list("sensitivities", result.sensitivities(), BudgetJson::sensitivity);
            json.object("run", run -> {
                run.whole("traces", result.run().traces());
                run.whole("rays_each", result.run().raysEach());
                run.whole("threads", result.run().threads());
                run.number("trace_seconds", result.run().seconds());
            });
        });
    }

    private static void name(JsonObject json, Flaw flaw) throws IOException {
        json.text("flaw", flaw.key());
    }

    private static void flaw(JsonObject json, FlawCost cost, BudgetResult result) throws IOException {
        json.text("flaw", cost.flaw().key());
        cost(json, "off_in_turn", cost.offInTurn(), result);
        cost(json, "on_alone", cost.onAlone(), result);
    }

    private static void cost(JsonObject json, String name, Estimate watts, BudgetResult result) throws IOException {
        json.estimate(name + "_cost_W", watts);
        json.estimate(name + "_share", result.share(watts));
        json.flag(name + "_significant", Significance.of(watts));
    }

    private static void sensitivity(JsonObject json, Sensitivity s) throws IOException {
        json.text("figure", s.parameter().key());
        json.number("step", StepSize.of(s.parameter()));
        json.text("unit", s.parameter().unit().sign());
        json.list("steps", s.steps(), (each, step) -> {
            each.text("way", step.way());
            each.estimate("change_W", step.change());
        });
        if (s.slope().isPresent()) {
            json.estimate("change_per_step_W", s.slope().get());
            json.estimate("change_either_way_W", s.bend().orElseThrow());
        }
        json.flag("bend_rules", s.bends());
        json.flag("significant", Significance.of(s.telling()));
    }
}
