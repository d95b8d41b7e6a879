package simmerpoint.report;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import simmerpoint.answer.SkyWords;
import simmerpoint.quantities.OneLine;
import simmerpoint.quantities.Version;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.aim.AimCurve;
import simmerpoint.study.aim.AimInterval;
import simmerpoint.study.aim.AimLead;
import simmerpoint.study.aim.AimMap;
import simmerpoint.study.aim.AimResult;
import simmerpoint.study.aim.AimTolerance;
import simmerpoint.study.aim.MisaimDirection;
import simmerpoint.study.aim.SunTrack;

/**
 * How exactly and how often to aim, as one JSON object in UTF-8.
 *
 * <p>Fields: {@code dead_on_power_W} (taken up with neither turn nor drift; of a bare disc, caught), {@code as_aimed_power_W}
 * (with those of the scenario), {@code tolerance} by way with {@code drift_tolerance_deg} and {@code turn_tolerance_deg}, the
 * least of four each (null where the loss is never reached), {@code sun} (its way; {@code real} if place and time are
 * known), {@code dead_on_interval}, {@code long_interval} (dead on, left twice as long) and {@code aimed_ahead} (or null),
 * each with its {@code moments}, {@code curves}, {@code maps}. {@code up_deg} above 0: sun higher or dish too high; {@code
 * side_deg} above 0: to the right, facing the sun. Traced figures have their standard error as {@code name_se}. The same
 * scenario and seed give the same bytes but for {@code run}, which comes last.
 */
public final class AimJson {
    private AimJson() {}

    /** The bytes of the file for {@code result}, ending with a line break. */
    public static byte[] bytes(AimResult result) {
        return JsonObject.bytes(json -> write(json, result));
    }

    private static void write(JsonObject json, AimResult result) throws IOException {
        json.text("title", OneLine.of(result.scenario().title()));
        json.text("version", Version.text());
        json.whole("seed", result.options().seed());
        json.number("loss_share", result.plan().lossShare());
        json.number("stick_m", result.plan().stickMetres());
        json.estimate("dead_on_power_W", result.deadOnWatts());
        json.estimate("as_aimed_power_W", result.asAimed().absorbed());
        AimTolerance tolerance = result.tolerance();
        angle(json, "drift_tolerance_deg", tolerance.drift());
        angle(json, "turn_tolerance_deg", tolerance.turn());
        json.list("tolerance", List.of(MisaimDirection.values()), (each, way) -> {
            each.text("way", SkyWords.key(way));
            angle(each, "angle_deg", tolerance.angle(way));
        });
        json.object("sun", sun -> sun(sun, result.way()));
        estimate(json, "aim_again_min", result.minutes());
        json.object("dead_on_interval", interval -> interval(interval, result.deadOnInterval()));
        json.object("long_interval", interval -> interval(interval, result.longInterval()));
        if (result.lead().isPresent()) {
            AimLead lead = result.lead().get();
            json.object("aimed_ahead", ahead -> lead(ahead, lead, result.plan().stickMetres()));
        } else {
            json.nothing("aimed_ahead");
        }
        json.list("curves", result.curves(), AimJson::curve);
        json.list("maps", result.maps(), AimJson::map);
        json.object("run", run -> run(run, result.run()));
    }

    private static void angle(JsonObject json, String name, Optional<Estimate> radians) throws IOException {
        estimate(json, name, radians.map(a -> a.times(180 / Math.PI)));
    }

    private static void estimate(JsonObject json, String name, Optional<Estimate> e) throws IOException {
        json.estimate(name, e.orElse(new Estimate(Double.NaN, Double.NaN)));
    }

    private static void sun(JsonObject json, SunTrack way) throws IOException {
        json.flag("real", way.isReal());
        json.number("elevation_deg", Math.toDegrees(way.elevationRadians()));
        json.number("up_deg_min", Math.toDegrees(way.upRadiansPerMinute()));
        json.number("side_deg_min", Math.toDegrees(way.sideRadiansPerMinute()));
    }

    private static void lead(JsonObject json, AimLead lead, double stick) throws IOException {
        json.number("share_of_half_interval", lead.share());
        json.number("lead_up_deg", Math.toDegrees(lead.upRadians()));
        json.number("lead_side_deg", Math.toDegrees(lead.sideRadians()));
        json.number("lead_deg", Math.toDegrees(lead.radians()));
        json.number("shadow_m", AimLead.shadow(stick, lead.radians()));
        interval(json, lead.interval());
    }

    private static void interval(JsonObject json, AimInterval interval) throws IOException {
        json.number("minutes", interval.minutes());
        json.estimate("mean_power_W", interval.mean());
        json.estimate("least_power_W", interval.least());
        json.list("moments", interval.moments(), (each, moment) -> {
            each.number("minutes", moment.minutes());
            each.estimate("power_W", moment.watts());
        });
    }

    private static String kind(boolean turn) {
        return turn ? "turn" : "drift";
    }

    private static void curve(JsonObject json, AimCurve curve) throws IOException {
        json.text("kind", kind(curve.turn()));
        json.text("along", curve.side() ? "side" : "up");
        json.list("points", curve.points(), (each, point) -> {
            each.number("angle_deg", tidy(point.radians()));
            each.estimate("power_W", point.watts());
        });
    }

    /** One cell of a map: degrees and watts. */
    private record Cell(double up, double side, double watts) {}

    private static void map(JsonObject json, AimMap map) throws IOException {
        json.text("kind", kind(map.turn()));
        json.number("largest_power_W_se", map.largestError());
        List<Cell> cells = new ArrayList<>();
        double[] angles = map.radians();
        for (int row = 0; row < angles.length; row++) {
            for (int column = 0; column < angles.length; column++) {
                cells.add(new Cell(tidy(angles[row]), tidy(angles[column]), map.watts()[row][column]));
            }
        }
        json.list("cells", cells, (each, cell) -> {
            each.number("up_deg", cell.up());
            each.number("side_deg", cell.side());
            each.number("power_W", cell.watts());
        });
    }

    /** Degrees without the dust of their conversion. */
    private static double tidy(double radians) {
        return Double.parseDouble(String.format(Locale.ROOT, "%.9f", Math.toDegrees(radians)));
    }

    private static void run(JsonObject json, AimResult.RunInfo run) throws IOException {
        json.whole("rays", run.rays());
        json.whole("curve_rays", run.curveRays());
        json.whole("map_rays", run.mapRays());
        json.whole("map_aims", run.aims());
        json.whole("map_casts", run.casts());
        json.whole("threads", run.threads());
        json.number("seconds", run.seconds());
    }
}
