package simmerpoint.report;

import java.nio.charset.StandardCharsets;
import simmerpoint.quantities.OneLine;
import simmerpoint.quantities.StableNumber;
import simmerpoint.quantities.Version;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.aim.AimCurve;
import simmerpoint.study.aim.AimInterval;
import simmerpoint.study.aim.AimMap;
import simmerpoint.study.aim.AimResult;

/**
 * Watts over drift, turn and time as one table, for a spreadsheet or a script. Lines that start with # say what the columns
 * are. Always in metric units, with a decimal point; an empty cell is a figure that does not exist.
 */
public final class AimCsv {
    private static final int DIGITS = 6;

    private final StringBuilder out = new StringBuilder(1 << 16);
    private final double deadOn;

    private AimCsv(AimResult result) {
        deadOn = result.deadOnWatts().value();
    }

    /** The bytes of the file for {@code result}, in UTF-8. */
    public static byte[] bytes(AimResult result) {
        AimCsv csv = new AimCsv(result);
        csv.head(result);
        result.curves().forEach(csv::curve);
        csv.interval("dead on", result.deadOnInterval());
        csv.interval("dead on; left long", result.longInterval());
        result.lead().ifPresent(lead -> csv.interval("aimed ahead", lead.interval()));
        result.maps().forEach(csv::map);
        return csv.out.toString().getBytes(StandardCharsets.UTF_8);
    }

    private void head(AimResult result) {
        comment("Simmerpoint " + Version.text() + " aim");
        comment("title: " + OneLine.of(result.scenario().title()));
        comment("seed: " + result.options().seed());
        comment("sheet: curve (along one axis) or map (both) over drift or turn; interval (over time after an aiming)");
        comment("up: sun higher or dish too high; side: to the right facing the sun");
        comment("power: taken up by the pan (caught by a bare disc); share: of the watts dead on");
        out.append("sheet,kind,minutes,up_deg,side_deg,power_W,power_se_W,share\n");
    }

    private void comment(String text) {
        out.append("# ").append(text.replace(",", ";")).append('\n');
    }

    private void curve(AimCurve curve) {
        for (AimCurve.Point p : curve.points()) {
            double up = curve.side() ? 0 : p.radians();
            double side = curve.side() ? p.radians() : 0;
            row("curve", curve.turn() ? "turn" : "drift", Double.NaN, up, side, p.watts());
        }
    }

    private void map(AimMap map) {
        double[] angles = map.radians();
        for (int row = 0; row < angles.length; row++) {
            for (int column = 0; column < angles.length; column++) {
                Estimate watts = new Estimate(map.watts()[row][column], Double.NaN);
                row("map", map.turn() ? "turn" : "drift", Double.NaN, angles[row], angles[column], watts);
            }
        }
    }

    private void interval(String kind, AimInterval interval) {
        for (AimInterval.Moment m : interval.moments()) {
            row("interval", kind, m.minutes(), Double.NaN, Double.NaN, m.watts());
        }
    }

    private void row(String sheet, String kind, double minutes, double up, double side, Estimate watts) {
        out.append(sheet).append(',').append(kind);
        cells(
                minutes,
                Math.toDegrees(up),
                Math.toDegrees(side),
                watts.value(),
                watts.standardError(),
                watts.value() / deadOn);
        out.append('\n');
    }

    private void cells(double... figures) {
        for (double x : figures) {
            out.append(',').append(StableNumber.of(x, DIGITS));
        }
    }
}
