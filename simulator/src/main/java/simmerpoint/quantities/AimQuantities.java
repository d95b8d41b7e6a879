package simmerpoint.quantities;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.aim.AimCurve;
import simmerpoint.study.aim.AimInterval;
import simmerpoint.study.aim.AimLead;
import simmerpoint.study.aim.AimMap;
import simmerpoint.study.aim.AimPlan;
import simmerpoint.study.aim.AimResult;
import simmerpoint.study.aim.AimTolerance;
import simmerpoint.study.aim.FirstLight;
import simmerpoint.study.aim.MisaimDirection;
import simmerpoint.study.aim.SunTrack;

/** What {@code aim} finds; its table holds watts over drift, turn and time. */
public final class AimQuantities {
    private static final List<String> KINDS = List.of("drift", "turn");

    private static final Fields<SunTrack> SUN = Fields.<SunTrack>none()
            .flag("real", "whether place and time are known", SunTrack::isReal)
            .number("elevation_rad", "elevation of the sun", SunTrack::elevationRadians)
            .number("up_rad_s", "how fast the sun goes up", way -> way.upRadiansPerMinute() / 60)
            .number("side_rad_s", "how fast the sun goes to the right", way -> way.sideRadiansPerMinute() / 60);

    private static final Fields<AimInterval.Moment> MOMENT = Fields.<AimInterval.Moment>none()
            .number("time_s", "after the aiming", moment -> 60 * moment.minutes())
            .estimate("power_W", "then", AimInterval.Moment::watts);

    private static final Fields<AimInterval> SPELL = Fields.<AimInterval>none()
            .number("duration_s", "between two aimings", interval -> 60 * interval.minutes())
            .estimate("mean_power_W", "mean over the interval", AimInterval::mean)
            .estimate("least_power_W", "at the worst moment of the interval", AimInterval::least)
            .rows("moments", "evenly spaced", AimInterval::moments, MOMENT);

    private static final Fields<AimLead> AHEAD = Fields.<AimLead>none()
            .number("share_of_half_interval", "share of the sun's way in half the interval", AimLead::share)
            .number("lead_up_rad", "turned up beyond the sun", AimLead::upRadians)
            .number("lead_side_rad", "turned to the right beyond the sun", AimLead::sideRadians)
            .number("lead_rad", "turned beyond the sun", AimLead::radians);

    private static final Fields<Lead> LEAD = Fields.<Lead>none()
            .include(Lead::lead, AHEAD)
            .number("shadow_m", "distance of the tip of the stick's shadow from its foot", Lead::shadow)
            .include(lead -> lead.lead().interval(), SPELL);

    private static final Fields<Way> TOLERANCE = Fields.<Way>none()
            .word("way", "what is off, and where to", MisaimDirection.class, Way::way)
            .estimate("angle_rad", "off dead on where the loss is reached", Way::angle);

    private static final Fields<AimCurve.Point> POINT = Fields.<AimCurve.Point>none()
            .number("angle_rad", "off dead on", AimCurve.Point::radians)
            .estimate("power_W", "cooking power; of a bare disc, caught", AimCurve.Point::watts);

    private static final Fields<AimCurve> CURVE = Fields.<AimCurve>none()
            .text("kind", "drift of the sun or turn of the dish", KINDS, curve -> kind(curve.turn()))
            .text("along", "along which axis", List.of("up", "side"), curve -> curve.side() ? "side" : "up")
            .rows("points", "by rising angle", AimCurve::points, POINT);

    private static final Fields<Row> CELL = Fields.<Row>none()
            .number("up_rad", "sun higher or dish too high", Row::up)
            .number("side_rad", "to the right, facing the sun", Row::side)
            .number(
                    "power_W",
                    "cooking power; of a bare disc, caught",
                    row -> row.watts().value());

    private static final Fields<AimMap> MAP = Fields.<AimMap>none()
            .text("kind", "drift of the sun or turn of the dish", KINDS, map -> kind(map.turn()))
            .number("largest_power_W_se", "largest standard error of the cells", AimMap::largestError)
            .rows("cells", "along both axes", map -> map(map, Double.NaN).toList(), CELL);

    private static final Fields<AimResult.RunInfo> RUN = Fields.<AimResult.RunInfo>none()
            .whole("rays", "number of rays of the dead-on trace", AimResult.RunInfo::rays)
            .whole("curve_rays", "number of rays of each point of the curves", AimResult.RunInfo::curveRays)
            .whole("map_rays", "number of rays of each cell of the maps", AimResult.RunInfo::mapRays)
            .whole("map_aims", "number of aims traced for the maps", AimResult.RunInfo::aims)
            .whole("map_casts", "number of casts of light for them", AimResult.RunInfo::casts)
            .whole("threads", "number of threads", AimResult.RunInfo::threads)
            .number("seconds", "wall time of everything", AimResult.RunInfo::seconds);

    private static final Fields<AimTolerance> LEAST = Fields.<AimTolerance>none()
            .optionalEstimate("drift_tolerance_rad", "least drift that loses so much", AimTolerance::drift)
            .optionalEstimate("turn_tolerance_rad", "least turn that loses so much", AimTolerance::turn)
            .rows("tolerance", "each way; null where so much is never lost", AimQuantities::ways, TOLERANCE);

    private static final Fields<AimPlan> PLAN = Fields.<AimPlan>none()
            .number("loss_share", "share of the watts that may be lost", AimPlan::lossShare)
            .number("stick_m", "length of the sighting stick", AimPlan::stickMetres);

    private static final Fields<FirstLight.OnCard> CARD = Fields.<FirstLight.OnCard>none()
            .number("card_m", "of the card from the dish's middle, along its axis", FirstLight.OnCard::distanceMetres)
            .range("apart_*_m", "the two spots, from middle to middle", FirstLight.OnCard::apart)
            .range(
                    "width_*_m",
                    "of each spot: the circle that holds four fifths of its light",
                    FirstLight.OnCard::width);

