package simmerpoint.report;

import java.io.IOException;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import java.util.Optional;
import simmerpoint.answer.LevelWords;
import simmerpoint.heat.BoilingOutcome;
import simmerpoint.heat.LikelyRange;
import simmerpoint.quantities.OneLine;
import simmerpoint.quantities.Version;
import simmerpoint.setup.StandGeometry;
import simmerpoint.study.day.CookingInterval;
import simmerpoint.study.day.DayHour;
import simmerpoint.study.day.DayResult;
import simmerpoint.study.day.HourLight;
import simmerpoint.study.day.LightLimit;
import simmerpoint.study.day.YearResult;
import simmerpoint.sun.Site;

/**
 * A day or a year as one JSON object in UTF-8. Times are local, ISO 8601 with their offset. Figures that come from rays
 * have their standard error as {@code name_se}; what does not exist (a boil that never comes) is null. The same
 * scenario and seed give the same bytes but for the object {@code run}, which comes last.
 */
public final class DayJson {
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("yyyy-MM-dd'T'HH:mm:ssxxx", Locale.ROOT);

    private static final double TIDY = 1e9;

    private DayJson() {}

    /** The bytes of the file for a day. */
    public static byte[] bytes(DayResult result) {
        return JsonObject.bytes(json -> {
            json.text("title", OneLine.of(result.scenario().title()));
            json.text("version", Version.text());
            json.whole("seed", result.seed());
            place(json, result.day().site());
            json.text("sky", result.scenario().outdoors().orElseThrow().sky().describe());
            day(json, result);
            json.object("run", run -> {
                run.whole("rays", result.rays());
                run.whole("threads", result.threads());
                run.number("trace_seconds", result.seconds());
            });
        });
    }

    /** The bytes of the file for a year: the same figures for each of its days. */
    public static byte[] bytes(YearResult result) {
        return JsonObject.bytes(json -> {
            json.text("title", OneLine.of(result.scenario().title()));
            json.text("version", Version.text());
            json.whole("seed", result.days().get(0).seed());
            place(json, result.days().get(0).day().site());
            json.text("sky", result.scenario().outdoors().orElseThrow().sky().describe());
            json.whole("year", result.year());
            json.list("days", result.days(), (each, day) -> {
                each.number(
                        "clear_month_cooking_h",
                        result.clearMonthHours(day.plan().date().getMonthValue() - 1));
                day(each, day);
            });
            json.object("run", run -> {
                run.whole("rays", result.rays());
                run.whole("threads", result.days().get(0).threads());
                run.number("trace_seconds", result.seconds());
            });
        });
    }

    private static void place(JsonObject json, Site place) throws IOException {
        json.object("place", p -> {
            p.number("latitude_deg", tidy(place.latitudeRadians()));
            p.number("longitude_deg", tidy(place.longitudeRadians()));
            p.number("altitude_m", place.altitudeMetres());
            p.text("zone", place.zone().getId());
        });
    }

    /** Degrees without the dust of their conversion. */
    private static double tidy(double radians) {
        return Math.round(Math.toDegrees(radians) * TIDY) / TIDY;
    }

    private static void day(JsonObject json, DayResult result) throws IOException {
        json.text("date", result.plan().date().toString());
        json.number("step_min", result.plan().step().toSeconds() / 60.0);
        json.number("least_elevation_deg", tidy(result.plan().leastElevationRadians()));
        json.text("sun", result.day().kind().name().toLowerCase(Locale.ROOT).replace('_', ' '));
        time(json, "sunrise", result.day().sunrise());
        time(json, "solar_noon", Optional.of(result.day().solarNoon()));
        time(json, "sunset", result.day().sunset());
        json.number("cooking_h", result.cookingHours());
        json.list("cooks", result.intervals(), DayJson::interval);
        if (result.noon().isPresent()) {
            DayHour noon = result.noon().get();
            json.object("noon", n -> hour(n, noon));
        } else {
            json.nothing("noon");
        }
        json.list("hours", result.hours(), DayJson::hour);
    }

    private static void interval(JsonObject json, CookingInterval interval) throws IOException {
        time(json, "from", Optional.of(interval.from()));
        time(json, "to", Optional.of(interval.to()));
    }

    private static void time(JsonObject json, String name, Optional<ZonedDateTime> time) throws IOException {
        if (time.isPresent()) {
            json.text(name, TIME.format(time.get().truncatedTo(ChronoUnit.SECONDS)));
        } else {
            json.nothing(name);
        }
    }

