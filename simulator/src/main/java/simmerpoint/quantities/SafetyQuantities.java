package simmerpoint.quantities;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;
import simmerpoint.geometry.Vec;
import simmerpoint.safety.HotPlace;
import simmerpoint.safety.SafetyResult;
import simmerpoint.safety.YardRisks;
import simmerpoint.safety.eyes.Glare;
import simmerpoint.safety.eyes.SeenPatch;
import simmerpoint.safety.field.Reach;
import simmerpoint.safety.field.Way;
import simmerpoint.safety.field.YardLight;
import simmerpoint.safety.kitchen.KitchenRisks;
import simmerpoint.safety.parked.OffAxis;
import simmerpoint.safety.parked.ParkedHour;
import simmerpoint.safety.parked.ParkedResult;
import simmerpoint.safety.parked.ParkedSpot;
import simmerpoint.safety.parked.ParkedWay;
import simmerpoint.safety.parked.Parking;
import simmerpoint.safety.places.Facing;
import simmerpoint.safety.places.LookedAt;
import simmerpoint.safety.risk.Hazard;
import simmerpoint.safety.risk.Stuff;
import simmerpoint.sampling.Estimate;

/** What {@code safety} finds; its table has one row for each hazard, with the pan and without. */
public final class SafetyQuantities {
    private static final List<String> HAZARDS =
            Stream.of(Hazard.values()).map(Hazard::word).toList();

    private static final Fields<YardLight.Irradiance> LIGHT = Fields.<YardLight.Irradiance>none()
            .estimate(
                    "reflected_W_m2",
                    "light of the mirrors: most that one side of a small surface gets, however it is turned",
                    light -> new Estimate(light.reflected(), light.standardError()))
            .number(
                    "reflected_least_W_m2",
                    "the side that gets most gets no less than this",
                    YardLight.Irradiance::reflectedLeast)
            .number(
                    "direct_W_m2",
                    "sunlight that reaches it, on a side that faces the sun",
                    YardLight.Irradiance::direct)
            .number("together_W_m2", "both together", YardLight.Irradiance::together);

    private static final Fields<HotPlace> HOT = Fields.<HotPlace>none()
            .vector(
                    "place_m",
                    "towards the sun, to the right of whoever faces it, up; from the ground under the mount",
                    hot -> parts(hot.place()))
            .include(HotPlace::light, LIGHT);

    private static final Fields<Reach> REACH = Fields.<Reach>none()
            .text(
                    "hazard",
                    "what the light can do",
                    HAZARDS,
                    reach -> reach.hazard().word())
            .number(
                    "flux_W_m2",
                    "least light that does it",
                    reach -> reach.hazard().wattsPerSquareMetre())
            .optionalEstimate("axis_m", "how far from the focus along the axis, away from the dish", way(Way.AXIS))
            .optionalEstimate("rim_m", "the same off the axis, as far out as the light goes", way(Way.RIM))
            .optionalEstimate("side_m", "the same sideways", way(Way.SIDE))
            .optionalEstimate("dish_m", "the same towards the dish", way(Way.DISH))
            .optionalEstimate("level_m", "farthest from under the focus, measured level", Reach::level)
            .optionalEstimate("height_m", "highest place, above the ground", Reach::height);

    private static final Fields<YardRisks> RISKS = Fields.<YardRisks>none()
            .group("hottest", "where there is most light of the mirrors", YardRisks::hottest, HOT)
            .group("ground", "where the ground gets most of it", YardRisks::ground, HOT)
            .rows("reaches", "how far each hazard reaches, mildest first", YardRisks::reaches, REACH);

    private static final Fields<ParkedSpot> SPOT = Fields.<ParkedSpot>none()
            .estimate(
                    "hottest_W_m2",
                    "hottest light of mirrors and sun together; 0 if the mirrors throw none",
                    spot -> new Estimate(spot.flux(), spot.standardError()))
            .vector(
                    "place_m",
                    "where that is: level to where the dish faces, to the right of that, up; from the ground under the mount",
                    spot -> parts(spot.place()))
            .number("ground_W_m2", "most on the ground, 0 if the mirrors throw none there", ParkedSpot::groundFlux)
            .number(
                    "wall_W_m2",
                    "most 1 m or farther from under the mount, level: what a wall there gets at most, 0 for none",
                    ParkedSpot::wallFlux)
            .number(
                    "stand_W_m2",
                    "most on what holds the pan up; 0 for none, and where it is not told of",
                    ParkedSpot::standFlux)
            .number(
                    "smoulder_reach_m",
                    "level distance from under the mount up to which wood left for long smoulders, 0 for none",
                    ParkedSpot::smoulderReach);

    private static final Fields<OffAxis> OFF_AXIS = Fields.<OffAxis>none()
            .number("off_axis_rad", "angle between the sun and the dish\u2019s axis", OffAxis::radians)
            .include(OffAxis::spot, SPOT);

    private static final Fields<ParkedHour> HOUR = Fields.<ParkedHour>none()
            .time("time", "by the clock of the place", hour -> Optional.of(hour.time()))
            .number("elevation_rad", "height of the sun", ParkedHour::sunElevationRadians)
            .number("off_axis_rad", "angle between the sun and the dish\u2019s axis", ParkedHour::offAxisRadians)
            .include(ParkedHour::spot, SPOT);

    private static final Fields<ParkedWay> PARKED_WAY = Fields.<ParkedWay>none()
            .word("parking", "how it is left", Parking.class, ParkedWay::parking)
            .number("azimuth_rad", "where the dish faces, from north over east", ParkedWay::azimuthRadians)
            .number("elevation_rad", "of its axis", ParkedWay::elevationRadians)
            .rows("hours", "with the sun up", ParkedWay::hours, HOUR);

