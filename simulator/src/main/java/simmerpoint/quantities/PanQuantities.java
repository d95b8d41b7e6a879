package simmerpoint.quantities;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import simmerpoint.heat.FryingAssessment;
import simmerpoint.heat.FryingLevel;
import simmerpoint.heat.HeatLevel;
import simmerpoint.heat.PanContents;
import simmerpoint.setup.Stand;
import simmerpoint.study.pan.BestPlace;
import simmerpoint.study.pan.LevelBorder;
import simmerpoint.study.pan.LevelStretch;
import simmerpoint.study.pan.MoveStudy.Move;
import simmerpoint.study.pan.PanMove;
import simmerpoint.study.pan.PanPosition;
import simmerpoint.study.pan.PanResult;
import simmerpoint.study.pan.SimmerPlace;
import simmerpoint.study.trace.HeatResult;
import simmerpoint.uncertainty.LikelyRange;

/** What {@code pan} finds; its table has one row per move and position. */
public final class PanQuantities {
    private static final List<String> MOVES =
            Stream.of(Move.values()).map(Move::key).toList();

    private static final Fields<Stand> STAND = Fields.<Stand>none()
            .number("pull_back_m", "pan pulled back along the axis, away from the dish", Stand::pullBackMetres)
            .number("slide_m", "dish slid along the ground, away from the sun", Stand::slideMetres)
            .number("raise_m", "pan raised", Stand::raiseMetres)
            .number("side_m", "pan shifted to the right, facing the sun", Stand::sideMetres);

    private static final Fields<FryingAssessment> FRYING = Fields.<FryingAssessment>none()
            .word("frying", "how hot it gets to fry", FryingLevel.class, FryingAssessment::level)
            .word("frying_spread", "how evenly it fries", FryingAssessment.Spread.class, FryingAssessment::spread);

    private static final Fields<PanPosition> POSITION = Fields.<PanPosition>none()
            .number("offset_m", "along the move, from where the pan stands", PanPosition::offsetMetres)
            .estimate("cooking_power_W", "net heat into the water 50 K above the air", PanPosition::cookingPower)
            .estimate("absorbed_power_W", "taken up by the pan, direct sunlight included", PanPosition::absorbed)
            .word("heat_level", "heat level with the likely losses", HeatLevel.class, PanPosition::level)
            .estimate("peak_flux_W_m2", "light on the hottest place of the underside", PanPosition::peakFlux)
            .number("wall_peak_flux_W_m2", "light on the hottest place of the wall", PanPosition::wallPeakFlux)
            .number("mean_flux_W_m2", "light on the underside, mean of all of it", PanPosition::meanFlux)
            .number("peak_to_mean", "peak_flux_W_m2 \u00f7 mean_flux_W_m2", PanPosition::peakToMean)
            .number("underside_share", "of the focused light on the pan", PanPosition::undersideShare)
            .number("wall_share", "of the focused light on the pan, climbs its wall", PanPosition::wallShare)
            .number("middle_flux_W_m2", "taken up by the inner half of the radius", PanPosition::middleFlux)
            .number("evenness", "standard deviation \u00f7 mean of flux over the underside", PanPosition::evenness)
            .include(PanPosition::frying, FRYING);

    private static final Fields<PanContents> WATER = Fields.<PanContents>none()
            .number("water_kg", "water in the pan", PanContents::waterKilograms)
            .number("start_C", "temperature of the water at the start", PanContents::startCelsius);

    private static final Fields<HeatResult> HEAT = Fields.<HeatResult>none()
            .include(heat -> heat.cooking().contents(), WATER)
            .number("boiling_C", "local boiling point", HeatResult::boilingCelsius)
            .range("settles_*_C", "temperature it settles at", HeatResult::settlesCelsius)
            .range("steam_*_kg_s", "steam once it has settled", PanQuantities::steam)
            .group("level_begins", "absorbed watts at which each heat level begins", heat -> heat, levelBegins());

    private static final Fields<PanResult> HERE = Fields.<PanResult>none()
            .include(PanResult::here, POSITION)
            .include(result -> result.base().likely(), LikelyQuantities.RANGE)
            .include(PanResult::levelRange, HeatQuantities.LEVEL_SPREAD)
            .include(PanResult::boil, HeatQuantities.BOIL)
            .include(PanResult::heat, HEAT);

