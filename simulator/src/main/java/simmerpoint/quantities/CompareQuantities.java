package simmerpoint.quantities;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import simmerpoint.scenario.variants.Variant;
import simmerpoint.setup.Stand;
import simmerpoint.study.aim.AimTolerance;
import simmerpoint.study.compare.ComparedRow;
import simmerpoint.study.compare.Comparison;
import simmerpoint.study.pan.BestStand;
import simmerpoint.target.Ledger;
import simmerpoint.workshop.BuildCost;

/** What {@code compare} finds; its table has one row for each cooker, the best first. */
public final class CompareQuantities {
    private static final Fields<Ledger> CAUGHT =
            Fields.<Ledger>none().estimate("caught_power_W", "caught by the pan or the bare disc", Ledger::caught);

    private static final Fields<ComparedRow> COOKER = Fields.<ComparedRow>none()
            .texts("varied", "values as typed, by the full path of the key", CompareQuantities::varied)
            .optionalEstimate("cooking_power_W", "net heat into the water of a pan", ComparedRow::cookingPower)
            .include(ComparedRow::likely, LikelyQuantities.RANGE)
            .estimate("absorbed_power_W", "taken up by the pan; of a bare disc, caught", ComparedRow::absorbed)
            .estimate(
                    "difference_power_W",
                    "cooking power (of a bare disc, caught) beyond that of the first",
                    ComparedRow::difference)
            .flag("difference_seen", "whether it passes 2 standard errors", ComparedRow::isSeenToDiffer)
            .include(ComparedRow::ledger, CAUGHT)
            .estimate("peak_flux_W_m2", "hottest spot of underside or disc", ComparedRow::peakFlux)
            .whole("panels", "number of panels", ComparedRow::panels)
            .includeOptional(CompareQuantities::cost, CutQuantities.COST)
            .optionalNumber("cost_per_W", "cost for each watt of cooking power", CompareQuantities::costPerWatt)
            .optionalEstimate(
                    "drift_tolerance_rad", "how far the sun has gone when it is to be aimed again", ComparedRow::drift)
            .optionalEstimate("aim_again_s", "from a dead-on aim until a tenth is lost", ComparedRow::againSeconds)
            .optionalEstimate(
                    "best_place_power_W",
                    "the same figure with the pan where it does best",
                    row -> row.atBest().map(BestStand.Found::watts))
            .optionalNumber("best_place_pull_back_m", "its pull-back there", row -> stand(row, Stand::pullBackMetres))
            .optionalNumber("best_place_raise_m", "its raise there", row -> stand(row, Stand::raiseMetres))
            .optionalNumber("best_place_side_m", "its side there", row -> stand(row, Stand::sideMetres))
            .includeOptional(ComparedRow::boil, HeatQuantities.BOIL);

    private static final Fields<Row> NAME = Fields.<Row>none()
            .whole("rank", "place among all; 1 is the best", Row::rank)
            .text("name", "what tells it from the others", Row::name)
            .text("file", "file of the scenario", row -> row.cooker().variant().file());

    private static final Fields<Comparison> FIELDS = Fields.<Comparison>none()
            .number("seen_errors", "standard errors that a difference must pass", c -> ComparedRow.SEEN_ERRORS)
            .number("tolerance_loss", "share of the watts lost at the drift tolerance", c -> AimTolerance.USUAL_LOSS)
            .number("tolerance_range_rad", "largest drift looked at", c -> AimTolerance.RANGE)
            .rows(
                    "rows",
                    "the best first",
                    CompareQuantities::rows,
                    NAME.text(
                                    "title",
                                    "title of the scenario",
                                    row -> row.cooker().variant().scenario().title())
                            .include(Row::cooker, COOKER))
            .group("run", "differs from run to run", Comparison::run, TraceQuantities.RUN);

    /** All of it. */
    public static final Document<Comparison> DOCUMENT = new Document<>(
            "compare",
            CompareQuantities::title,
            Comparison::seed,
            FIELDS,
            new Table<>(
                    NAME.include(Row::cooker, COOKER),
                    comparison -> rows(comparison).stream(),
                    comparison -> List.of("replicates: " + comparison.replicates())));

    private CompareQuantities() {}

    /** A cooker with its rank and its name among the others. */
    private record Row(int rank, String name, ComparedRow cooker) {}

    private static OptionalDouble stand(ComparedRow row, ToDoubleFunction<Stand> length) {
        return row.atBest().stream()
                .mapToDouble(best -> length.applyAsDouble(best.stand()))
                .findFirst();
    }

    /** What one of them costs, if its scenario gives prices and it can be built. */
    public static Optional<BuildCost> cost(ComparedRow row) {
        return BuildCost.of(row.variant().read());
    }

    private static OptionalDouble costPerWatt(ComparedRow row) {
        return cost(row).map(cost -> cost.perWatt(row.useful().value())).orElse(OptionalDouble.empty());
    }

    private static List<Row> rows(Comparison comparison) {
        VariantNames names = new VariantNames(comparison.variants());
        List<ComparedRow> rows = comparison.rows();
        return IntStream.range(0, rows.size())
                .mapToObj(k -> new Row(k + 1, names.name(rows.get(k).variant()), rows.get(k)))
                .toList();
    }

    private static Map<String, String> varied(ComparedRow row) {
        Map<String, String> varied = new LinkedHashMap<>();
        row.variant().varied().forEach((key, value) -> varied.put(key, OneLine.of(value)));
        return varied;
    }

    /** The title of the one file that is varied; empty for several. */
    public static String title(Comparison comparison) {
        Variant first = comparison.best().variant();
        return first.source().isEmpty() ? OneLine.of(first.scenario().title()) : "";
    }
}
