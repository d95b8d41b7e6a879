package simmerpoint.drawing.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import simmerpoint.answer.words.SkyWords;
import simmerpoint.drawing.Drawing;
import simmerpoint.drawing.Row;
import simmerpoint.study.aim.AimMap;
import simmerpoint.study.aim.AimResult;
import simmerpoint.study.aim.SunTrack;

/** The maps of aiming beside each other on one scale of colours. */
public final class AimMaps {
    private static final int WAY_STEPS = 24;

    private AimMaps() {}

    /** What happens where the sun has drifted on, and where the dish is turned wrong. */
    public static Drawing of(AimResult result) {
        AimMap drift = result.maps().get(0);
        AimMap turn = result.maps().get(1);
        double top = new AimCharts(result).mostWatts();
        return new Row(
                0,
                List.of(
                        new AimMapChart(
                                drift,
                                top,
                                tolerated(result, drift),
                                new AimMapChart.Words("Sun drifted on", "sun higher", "sun to the right (facing it)"),
                                Optional.of(sun(result)),
                                false),
                        new AimMapChart(
                                turn,
                                top,
                                tolerated(result, turn),
                                new AimMapChart.Words("Dish turned wrong", "dish too high", "dish too far right"),
                                lead(result),
                                true)));
    }

    /** The loss counted from the map's own middle, which the same rays gave. */
    private static double tolerated(AimResult result, AimMap map) {
        int middle = map.watts().length / 2;
        return (1 - result.plan().lossShare()) * map.watts()[middle][middle];
    }

    private static AimMapChart.Way sun(AimResult result) {
        double longest = Math.max(
                result.longInterval().minutes(), result.deadOnInterval().minutes());
        List<double[]> points = new ArrayList<>();
        for (int k = 1; k <= WAY_STEPS; k++) {
            points.add(drift(result, longest * k / WAY_STEPS));
        }
        double minutes = result.deadOnInterval().minutes();
        return new AimMapChart.Way(
                points,
                drift(result, minutes),
                (result.way().isReal() ? "the sun\u2019s way; dot: " : "a sun\u2019s way; dot: ")
                        + SkyWords.minutes(minutes));
    }

    private static double[] drift(AimResult result, double minutes) {
        SunTrack.Drift drift = result.way().after(minutes);
        return new double[] {drift.upRadians(), drift.sideRadians()};
    }

    private static Optional<AimMapChart.Way> lead(AimResult result) {
        return result.lead().map(lead -> {
            double[] there = {lead.upRadians(), lead.sideRadians()};
            return new AimMapChart.Way(List.of(there), there, "the lead");
        });
    }
}
