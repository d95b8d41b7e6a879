package simmerpoint.quantities;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.budget.BudgetResult;
import simmerpoint.study.budget.Flaw;
import simmerpoint.study.budget.FlawCost;
import simmerpoint.study.budget.Parameter;
import simmerpoint.study.budget.Sensitivity;
import simmerpoint.study.budget.Significance;
import simmerpoint.study.trace.DoubtShare;

/** What {@code budget} finds; its table has a row for every figure in watts. */
public final class BudgetQuantities {
    private static final double TIDY = 1e9;

    private static final String WHICH = "which flaw; of one zone as zone.flaw";

    private static final Fields<Flaw> NAME = Fields.<Flaw>none().text("flaw", WHICH, Flaw::key);

    private static final Fields<Cost> COST = cost(
            cost(
                    Fields.<Cost>none()
                            .text("flaw", WHICH, cost -> cost.of().flaw().key()),
                    "off_in_turn",
                    "what the cooker as built gains without this flaw",
                    FlawCost::offInTurn),
            "on_alone",
            "what a perfect one loses by this flaw alone",
            FlawCost::onAlone);

    private static final Fields<Sensitivity.Step> STEP = Fields.<Sensitivity.Step>none()
            .text("way", "more or less, or where to on the sky", Sensitivity.Step::way)
            .estimate("change_W", "change of the watts as built", Sensitivity.Step::change);

    private static final Fields<Sensitivity> SENSITIVITY = Fields.<Sensitivity>none()
            .text(
                    "figure",
                    "which figure of the scenario; of one zone as zone.figure",
                    s -> s.parameter().key())
            .number("step", "size of the step in its unit", s -> step(s.parameter()))
            .text("unit", "unit of the step", s -> s.parameter().unit().sign())
            .rows("steps", "the ways it can go", Sensitivity::steps, STEP)
            .optionalEstimate("change_per_step_W", "per step to more, if there are two ways", Sensitivity::slope)
            .optionalEstimate("change_either_way_W", "what both ways have in common", Sensitivity::bend)
            .flag("bend_rules", "whether that is the larger one", Sensitivity::bends)
            .flag("significant", "whether chance would hardly give it", s -> Significance.of(s.telling()));

    private static final Fields<BudgetResult.Run> RUN = Fields.<BudgetResult.Run>none()
            .whole("traces", "number of traces", BudgetResult.Run::traces)
            .whole("rays_each", "number of rays of every trace", BudgetResult.Run::raysEach)
            .whole("threads", "number of threads", BudgetResult.Run::threads)
            .number("trace_seconds", "wall time", BudgetResult.Run::seconds);

    private static final Fields<BudgetResult> FIELDS = Fields.<BudgetResult>none()
            .text("power", "what the watts are", PowerKind.WORDS, r -> PowerKind.of(r.scenario()))
            .estimate("perfect_power_W", "watts without any flaw that can be switched off", BudgetResult::perfect)
            .estimate("as_built_power_W", "watts of the cooker as given", BudgetResult::built)
            .estimate("all_flaws_cost_W", "perfect less as built", BudgetResult::total)
            .rows("flaws", "the dearest first", BudgetQuantities::costs, COST)
            .rows(
                    ShapeToleranceQuantities.KEY,
                    ShapeToleranceQuantities.LABEL,
                    BudgetResult::tolerances,
                    ShapeToleranceQuantities.FIELDS)
            .estimate("left_in_turn_W", "all less the sum of those switched off in turn", BudgetResult::leftInTurn)
            .estimate("left_alone_W", "all less the sum of those switched on alone", BudgetResult::leftAlone)
            .rows("absent", "flaws that it does not have", BudgetResult::absent, NAME)
            .rows("not_separable", "flaws that cannot be switched off", BudgetResult::fixed, NAME)
            .rows("sensitivities", "what a step of each figure does", BudgetResult::sensitivities, SENSITIVITY)
            .include(BudgetResult::likely, LikelyQuantities.DOUBTS)
            .group("run", "differs from run to run", BudgetResult::run, RUN);

    private static final Fields<Row> ROW = Fields.<Row>none()
            .text("kind", "power; cost off-in-turn or on-alone; change by a step; doubt", Row::kind)
            .text("what", "which flaw or figure; all: perfect less as built; left: that less the sum", Row::what)
            .text("way", "more or less, or where to on the sky", Row::way)
            .number("step", "size of the step in its unit", Row::step)
            .text("unit", "unit of the step", Row::unit)
            .number("share", "of a doubt: of the variance of the power", Row::share)
            .estimate("power_W", "the watts", Row::watts);

    /** All of it. */
    public static final Document<BudgetResult> DOCUMENT = new Document<>(
            "budget",
            result -> result.scenario().title(),
            result -> result.run().seed(),
            FIELDS,
            new Table<>(ROW, BudgetQuantities::rows, result -> List.of("power: " + PowerKind.of(result.scenario()))));

    private BudgetQuantities() {}

    /** A cost in the budget it belongs to. */
    private record Cost(FlawCost of, BudgetResult budget) {}

    /** A row of the table. */
    private record Row(String kind, String what, String way, double step, String unit, double share, Estimate watts) {
        Row(String kind, String what, Estimate watts) {
            this(kind, what, "", Double.NaN, "", Double.NaN, watts);
        }

        Row(DoubtShare doubt) {
            this("doubt", doubt.name(), "", Double.NaN, "", doubt.share(), new Estimate(Double.NaN, Double.NaN));
        }
    }

    private static Fields<Cost> cost(
            Fields<Cost> before, String key, String label, Function<FlawCost, Estimate> watts) {
        return before.estimate(key + "_cost_W", label, cost -> watts.apply(cost.of()))
                .estimate(
                        key + "_share",
                        "of the perfect cooker's watts",
                        cost -> cost.budget().share(watts.apply(cost.of())))
                .flag(
                        key + "_significant",
                        "whether chance would hardly give it",
                        cost -> Significance.of(watts.apply(cost.of())));
    }

    private static List<Cost> costs(BudgetResult result) {
        return result.costs().stream().map(cost -> new Cost(cost, result)).toList();
    }

    /** The step in its unit, without the rounding error of a conversion. */
    private static double step(Parameter parameter) {
        return Math.round(parameter.step() / parameter.unit().si() * TIDY) / TIDY;
    }

    private static Stream<Row> rows(BudgetResult result) {
        List<Row> rows = new ArrayList<>();
        rows.add(new Row("power", "perfect", result.perfect()));
        rows.add(new Row("power", "as-built", result.built()));
        costs(rows, result, "off-in-turn", FlawCost::offInTurn, result.leftInTurn());
        costs(rows, result, "on-alone", FlawCost::onAlone, result.leftAlone());
        for (Sensitivity s : result.sensitivities()) {
            Parameter parameter = s.parameter();
            s.steps()
                    .forEach(step -> rows.add(new Row(
                            "step",
                            parameter.key(),
                            step.way(),
                            step(parameter),
                            parameter.unit().sign(),
                            Double.NaN,
                            step.change())));
        }
        LikelyQuantities.shares(result.likely()).forEach(doubt -> rows.add(new Row(doubt)));
        return rows.stream();
    }

    private static void costs(
            List<Row> rows, BudgetResult result, String kind, Function<FlawCost, Estimate> watts, Estimate left) {
        result.costs().forEach(cost -> rows.add(new Row(kind, cost.flaw().key(), watts.apply(cost))));
        rows.add(new Row(kind, "left", left));
        rows.add(new Row(kind, "all", result.total()));
    }
}
