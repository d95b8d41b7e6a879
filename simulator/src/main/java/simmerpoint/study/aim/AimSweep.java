package simmerpoint.study.aim;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import simmerpoint.sampling.Estimate;
import simmerpoint.scenario.Scenario;
import simmerpoint.setup.Aim;
import simmerpoint.study.light.LightKey;
import simmerpoint.study.paired.PairedStudy;
import simmerpoint.study.paired.PairedWatts;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;

/**
 * Curves and maps of watts over drift and turn. Both maps stand on the same angles, so that a turn and the opposite drift,
 * which make the same light, have it cast once for both.
 */
final class AimSweep {
    private static final int STEPS = 12;
    private static final int POINTS_PER_STEP = 2;
    private static final double BEYOND = 1.6;
    private static final double[] STEP_DEGREES = {0.01, 0.02, 0.05, 0.1, 0.2, 0.25, 0.3, 0.4, 0.5, 0.6, 0.8, 1};
    private static final double LARGEST_STEP_DEGREES = 1.25;

    private final Scenario deadOn;
    private final AimFeasibility room;
    private final double step;

    /** For a scenario aimed dead on, half as far again as its largest tolerance of drift and a little. */
    AimSweep(AimTolerance tolerance) {
        deadOn = tolerance.deadOn().scenario();
        room = new AimFeasibility(deadOn);
        step = step(tolerance);
    }

    private static double step(AimTolerance tolerance) {
        double largest = Arrays.stream(MisaimDirection.values())
                .filter(way -> !way.isTurn())
                .mapToDouble(way -> tolerance.angle(way).map(Estimate::value).orElse(AimTolerance.RANGE))
                .max()
                .orElseThrow();
        double wanted = Math.toDegrees(BEYOND * largest / STEPS);
        double degrees =
                Arrays.stream(STEP_DEGREES).filter(d -> d >= wanted).findFirst().orElse(LARGEST_STEP_DEGREES);
        return Math.toRadians(degrees);
    }

    /** The four curves. */
    List<AimCurve> curves(TraceOptions options, Progress progress) {
        int n = STEPS * POINTS_PER_STEP;
        double[] angles = angles(n, step / POINTS_PER_STEP);
        List<Scenario> scenarios = new ArrayList<>();
        List<Double> offsets = new ArrayList<>();
        int[] ends = new int[4];
        for (int k = 0; k < 4; k++) {
            MisaimLine path = new MisaimLine(isTurn(k), isSide(k) ? 0 : 1, isSide(k) ? 1 : 0);
            for (double angle : angles) {
                Aim aim = path.off(deadOn.aim(), angle);
                if (room.allows(aim)) {
                    scenarios.add(deadOn.withAim(aim));
                    offsets.add(angle);
                }
            }
            ends[k] = scenarios.size();
        }
        List<PairedWatts> watts = PairedStudy.watts(scenarios, options, progress);
        List<AimCurve> out = new ArrayList<>();
        for (int k = 0; k < 4; k++) {
            List<AimCurve.Point> points = IntStream.range(k == 0 ? 0 : ends[k - 1], ends[k])
                    .mapToObj(
                            i -> new AimCurve.Point(offsets.get(i), watts.get(i).useful()))
                    .toList();
            out.add(new AimCurve(isTurn(k), isSide(k), points));
        }
        return out;
    }

    private static boolean isTurn(int curve) {
        return curve >= 2;
    }

    private static boolean isSide(int curve) {
        return curve % 2 == 1;
    }

    /** Both maps, and how often light was cast for them. */
    Maps maps(TraceOptions options, Progress progress) {
        double[] angles = angles(STEPS, step);
        List<Scenario> scenarios = new ArrayList<>();
        List<int[]> cells = new ArrayList<>();
        Set<LightKey> keys = new HashSet<>();
        for (int map = 0; map < 2; map++) {
            for (int row = 0; row < angles.length; row++) {
                for (int column = 0; column < angles.length; column++) {
                    Aim aim = aim(map, angles[row], angles[column]);
                    if (room.allows(aim)) {
                        Scenario scenario = deadOn.withAim(aim);
                        scenarios.add(scenario);
                        cells.add(new int[] {map, row, column});
                        keys.add(LightKey.of(scenario));
                    }
                }
            }
        }
        List<PairedWatts> watts = PairedStudy.watts(scenarios, options, progress);
        return new Maps(List.of(map(0, angles, cells, watts), map(1, angles, cells, watts)), cells.size(), keys.size());
    }

    private Aim aim(int map, double up, double side) {
        return map == 0 ? deadOn.aim().plusDrift(up, side) : deadOn.aim().plusTurn(up, side);
    }

    private static AimMap map(int map, double[] angles, List<int[]> cells, List<PairedWatts> watts) {
        double[][] table = new double[angles.length][angles.length];
        for (double[] row : table) {
            Arrays.fill(row, Double.NaN);
        }
        double error = 0;
        for (int i = 0; i < cells.size(); i++) {
            int[] cell = cells.get(i);
            if (cell[0] == map) {
                Estimate useful = watts.get(i).useful();
                table[cell[1]][cell[2]] = useful.value();
                error = Math.max(error, useful.standardError());
            }
        }
        return new AimMap(map == 1, angles, table, error);
    }

    private static double[] angles(int steps, double step) {
        return IntStream.rangeClosed(-steps, steps).mapToDouble(k -> k * step).toArray();
    }

    /**
     * The maps.
     *
     * @param maps drift, turn
     * @param aims traced
     * @param casts of light
     */
    record Maps(List<AimMap> maps, int aims, int casts) {}
}
