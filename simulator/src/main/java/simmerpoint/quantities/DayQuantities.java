package simmerpoint.quantities;

import java.util.List;
import java.util.Optional;
import simmerpoint.setup.FocusTravel;
import simmerpoint.setup.StandGeometry;
import simmerpoint.study.day.DayHour;
import simmerpoint.study.day.DayInterval;
import simmerpoint.study.day.DayPlan;
import simmerpoint.study.day.DayResult;
import simmerpoint.study.day.HourLight;
import simmerpoint.study.day.LightLimit;
import simmerpoint.study.day.YearResult;
import simmerpoint.sun.BeamRange;
import simmerpoint.sun.Site;
import simmerpoint.sun.SunDay;
import simmerpoint.sun.SunPosition;
import simmerpoint.target.Ledger;
import simmerpoint.uncertainty.LikelyRange;

/** What {@code day} finds of a day and of a year; the table has one row per instant. */
public final class DayQuantities {
    private static final double SECONDS = 3600;

    private static final Fields<Site> PLACE = Fields.<Site>none()
            .number("latitude_rad", "latitude, north of the equator", Site::latitudeRadians)
            .number("longitude_rad", "longitude, east of Greenwich", Site::longitudeRadians)
            .number("altitude_m", "height above the sea", Site::altitudeMetres)
            .text("zone", "time zone", site -> site.zone().getId());

    private static final Fields<SunPosition> SUN = Fields.<SunPosition>none()
            .number("elevation_rad", "elevation of the sun", SunPosition::elevationRadians)
            .number("azimuth_rad", "azimuth of the sun, from north over east", SunPosition::azimuthRadians);

    private static final Fields<BeamRange> BEAM = Fields.<BeamRange>none()
            .number("beam_W_m2", "direct sunlight facing the sun", BeamRange::likelyWattsPerSquareMetre)
            .number(
                    "beam_low_W_m2",
                    "the same by the dimmest model of a clear sky, or in the haziest likely air",
                    BeamRange::lowWattsPerSquareMetre)
            .number(
                    "beam_high_W_m2",
                    "the same by the brightest model, or in the clearest likely air",
                    BeamRange::highWattsPerSquareMetre);

    private static final Fields<Ledger> LEDGER = Fields.<Ledger>none()
            .estimate("reflected_power_W", "left the mirrors as a beam", Ledger::reflected)
            .estimate("missed_power_W", "reflected but not caught", Ledger::missed)
            .estimate("caught_power_W", "caught by the pan", Ledger::caught)
            .estimate("underside_power_W", "caught by the underside", Ledger::underside)
            .estimate("wall_power_W", "caught by the wall", Ledger::wall)
            .estimate("lid_power_W", "caught by the lid", Ledger::lid)
            .estimate("direct_on_pan_power_W", "straight from the sun onto lid and wall", Ledger::directOnPan);

    private static final Fields<LightLimit> LIMIT = Fields.<LightLimit>none()
            .word("kind", "what keeps the pan from more", LightLimit.Kind.class, LightLimit::kind)
            .number("share", "how much it keeps away, as a share", LightLimit::share);

    private static final Fields<HourLight> LIGHT = Fields.<HourLight>none()
            .number(
                    "cooking_power_W",
                    "net heat into the water 50 K above the air, the likely figure",
                    light -> light.power().likely())
            .number(
                    "cooking_power_low_W",
                    "one such cooker in ten brings less",
                    light -> light.power().low())
            .number(
                    "cooking_power_high_W",
                    "one such cooker in ten brings more",
                    light -> light.power().high())
            .estimate(
                    "cooking_power_as_given_W",
                    "the same with every figure exactly as given",
                    light -> light.asGiven().power())
            .estimate("absorbed_power_W", "taken up by the pan", HourLight::absorbed)
            .include(HourLight::ledger, LEDGER)
            .estimate("peak_flux_W_m2", "light on the hottest place of the underside", HourLight::hottest)
            .include(HourLight::level, HeatQuantities.LEVEL)
            .include(HourLight::boil, HeatQuantities.BOIL)
            .include(HourLight::boil, HeatQuantities.SETTLES)
            .rows("limits", "what keeps the pan from more, the most first", HourLight::limits, LIMIT);

    private static final Fields<DayHour> NO_LIGHT =
            Fields.<DayHour>none().text("no_light", "why there is no light", DayHour::hindrance);

    private static final Fields<StandGeometry> STAND = Fields.<StandGeometry>none()
            .number("dish_tilt_rad", "how far the dish is tipped back", StandGeometry::tiltRadians)
            .number("pan_height_m", "height of the pan's underside above the ground", StandGeometry::panHeightMetres)
            .number("dish_clearance_m", "height of the dish's lowest point", StandGeometry::clearanceMetres)
            .number("pan_to_tripod_m", "level distance of their middles", StandGeometry::distanceMetres)
            .flag("touches_ground", "whether the dish would touch the ground", StandGeometry::touchesGround)
            .flag("leg_in_beam", "whether a leg of the tripod may stand in the beam", StandGeometry::legInBeam);

    private static final Fields<FocusTravel> WALK = Fields.<FocusTravel>none()
            .number(
                    "aim_again_s",
                    "from a dead-on aim until a tenth less is there than aiming again gives",
                    walk -> 60 * walk.minutes())
            .number("focus_walk_m", "how far the focus walks in that time", FocusTravel::focusMetres)
            .number("move_level_m", "how far tripod or pan is moved over the ground", FocusTravel::levelMetres)
            .number("move_up_m", "how far tripod or pan is moved up", FocusTravel::riseMetres);

