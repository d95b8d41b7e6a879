package simmerpoint.study.pan;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import simmerpoint.dish.MirrorSurface;
import simmerpoint.sampling.Estimate;
import simmerpoint.scenario.Scenario;
import simmerpoint.setup.Clearance;
import simmerpoint.setup.Setup;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;

/**
 * How far a move is worth looking at: up to half the focal length either way, not into the mirror, and not much beyond
 * where the pan catches a tenth of the most it catches along the move.
 */
final class MoveRange {
    private static final double REACH = 0.5;
    private static final int PROBES = 100;
    private static final double LEAST_ROOM = 0.005;
    private static final double LEAST_SHARE = 0.1;
    private static final int PILOT_POSITIONS = 41;
    private static final double MILLIMETRE = 1e-3;

    private MoveRange() {}

    /** First and last offset (m) at which the target keeps clear of the mirror, at most half a focal length away. */
    static double[] clear(Scenario scenario, MirrorSurface surface, MoveStudy.Move move) {
        DoubleUnaryOperator room = offset -> {
            Scenario there = PanStudy.moved(scenario, move, offset);
            Setup setup = there.setup();
            return Clearance.aboveMirror(surface, setup, there.target());
        };
        double least = Math.min(LEAST_ROOM, room.applyAsDouble(0) / 2);
        double step = REACH * scenario.dish().focalLengthMetres() / PROBES;
        return new double[] {last(room, least, -step), last(room, least, step)};
    }

    private static double last(DoubleUnaryOperator room, double least, double step) {
        int k = 0;
        while (k < PROBES && room.applyAsDouble((k + 1) * step) > least) {
            k++;
        }
        return k * step;
    }

    /** Cuts off positions where hardly anything is caught, as a first look with few rays shows them; keeps 0 and never nothing but 0. */
    static double[] worthwhile(Scenario scenario, MoveStudy.Move move, double[] clear, TraceOptions few) {
        double span = clear[1] - clear[0];
        MoveStudy.Curve look =
                MoveStudy.run(scenario, move, clear[0], clear[0] + span, PILOT_POSITIONS, few, Progress.NONE);
        List<Estimate> caught = look.caught();
        double most = caught.stream().mapToDouble(Estimate::value).max().orElse(0);
        int first = 0;
        while (first < PILOT_POSITIONS - 1 && caught.get(first + 1).value() < LEAST_SHARE * most) {
            first++;
        }
        int last = PILOT_POSITIONS - 1;
        while (last > 0 && caught.get(last - 1).value() < LEAST_SHARE * most) {
            last--;
        }
        double from = Math.min(0, look.offsets()[first]);
        double to = Math.max(0, look.offsets()[last]);
        return to > from ? new double[] {from, to} : clear;
    }

    /** {@code steps} + 1 equally spaced offsets, whole millimetres apart where they can be, one of them exactly 0. */
    static double[] grid(double[] range, int steps) {
        double down = -range[0];
        double up = range[1];
        int before = (int) Math.round(steps * down / (down + up));
        int behind = steps - before;
        double spacing = Math.min(
                before > 0 ? down / before : Double.POSITIVE_INFINITY,
                behind > 0 ? up / behind : Double.POSITIVE_INFINITY);
        if (spacing >= 2 * MILLIMETRE) {
            spacing = MILLIMETRE * Math.floor(spacing / MILLIMETRE + 1e-9);
        }
        double[] out = new double[steps + 1];
        for (int k = 0; k <= steps; k++) {
            out[k] = (k - before) * spacing;
        }
        return out;
    }
}
