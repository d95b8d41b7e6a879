package simmerpoint.report;

import java.nio.charset.StandardCharsets;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import simmerpoint.answer.LevelWords;
import simmerpoint.heat.BoilingOutcome;
import simmerpoint.quantities.OneLine;
import simmerpoint.quantities.StableNumber;
import simmerpoint.quantities.Version;
import simmerpoint.study.day.DayHour;
import simmerpoint.study.day.DayResult;
import simmerpoint.study.day.HourLight;
import simmerpoint.study.day.YearResult;

/**
 * A day or a year as a table: one row per instant, for a spreadsheet or a script. Lines that start with # say what the
 * columns are. Always in metric units, with a decimal point; an empty cell is a figure that does not exist.
 */
public final class DayCsv {
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("yyyy-MM-dd'T'HH:mmxxx", Locale.ROOT);
    private static final int DIGITS = 6;

    private final StringBuilder out = new StringBuilder(1 << 14);

    private DayCsv() {}

    /** The bytes of the file for a day, in UTF-8. */
    public static byte[] bytes(DayResult result) {
        DayCsv csv = new DayCsv();
        csv.head(result.scenario().title(), result);
        csv.rows(result);
        return csv.bytes();
    }

    /** The bytes of the file for a year, in UTF-8: all its days one after the other. */
    public static byte[] bytes(YearResult result) {
        DayCsv csv = new DayCsv();
        csv.head(result.scenario().title(), result.days().get(0));
        result.days().forEach(csv::rows);
        return csv.bytes();
    }

    private byte[] bytes() {
        return out.toString().getBytes(StandardCharsets.UTF_8);
    }

    private void head(String title, DayResult result) {
        comment("Simmerpoint " + Version.text() + " day");
        comment("title: " + OneLine.of(title));
        comment("seed: " + result.seed() + "; zone: " + result.day().site().zone());
        comment("beam: direct sunlight facing the sun with the range between models of a clear sky");
        comment("absorbed: taken up by the pan; _se: standard error; low and high: at the lowest and highest beam");
        comment("boil: time for the pan's water to boil with the likely losses and beam; empty if it never does");
        comment("move: how far tripod or pan is moved at each new aiming; over the ground and up");
        out.append("time,elevation_deg,azimuth_deg,beam_W_m2,beam_low_W_m2,beam_high_W_m2,absorbed_W,absorbed_se_W,"
                + "absorbed_low_W,absorbed_high_W,missed_W,wall_W,heat_level,boil_min,dish_tilt_deg,pan_height_m,"
                + "dish_clearance_m,pan_to_tripod_m,aim_every_min,move_level_m,move_up_m\n");
    }

    private void comment(String text) {
        out.append("# ").append(text.replace(",", ";")).append('\n');
    }

    private void rows(DayResult result) {
        result.hours().forEach(this::row);
    }

    private void row(DayHour hour) {
        out.append(TIME.format(hour.time()));
        cells(
                Math.toDegrees(hour.elevationRadians()),
                Math.toDegrees(hour.moment().position().azimuthRadians()),
                hour.beam().likelyWattsPerSquareMetre(),
                hour.beam().lowWattsPerSquareMetre(),
                hour.beam().highWattsPerSquareMetre());
        hour.light().ifPresentOrElse(this::light, () -> out.append(",".repeat(8)));
        cells(
                Math.toDegrees(hour.stand().tiltRadians()),
                hour.stand().panHeightMetres(),
                hour.stand().clearanceMetres(),
                hour.stand().distanceMetres(),
                hour.walk().minutes(),
                hour.walk().levelMetres(),
                hour.walk().riseMetres());
        out.append('\n');
    }

    private void light(HourLight light) {
        cells(
                light.absorbed().value(),
                light.absorbed().standardError(),
                light.lowWatts(),
                light.highWatts(),
                light.ledger().missed().value(),
                light.ledger().wall().value());
        out.append(',').append(LevelWords.of(light.level().likely()));
        cells(boilSeconds(light.boil()) / 60);
    }

    /** Time to boil with the likely losses, s; NaN if it never does. */
    static double boilSeconds(BoilingOutcome boil) {
        if (boil instanceof BoilingOutcome.Boils boils) {
            return boils.seconds().likely();
        }
        return boil instanceof BoilingOutcome.MayBoil may ? may.likelySeconds().orElse(Double.NaN) : Double.NaN;
    }

    private void cells(double... figures) {
        for (double x : figures) {
            out.append(',').append(StableNumber.of(x, DIGITS));
        }
    }
}