    private static final Fields<FirstLight> FIRST_LIGHT = Fields.<FirstLight>none()
            .number(
                    "hole_m",
                    "diameter of each of two holes in the cloth over the mirror",
                    f -> f.holes().diameterMetres())
            .number("holes_apart_m", "from middle to middle", f -> f.holes().apartMetres())
            .range("holes_*_W", "light through both", FirstLight::watts)
            .range("meet_*_m", "where the two spots become one, from the dish's middle", FirstLight::meet)
            .range("meet_flux_*_W_m2", "in the middle of that spot", FirstLight::fluxThere)
            .rows("cards", "the nearest to the dish first", FirstLight::cards, CARD);

    private static final Fields<AimResult> FIELDS = Fields.<AimResult>none()
            .include(AimResult::plan, PLAN)
            .text("power", "what the watts are", PowerKind.WORDS, r -> PowerKind.of(r.scenario()))
            .estimate("dead_on_power_W", "without turn and drift", AimResult::deadOnWatts)
            .group("dead_on_range", "of such cookers, aimed dead on", AimResult::deadOnLikely, LikelyQuantities.RANGE)
            .estimate(
                    "as_aimed_power_W",
                    "with the turn and drift given",
                    r -> r.asAimed().useful())
            .include(AimResult::tolerance, LEAST)
            .group("sun", "its way", AimResult::way, SUN)
            .optionalEstimate("aim_again_s", "time until the loss is reached", AimQuantities::seconds)
            .group("dead_on_interval", "aimed dead on", AimResult::deadOnInterval, SPELL)
            .group("long_interval", "aimed dead on, left twice as long", AimResult::longInterval, SPELL)
            .optionalGroup("aimed_ahead", "turned ahead of the sun", AimQuantities::lead, LEAD)
            .optionalGroup(
                    "first_light", "the two spots by which to find the focus", AimResult::firstLight, FIRST_LIGHT)
            .rows("curves", "watts along one axis", AimResult::curves, CURVE)
            .rows("maps", "watts along both axes", AimResult::maps, MAP)
            .group("run", "differs from run to run", AimResult::run, RUN);

    private static final Fields<Row> ROW = Fields.<Row>none()
            .text("sheet", "curve (along one axis) or map (both) over drift or turn; interval over time", Row::sheet)
            .text("kind", "drift, turn, or which interval", Row::kind)
            .number("time_s", "after the aiming", Row::seconds)
            .number("up_rad", "sun higher or dish too high", Row::up)
            .number("side_rad", "to the right, facing the sun", Row::side)
            .estimate("power_W", "cooking power; of a bare disc, caught", Row::watts)
            .number("share", "share of the watts dead on", row -> row.watts().value() / row.deadOn());

    /** All of it. */
    public static final Document<AimResult> DOCUMENT = new Document<>(
            "aim",
            result -> result.scenario().title(),
            result -> result.options().seed(),
            FIELDS,
            new Table<>(ROW, AimQuantities::rows));

    private AimQuantities() {}

    /** Aiming ahead and the tip of the shadow that shows it. */
    private record Lead(AimLead lead, double shadow) {}

    /** One way of being off. */
    private record Way(MisaimDirection way, Estimate angle) {}

    /** A row of the table. */
    private record Row(
            String sheet, String kind, double seconds, double up, double side, Estimate watts, double deadOn) {}

    private static String kind(boolean turn) {
        return turn ? "turn" : "drift";
    }

    private static List<Way> ways(AimTolerance tolerance) {
        return Stream.of(MisaimDirection.values())
                .map(way -> new Way(way, tolerance.angle(way).orElse(null)))
                .toList();
    }

    private static Optional<Lead> lead(AimResult result) {
        return result.lead()
                .map(lead -> new Lead(lead, AimLead.shadow(result.plan().stickMetres(), lead.radians())));
    }

    private static Stream<Row> rows(AimResult result) {
        double deadOn = result.deadOnWatts().value();
        return Stream.of(
                        result.curves().stream().flatMap(curve -> curve(curve, deadOn)),
                        interval("dead on", result.deadOnInterval(), deadOn),
                        interval("dead on; left long", result.longInterval(), deadOn),
                        result.lead().stream().flatMap(lead -> interval("aimed ahead", lead.interval(), deadOn)),
                        result.maps().stream().flatMap(map -> map(map, deadOn)))
                .flatMap(rows -> rows);
    }

    private static Stream<Row> curve(AimCurve curve, double deadOn) {
        return curve.points().stream()
                .map(p -> new Row(
                        "curve",
                        kind(curve.turn()),
                        Double.NaN,
                        curve.side() ? 0 : p.radians(),
                        curve.side() ? p.radians() : 0,
                        p.watts(),
                        deadOn));
    }

    private static Stream<Row> interval(String kind, AimInterval interval, double deadOn) {
        return interval.moments().stream()
                .map(m -> new Row("interval", kind, 60 * m.minutes(), Double.NaN, Double.NaN, m.watts(), deadOn));
    }

    private static Stream<Row> map(AimMap map, double deadOn) {
        double[] angles = map.radians();
        int n = angles.length;
        return IntStream.range(0, n * n)
                .mapToObj(k -> new Row(
                        "map",
                        kind(map.turn()),
                        Double.NaN,
                        angles[k / n],
                        angles[k % n],
                        new Estimate(map.watts()[k / n][k % n], Double.NaN),
                        deadOn));
    }

    private static Optional<Estimate> seconds(AimResult result) {
        return result.minutes().map(minutes -> minutes.times(60));
    }
}
