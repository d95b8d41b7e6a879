package simmerpoint.quantities;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import simmerpoint.dish.PanelSize;
import simmerpoint.heat.HeatLevel;
import simmerpoint.study.design.DesignChoice;
import simmerpoint.study.design.DesignGoal;
import simmerpoint.study.design.DesignLimits;
import simmerpoint.study.design.DesignResult;
import simmerpoint.study.design.DishCandidate;

/** What {@code design} finds; its table has a row for every dish. */
public final class DesignQuantities {
    private static final Fields<DishCandidate> SKETCH = Fields.<DishCandidate>none()
            .whole("panels", "number of panels", dish -> dish.layout().panels())
            .text("cut", "how it is cut", dish -> dish.layout().cut().word())
            .whole("sectors", "number of sectors", dish -> dish.layout().sectors())
            .whole("rings", "number of rings", dish -> dish.layout().rings())
            .number("diameter_m", "diameter across the corners", dish -> dish.diameterCentimetres() / 100.0)
            .number("focal_length_m", "focal length", dish -> dish.focalCentimetres() / 100.0);

    private static final Fields<PanelSize> PANEL = Fields.<PanelSize>none()
            .number("largest_panel_rim_m", "width of the largest panel at the rim", PanelSize::rimMetres)
            .number("largest_panel_rib_m", "length of the largest panel along the rib", PanelSize::ribMetres);

    private static final Fields<DesignChoice> CHECKED = Fields.<DesignChoice>none()
            .optionalEstimate("cooking_power_W", "of a pan, traced anew with another seed", DesignChoice::cookingPower)
            .include(choice -> Optional.of(choice.likely()), LikelyQuantities.RANGE)
            .estimate("absorbed_power_W", "taken up; of a bare disc, caught", DesignChoice::absorbed)
            .estimate("peak_flux_W_m2", "hottest place of underside or disc", DesignChoice::peakFlux)
            .number("pan_height_m", "height of the pan's underside above the ground", DesignChoice::panHeightMetres)
            .includeOptional(DesignChoice::largestPanel, PANEL)
            .optionalNumber("cost", "in the currency of the scenario's prices", DesignChoice::cost)
            .optionalNumber("cost_per_W", "cost for each of its watts", DesignChoice::costPerWatt)
            .optionalEstimate(
                    "aim_again_s",
                    "from a dead-on aim until a tenth is lost",
                    dish -> dish.again().minutes().map(minutes -> minutes.times(60)));

    private static final Fields<DesignChoice> CHOICE =
            Fields.<DesignChoice>none().include(DesignChoice::candidate, SKETCH).include(dish -> dish, CHECKED);

    private static final Fields<HeatLevel> LEVEL = Fields.<HeatLevel>none()
            .word("wanted_heat_level", "heat level that needs so much", HeatLevel.class, level -> level);

    private static final Fields<DesignGoal> WISH = Fields.<DesignGoal>none()
            .number("wanted_power_W", "cooking power; of a bare disc, caught", DesignGoal::watts)
            .includeOptional(DesignGoal::level, LEVEL);

    private static final Fields<DesignResult.Front> FRONT = Fields.<DesignResult.Front>none()
            .number("wanted_power_W", "cooking power; of a bare disc, caught", DesignResult.Front::watts)
            .rows("dishes", "fewest panels first", DesignResult.Front::candidates, SKETCH);

    private static final Fields<Map.Entry<DesignLimits.Limit, DishCandidate>> LIMIT =
            Fields.<Map.Entry<DesignLimits.Limit, DishCandidate>>none()
                    .word("limit", "that stands in the way alone", DesignLimits.Limit.class, Map.Entry::getKey)
                    .group("without_it", "what would do it", Map.Entry::getValue, SKETCH);

    private static final Fields<DesignResult.Run> RUN = Fields.<DesignResult.Run>none()
            .whole("dishes", "traced", DesignResult.Run::dishes)
            .whole("search_rays", "number of rays for each dish of the search", DesignResult.Run::searchRays)
            .whole("check_rays", "number of rays for each dish of the front", DesignResult.Run::checkRays)
            .whole("threads", "number of threads", DesignResult.Run::threads)
            .number("seconds", "wall time", DesignResult.Run::seconds);

    private static final Fields<DesignResult> FIELDS = Fields.<DesignResult>none()
            .whole("check_seed", "seed of the traces anew", r -> r.run().checkSeed())
            .include(DesignResult::goal, WISH)
            .rows("front", "dishes that do it, fewest panels first", DesignResult::front, CHOICE)
            .rows("fronts", "for several watts, as the search saw them", DesignResult::fronts, FRONT)
            .optionalGroup("most_within_limits", "if none does it: the strongest dish", DesignResult::bound, CHOICE)
            .rows("binding_limits", "each alone", r -> List.copyOf(r.loosened().entrySet()), LIMIT)
            .rows(
                    ShapeToleranceQuantities.KEY,
                    ShapeToleranceQuantities.LABEL + ", of the dish with the fewest panels",
                    DesignResult::tolerances,
                    ShapeToleranceQuantities.FIELDS)
            .group("run", "differs from run to run", DesignResult::run, RUN);

    private static final Fields<Row> ROW = Fields.<Row>none()
            .number("wanted_power_W", "cooking power; of a bare disc, caught", Row::watts)
            .include(Row::candidate, SKETCH)
            .includeOptional(Row::checked, CHECKED);

    /** All of it. */
    public static final Document<DesignResult> DOCUMENT = new Document<>(
            "design",
            result -> result.scenario().title(),
            result -> result.run().seed(),
            FIELDS,
            new Table<>(
                    ROW,
                    DesignQuantities::rows,
                    result -> List.of(
                            "wanted: " + StableNumber.of(result.goal().watts()) + " W",
                            "seed of the check: " + result.run().checkSeed(),
                            "rows with absorbed_power_W were traced anew; the others are as the search saw them")));

    private DesignQuantities() {}

    /** A row of the table: a dish that was checked or one as the search saw it. */
    private record Row(double watts, DishCandidate candidate, Optional<DesignChoice> checked) {}

    private static Stream<Row> rows(DesignResult result) {
        double wanted = result.goal().watts();
        Stream<Row> front =
                result.front().stream().map(choice -> new Row(wanted, choice.candidate(), Optional.of(choice)));
        Stream<Row> others = result.fronts().stream()
                .filter(each -> each.watts() != wanted)
                .flatMap(each -> each.candidates().stream()
                        .map(candidate -> new Row(each.watts(), candidate, Optional.empty())));
        return Stream.concat(front, others);
    }
}
