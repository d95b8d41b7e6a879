package simmerpoint.trial.power;

import java.util.ArrayList;
import java.util.List;
import simmerpoint.heat.balance.StandardCookingPower;
import simmerpoint.trial.log.Reading;
import simmerpoint.trial.log.Series;
import simmerpoint.trial.log.TrialLog;
import simmerpoint.uncertainty.StraightLine;

/**
 * A heating log cut into the standard's intervals of ten minutes, up to the boil. Where an interval has five readings or more its rise is
 * that of the straight line through them, so that no reading counts in two intervals and their errors are independent; otherwise the rise
 * is from end to end, between the nearest readings. An interval with a gap of more than ten minutes is left out.
 */
final class TestIntervals {
    private static final double LENGTH = 600;
    private static final int READINGS_FOR_LINE = 5;
    private static final double LINE_LENGTH = 0.7 * LENGTH;
    private static final double ROUNDING = 1;

    private final TrialLog log;
    private final HeatedPan pan;
    private final List<Reading> water;
    private final Series temperatures;
    private final Series air;
    private final Series light;
    private final Series wind;

    private TestIntervals(TrialLog log, HeatedPan pan, PowerTest.Basis basis) {
        this.log = log;
        this.pan = pan;
        water = log.water();
        temperatures = Series.of(water, Reading::waterCelsius);
        air = log.series(Reading::airCelsius).or(Series.constant(pan.airCelsius()));
        light = switch (basis) {
            case IRRADIANCE -> log.series(Reading::irradiance);
            case BEAM -> log.series(Reading::beam);
            case NOTHING -> log.series(r -> Double.NaN);
        };
        wind = log.series(Reading::wind);
    }

    /** Those of a log; none where the water is never heated below the boil. */
    static List<TestInterval> of(TrialLog log, HeatedPan pan, PowerTest.Basis basis) {
        return new TestIntervals(log, pan, basis).all();
    }

    private List<TestInterval> all() {
        List<TestInterval> found = new ArrayList<>();
        double end = log.warmsUntil(pan.boilingCelsius());
        for (double start = water.get(0).seconds(); start + LENGTH <= end + ROUNDING; start += LENGTH) {
            if (hasNoGap(start) && (light.isEmpty() || light.mean(start, start + LENGTH) > TrialLog.DARK)) {
                found.add(interval(start));
            }
        }
        return found;
    }

    /** Whether no two readings that it needs are more than ten minutes apart. */
    private boolean hasNoGap(double start) {
        double before = Double.NEGATIVE_INFINITY;
        for (Reading reading : water) {
            double now = reading.seconds();
            if (now > start && before < start + LENGTH && now - before > LENGTH + ROUNDING && before >= 0) {
                return false;
            }
            before = now;
        }
        return before >= start + LENGTH - ROUNDING;
    }

    private TestInterval interval(double start) {
        double end = start + LENGTH;
        List<Reading> inside = water.stream()
                .filter(r -> r.seconds() >= start && r.seconds() < end)
                .toList();
        int last = inside.size() - 1;
        boolean byLine = inside.size() >= READINGS_FOR_LINE
                && inside.get(last).seconds() - inside.get(0).seconds() >= LINE_LENGTH;
        return byLine
                ? interval(
                        start,
                        line(start, inside),
                        inside.get(0).seconds(),
                        inside.get(last).seconds())
                : interval(start, new double[] {temperatures.at(start), temperatures.at(end)}, start, end);
    }

    /** What the straight line through readings says of both ends of their interval. */
    private static double[] line(double start, List<Reading> inside) {
        StraightLine line = StraightLine.through(
                inside.stream().mapToDouble(Reading::seconds).toArray(),
                inside.stream().mapToDouble(Reading::waterCelsius).toArray());
        return new double[] {line.at(start), line.at(start + LENGTH)};
    }

    /** Means are over the time that the rise was read in. */
    private TestInterval interval(double start, double[] ends, double from, double to) {
        double irradiance = light.isEmpty() ? StandardCookingPower.STANDARD_IRRADIANCE : light.mean(from, to);
        return new TestInterval(
                start,
                new StandardCookingPower.Interval(
                        LENGTH,
                        pan.waterKilograms(),
                        ends[0],
                        ends[1],
                        temperatures.mean(from, to),
                        air.mean(from, to),
                        irradiance),
                wind.isEmpty() ? Double.NaN : wind.mean(from, to),
                light.isEmpty() ? Double.NaN : light.spread(start, start + LENGTH),
                pan.boilingCelsius() - Math.max(ends[0], ends[1]));
    }
}
