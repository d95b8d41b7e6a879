package simmerpoint.drawing.chart;

import java.util.List;
import simmerpoint.answer.words.SkyWords;
import simmerpoint.answer.words.TargetWords;
import simmerpoint.drawing.Style;
import simmerpoint.study.aim.AimCurve;
import simmerpoint.study.aim.AimInterval;
import simmerpoint.study.aim.AimResult;

/**
 * The charts of aiming, all on one scale of watts: over the time since one aiming, and over how far sun or dish are off.
 */
public final class AimCharts {
    private static final double HEADROOM = 1.12;

    private final AimResult result;
    private final String noun;
    private final double most;

    /** For one result. */
    public AimCharts(AimResult result) {
        this.result = result;
        noun = TargetWords.of(result.scenario().target()).noun();
        most = result.curves().stream()
                .flatMap(curve -> curve.points().stream())
                .mapToDouble(p -> p.watts().value())
                .reduce(Math.max(1, result.deadOnWatts().value()), Math::max);
    }

    /** The most watts on any curve, at least 1. */
    double mostWatts() {
        return most;
    }

    private double tolerated() {
        return (1 - result.plan().lossShare()) * result.deadOnWatts().value();
    }

    /** Watts over the minutes after one aiming. */
    public LineChart minutes() {
        AimInterval once = result.deadOnInterval();
        AimInterval longer = result.longInterval().minutes() >= once.minutes() ? result.longInterval() : once;
        LineChart chart = new LineChart(
                "What the " + noun + " gets after one aiming: W",
                "minutes after the aiming",
                0,
                Math.max(1e-3, longer.minutes()),
                most * HEADROOM);
        chart.curve(Style.WATTS_CURVE, points(longer), "aimed dead on, then left alone");
        result.lead()
                .ifPresent(lead -> chart.curve(
                        Style.FLUX_CURVE,
                        points(lead.interval()),
                        "aimed " + SkyWords.angle(lead.radians()) + " ahead of the sun, then left alone"));
        if (result.minutes().isPresent()) {
            chart.level(tolerated(), SkyWords.loss(1 - result.plan().lossShare()) + " of dead on")
                    .upright(once.minutes(), SkyWords.minutes(once.minutes()));
        }
        return chart;
    }

    private static List<double[]> points(AimInterval interval) {
        return interval.moments().stream()
                .map(m -> new double[] {m.minutes(), m.watts().value()})
                .toList();
    }

    /** Watts over the degrees that the sun has drifted on. */
    public LineChart drift() {
        return degrees(false, "Sun drifted on, dish and " + noun + " standing still: W", "up (sun higher) and down");
    }

    /** Watts over the degrees that the dish is turned wrong. */
    public LineChart turn() {
        return degrees(true, "Dish turned wrong: W", "up (dish too high) and down");
    }

    private LineChart degrees(boolean turn, String title, String up) {
        List<AimCurve> two =
                result.curves().stream().filter(c -> c.turn() == turn).toList();
        double reach = two.stream()
                .flatMap(c -> c.points().stream())
                .mapToDouble(p -> Math.abs(Math.toDegrees(p.radians())))
                .max()
                .orElse(1);
        LineChart chart = new LineChart(title, "degrees from dead on", -reach, reach, most * HEADROOM);
        for (AimCurve curve : two) {
            List<double[]> points = curve.points().stream()
                    .map(p ->
                            new double[] {Math.toDegrees(p.radians()), p.watts().value()})
                    .toList();
            chart.curve(
                    curve.side() ? Style.FLUX_CURVE : Style.WATTS_CURVE, points, curve.side() ? "right and left" : up);
        }
        return chart.level(tolerated(), "");
    }
}