    private static void hour(JsonObject json, DayHour hour) throws IOException {
        time(json, "time", Optional.of(hour.time()));
        json.number("elevation_deg", Math.toDegrees(hour.elevationRadians()));
        json.number("azimuth_deg", Math.toDegrees(hour.moment().position().azimuthRadians()));
        json.number("beam_W_m2", hour.beam().likelyWattsPerSquareMetre());
        json.number("beam_low_W_m2", hour.beam().lowWattsPerSquareMetre());
        json.number("beam_high_W_m2", hour.beam().highWattsPerSquareMetre());
        if (hour.light().isPresent()) {
            light(json, hour.light().get());
        } else {
            json.text("no_light", hour.hindrance());
        }
        json.object("stand", s -> stand(s, hour));
    }

    private static void light(JsonObject json, HourLight light) throws IOException {
        json.estimate("absorbed_power_W", light.absorbed());
        json.number("absorbed_power_low_W", light.lowWatts());
        json.number("absorbed_power_high_W", light.highWatts());
        json.estimate("reflected_power_W", light.ledger().reflected());
        json.estimate("missed_power_W", light.ledger().missed());
        json.estimate("caught_power_W", light.ledger().caught());
        json.estimate("underside_power_W", light.ledger().underside());
        json.estimate("wall_power_W", light.ledger().wall());
        json.estimate("lid_power_W", light.ledger().lid());
        json.estimate("direct_on_pan_power_W", light.ledger().directOnPan());
        json.estimate("peak_flux_W_m2", light.hottest());
        json.text("heat_level", LevelWords.of(light.level().likely()));
        json.text("heat_level_low", LevelWords.of(light.level().lowest()));
        json.text("heat_level_high", LevelWords.of(light.level().highest()));
        boil(json, light);
        json.list("limits", light.limits(), DayJson::limit);
    }

    private static void limit(JsonObject json, LightLimit limit) throws IOException {
        json.text("kind", limit.kind().name().toLowerCase(Locale.ROOT).replace('_', ' '));
        json.number("share", limit.share());
    }

    /** Spread of the losses at the likely beam, and the likely losses at the lowest and highest beam. */
    private static void boil(JsonObject json, HourLight light) throws IOException {
        BoilingOutcome boil = light.boil();
        Optional<LikelyRange> seconds =
                boil instanceof BoilingOutcome.Boils boils ? Optional.of(boils.seconds()) : Optional.empty();
        double likely = boil instanceof BoilingOutcome.MayBoil may
                ? may.likelySeconds().orElse(Double.NaN)
                : seconds.map(LikelyRange::likely).orElse(Double.NaN);
        double soonest = boil instanceof BoilingOutcome.MayBoil may
                ? may.soonestSeconds()
                : seconds.map(LikelyRange::low).orElse(Double.NaN);
        json.number("boil_min", likely / 60);
        json.number("boil_low_min", soonest / 60);
        json.number("boil_high_min", seconds.map(LikelyRange::high).orElse(Double.NaN) / 60);
        json.number("boil_low_beam_min", light.lowBeamBoilSeconds().orElse(Double.NaN) / 60);
        json.number("boil_high_beam_min", light.highBeamBoilSeconds().orElse(Double.NaN) / 60);
        Optional<LikelyRange> settles = boil instanceof BoilingOutcome.Never never
                ? Optional.of(never.settlesCelsius())
                : boil instanceof BoilingOutcome.MayBoil may ? Optional.of(may.settlesCelsius()) : Optional.empty();
        json.number("settles_C", settles.map(LikelyRange::likely).orElse(Double.NaN));
        json.number("settles_low_C", settles.map(LikelyRange::low).orElse(Double.NaN));
        json.number("settles_high_C", settles.map(LikelyRange::high).orElse(Double.NaN));
    }

    private static void stand(JsonObject json, DayHour hour) throws IOException {
        StandGeometry stand = hour.stand();
        json.number("dish_tilt_deg", Math.toDegrees(stand.tiltRadians()));
        json.number("pan_height_m", stand.panHeightMetres());
        json.number("dish_clearance_m", stand.clearanceMetres());
        json.number("pan_to_tripod_m", stand.distanceMetres());
        json.flag("touches_ground", stand.touchesGround());
        json.flag("leg_in_beam", stand.legInBeam());
        json.number("aim_every_min", hour.walk().minutes());
        json.number("focus_walk_m", hour.walk().focusMetres());
        json.number("move_level_m", hour.walk().levelMetres());
        json.number("move_up_m", hour.walk().riseMetres());
    }
}