    private static final Fields<LevelStretch> STRETCH = Fields.<LevelStretch>none()
            .number("from_m", "where it begins to simmer, from where the pan stands", LevelStretch::fromMetres)
            .number("to_m", "where it no longer simmers", LevelStretch::toMetres);

    private static final Fields<SimmerPlace> SIMMER = Fields.<SimmerPlace>none()
            .text("move", "which move", MOVES, place -> place.move().key())
            .include(SimmerPlace::stretch, STRETCH)
            .include(SimmerPlace::likely, LikelyQuantities.RANGE)
            .include(SimmerPlace::position, POSITION);

    private static final Fields<BestPlace> BEST = Fields.<BestPlace>none()
            .text("move", "which move", MOVES, best -> best.move().key())
            .number("from_m", "from here on within 1 % of the best", BestPlace::fromMetres)
            .number("to_m", "up to here within 1 % of the best", BestPlace::toMetres)
            .include(BestPlace::likely, LikelyQuantities.RANGE)
            .include(BestPlace::position, POSITION);

    private static final Fields<LevelBorder> BORDER = Fields.<LevelBorder>none()
            .number("offset_m", "along the move, from where the pan stands", LevelBorder::offsetMetres)
            .number("low_m", "one such cooker in ten has the border before this", LevelBorder::lowMetres)
            .number("high_m", "one such cooker in ten has the border behind this", LevelBorder::highMetres)
            .word("before", "heat level before the border", HeatLevel.class, LevelBorder::before)
            .word("after", "heat level behind the border", HeatLevel.class, LevelBorder::after);

    private static final Fields<PanMove> MOVE = Fields.<PanMove>none()
            .text("move", "which move", MOVES, move -> move.move().key())
            .number("stand_m", "how far along it the pan stands, from the focus", PanMove::presentMetres);

    private static final Fields<PanResult.RunInfo> RUN = Fields.<PanResult.RunInfo>none()
            .whole("rays", "number of rays of the trace and of each move", PanResult.RunInfo::rays)
            .whole("threads", "number of threads", PanResult.RunInfo::threads)
            .number("trace_seconds", "wall time of the trace", PanResult.RunInfo::traceSeconds)
            .number("move_seconds", "wall time of the moves", PanResult.RunInfo::moveSeconds);

    private static final Fields<PanResult> FIELDS = Fields.<PanResult>none()
            .group(
                    "stand",
                    "the pan's place, from the focus",
                    r -> r.base().scenario().stand(),
                    STAND)
            .group("here", "where the pan stands", r -> r, HERE)
            .optionalGroup("simmer", "the recommended place for a simmer", PanResult::simmer, SIMMER)
            .group("best", "the place of most cooking power", PanResult::best, BEST)
            .optionalNumber("open_share_for_simmer", "of the mirror to leave open", PanQuantities::openShare)
            .rows(
                    "moves",
                    "the three moves",
                    PanResult::moves,
                    MOVE.rows("borders", "where one heat level gives way to another", PanMove::borders, BORDER)
                            .rows("positions", "along the move", PanMove::positions, POSITION))
            .group("run", "differs from run to run", PanResult::run, RUN);

    private static final Fields<Place> PLACE =
            Fields.<Place>none().include(Place::move, MOVE).include(Place::position, POSITION);

    /** All of it. */
    public static final Document<PanResult> DOCUMENT = new Document<>(
            "pan",
            result -> result.base().scenario().title(),
            result -> result.base().seed(),
            FIELDS,
            new Table<>(PLACE, PanQuantities::places));

    private PanQuantities() {}

    /** A row of the table. */
    private record Place(PanMove move, PanPosition position) {}

    private static Stream<Place> places(PanResult result) {
        return result.moves().stream()
                .flatMap(move -> move.positions().stream().map(position -> new Place(move, position)));
    }

    private static Fields<HeatResult> levelBegins() {
        Fields<HeatResult> fields = Fields.none();
        for (HeatLevel level : HeatLevel.values()) {
            if (level != HeatLevel.TOO_COOL) {
                String key = level.name().toLowerCase(Locale.ROOT) + "_*_W";
                fields = fields.range(key, Fields.word(level), heat -> heat.begins(level));
            }
        }
        return fields;
    }

    private static LikelyRange steam(HeatResult heat) {
        return heat.steam().all().map(perHour -> perHour / 3600);
    }

    private static OptionalDouble openShare(PanResult result) {
        return result.openShareForSimmer().stream().mapToDouble(x -> x).findFirst();
    }
}