    private static final Fields<ParkedResult> PARKED = Fields.<ParkedResult>none()
            .rows("off_axis", "its light as the sun moves away from the axis", ParkedResult::offAxis, OFF_AXIS)
            .rows("ways", "ways to leave it uncovered; none without a place", ParkedResult::ways, PARKED_WAY);

    private static final Fields<Glare> GLARE = Fields.<Glare>none()
            .number("suns", "brightness of the mirror\u2019s sun, in suns", Glare::suns)
            .number(
                    "burn_angle_rad",
                    "width from which on it damages a retina within a blink; null if never",
                    Glare::burnAngle)
            .number("burn_m", "up to this distance from the focus it is so wide", Glare::burnMetres)
            .number("cone_rad", "half-angle about the axis within which light past the focus goes", Glare::coneRadians)
            .number("lowest_rad", "elevation of the lowest of that light", Glare::lowestRadians);

    private static final Fields<KitchenRisks> KITCHEN = Fields.<KitchenRisks>none()
            .number("empty_C", "hottest place of the empty pan\u2019s bottom", KitchenRisks::emptyCelsius)
            .number("food_C", "the same under food that lies still", KitchenRisks::foodCelsius)
            .optionalNumber(
                    "dry_s",
                    "from the first boil until all water is steam, likely; null if it makes next to none",
                    SafetyQuantities::dry)
            .number("handle_W_m2", "most light on a handle, sun included", KitchenRisks::handle)
            .number(
                    "handle_rad",
                    "where that handle points, level, from the way towards the sun to the right",
                    KitchenRisks::handleRadians);

    private static final Fields<SeenPatch> SEEN = Fields.<SeenPatch>none()
            .number(
                    "patch_rad",
                    "full angle of a round patch as large as the bright part of the mirror; 0 if it is not seen",
                    SeenPatch::radians)
            .number("patch_suns", "its brightness, in suns", SeenPatch::suns)
            .word("harm", "what a glance does", SeenPatch.Harm.class, SeenPatch::harm);

    private static final Fields<LookedAt> PLACE = Fields.<LookedAt>none()
            .text("name", "what stands there", LookedAt::name)
            .text(
                    "made_of",
                    "what it is made of",
                    Stuff.words().toList(),
                    at -> at.stuff().word())
            .text(
                    "facing",
                    "which way its lit side looks",
                    Facing.words().toList(),
                    at -> at.facing().word())
            .vector(
                    "place_m",
                    "towards the sun, to the right of whoever faces it, up; from the ground under the mount",
                    at -> parts(at.place()))
            .group("pan_in_place", "its light with the pan in place", LookedAt::standing, LIGHT)
            .group("pan_taken_away", "its light with the pan taken away", LookedAt::taken, LIGHT)
            .optionalNumber(
                    "harmed_s",
                    "until it is burnt, charred or in flames; null where no harm is known",
                    LookedAt::harmed)
            .group(
                    "eyes",
                    "the mirror seen from there, with the pan in place or not; indicative",
                    LookedAt::seen,
                    SEEN);

    private static final Fields<SafetyResult.RunInfo> RUN = Fields.<SafetyResult.RunInfo>none()
            .whole("rays", "number of rays", SafetyResult.RunInfo::rays)
            .whole("threads", "number of threads", SafetyResult.RunInfo::threads)
            .number("trace_seconds", "wall time of the light field", SafetyResult.RunInfo::seconds);

    private static final Fields<SafetyResult> FIELDS = Fields.<SafetyResult>none()
            .number("people_away_m", "how far from the focus people stay", SafetyResult::people)
            .number("things_away_m", "how far from the focus things that burn stay", SafetyResult::things)
            .group("pan_in_place", "with the pan in place", SafetyResult::standing, RISKS)
            .group("pan_taken_away", "with the pan taken away", SafetyResult::taken, RISKS)
            .rows("places", "things in the light, those of the scenario first", SafetyResult::places, PLACE)
            .group("parked", "left uncovered and not aimed", SafetyResult::parked, PARKED)
            .group("glare", "for whoever looks into its light; indicative", SafetyResult::glare, GLARE)
            .optionalGroup("kitchen", "food, pan and handle", SafetyResult::kitchen, KITCHEN)
            .group("run", "differs from run to run", SafetyResult::run, RUN);

    /** A row of the table. */
    private record Row(boolean pan, Reach reach) {}

    private static final Fields<Row> ROW = Fields.<Row>none()
            .flag("pan_in_place", "whether the pan is in place", Row::pan)
            .include(Row::reach, REACH);

    /** All of it. */
    public static final Document<SafetyResult> DOCUMENT = new Document<>(
            "safety",
            result -> result.scenario().title(),
            SafetyResult::seed,
            FIELDS,
            new Table<>(ROW, SafetyQuantities::rows));

    private SafetyQuantities() {}

    private static Function<Reach, Optional<Estimate>> way(Way way) {
        return reach -> reach.of(way);
    }

    private static OptionalDouble dry(KitchenRisks kitchen) {
        return kitchen.dryHours().stream()
                .mapToDouble(hours -> 3600 * hours.likely())
                .findFirst();
    }

    private static double[] parts(Vec place) {
        return new double[] {place.x(), place.y(), place.z()};
    }

    private static Stream<Row> rows(SafetyResult result) {
        return Stream.concat(
                result.standing().reaches().stream().map(reach -> new Row(true, reach)),
                result.taken().reaches().stream().map(reach -> new Row(false, reach)));
    }
}