    private static final Fields<DayHour> STANDS =
            Fields.<DayHour>none().include(DayHour::stand, STAND).includeOptional(DayHour::walk, WALK);

    private static final Fields<DayHour> HOUR = Fields.<DayHour>none()
            .time("time", "by the clock of the place", hour -> Optional.of(hour.time()))
            .include(hour -> hour.moment().position(), SUN)
            .include(DayHour::beam, BEAM)
            .includeOptional(DayHour::light, LIGHT)
            .includeOptional(hour -> Optional.of(hour).filter(h -> h.light().isEmpty()), NO_LIGHT)
            .group("stand", "how dish and pan stand", hour -> hour, STANDS);

    private static final Fields<DayInterval> SPELL = Fields.<DayInterval>none()
            .time("from", "when it begins to simmer or better", interval -> Optional.of(interval.from()))
            .time("to", "when it no longer does", interval -> Optional.of(interval.to()));

    private static final Fields<DayPlan> PLAN = Fields.<DayPlan>none()
            .date("date", "the day", DayPlan::date)
            .number("step_s", "time between two instants", plan -> plan.step().toSeconds())
            .number("least_elevation_rad", "lower suns are not looked at", DayPlan::leastElevationRadians);

    private static final Fields<SunDay> SUN_DAY = Fields.<SunDay>none()
            .word("sun", "whether it rises and sets", SunDay.Kind.class, SunDay::kind)
            .time("sunrise", "when the sun rises", SunDay::sunrise)
            .time("solar_noon", "when the sun is highest", day -> Optional.of(day.solarNoon()))
            .time("sunset", "when the sun sets", SunDay::sunset);

    private static final Fields<DayResult> DAY = Fields.<DayResult>none()
            .include(DayResult::plan, PLAN)
            .include(DayResult::day, SUN_DAY)
            .number(
                    "cooking_s",
                    "time in which it simmers or better and the dish clears the ground, the likely figure",
                    result -> SECONDS * result.cookingHours().likely())
            .number(
                    "cooking_low_s",
                    "one such cooker in ten cooks less",
                    result -> SECONDS * result.cookingHours().low())
            .number(
                    "cooking_high_s",
                    "one such cooker in ten cooks more",
                    result -> SECONDS * result.cookingHours().high())
            .rows(
                    "cooks",
                    "when it likely simmers or better and the dish clears the ground",
                    result -> result.intervals(LikelyRange::likely),
                    SPELL)
            .rows("cooks_low", "when nine in ten such cookers do", result -> result.intervals(LikelyRange::low), SPELL)
            .optionalGroup("noon", "at solar noon", DayResult::noon, HOUR)
            .rows("hours", "the instants asked for", DayResult::hours, HOUR);

    private static final Fields<DayResult> DAY_RUN = Fields.<DayResult>none()
            .whole("rays", "number of rays traced in all", DayResult::rays)
            .whole("threads", "number of threads", DayResult::threads)
            .number("trace_seconds", "wall time", DayResult::seconds);

    private static final Fields<YearResult> YEAR_RUN = Fields.<YearResult>none()
            .whole("rays", "number of rays traced in all", YearResult::rays)
            .whole("threads", "number of threads", result -> first(result).threads())
            .number("trace_seconds", "wall time", YearResult::seconds);

    /** A day. */
    public static final Document<DayResult> DOCUMENT = new Document<>(
            "day",
            result -> result.scenario().title(),
            DayResult::seed,
            Fields.<DayResult>none()
                    .include(result -> result, place())
                    .include(result -> result, DAY)
                    .group("run", "differs from run to run", result -> result, DAY_RUN),
            new Table<>(HOUR, result -> result.hours().stream(), DayQuantities::zone));

    /** A year: the same figures for each of its days. */
    public static final Document<YearResult> YEAR = new Document<>(
            "year",
            result -> result.scenario().title(),
            result -> first(result).seed(),
            Fields.<YearResult>none()
                    .include(DayQuantities::first, place())
                    .whole("year", "the year", YearResult::year)
                    .rows("days", "the 21st of every month", DayQuantities::months, month())
                    .group("run", "differs from run to run", result -> result, YEAR_RUN),
            new Table<>(
                    HOUR,
                    result -> result.days().stream().flatMap(day -> day.hours().stream()),
                    result -> zone(first(result))));

    private DayQuantities() {}

    /** A month by its one day. */
    private record Month(double clearCookingHours, DayResult day) {}

    private static Fields<Month> month() {
        return Fields.<Month>none()
                .number(
                        "clear_month_cooking_s",
                        "time in which it simmers or better in the whole month if it is clear",
                        m -> SECONDS * m.clearCookingHours())
                .include(Month::day, DAY);
    }

    private static List<Month> months(YearResult result) {
        return result.days().stream()
                .map(day -> new Month(result.clearMonthHours(day.plan().date().getMonthValue() - 1), day))
                .toList();
    }

    private static DayResult first(YearResult result) {
        return result.days().get(0);
    }

    private static Fields<DayResult> place() {
        return Fields.<DayResult>none()
                .group(
                        "place",
                        "where the cooker stands",
                        result -> result.day().site(),
                        PLACE)
                .text(
                        "sky",
                        "model of the clear sky",
                        result -> result.scenario().site().orElseThrow().sky().describe());
    }

    private static List<String> zone(DayResult result) {
        return List.of("zone: " + result.day().site().zone());
    }
}
