package simmerpoint.study.pan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.IntStream;
import simmerpoint.geometry.Vec;
import simmerpoint.sampling.Estimate;
import simmerpoint.sampling.Replicates;
import simmerpoint.scenario.Scenario;
import simmerpoint.setup.Setup;
import simmerpoint.setup.Stand;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.ReplicateCaster;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.target.PositionSweep;

/** How the caught watts change as the target is moved along one of its moves: all positions from one cast of light. */
public final class MoveStudy {
    private MoveStudy() {}

    /** One of the moves of design: how a stand changes by a distance (m). */
    public enum Move {
        /** Along the axis, positive away from the dish. */
        PULL_BACK,
        /** The dish slid back along the ground, away from the sun. */
        SLIDE,
        /** The pan raised. */
        RAISE,
        /** Along the dish's +y. */
        SIDE;

        /** As the scenario's key names it: "pull-back". */
        public String key() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }

        /** How far {@code stand} has gone along this move from the focus, m. */
        public double of(Stand stand) {
            return switch (this) {
                case PULL_BACK -> stand.pullBackMetres();
                case SLIDE -> stand.slideMetres();
                case RAISE -> stand.raiseMetres();
                case SIDE -> stand.sideMetres();
            };
        }

        /** The stand after moving {@code metres} further. */
        public Stand from(Stand stand, double metres) {
            return switch (this) {
                case PULL_BACK ->
                    new Stand(
                            stand.pullBackMetres() + metres,
                            stand.slideMetres(),
                            stand.raiseMetres(),
                            stand.sideMetres());
                case SLIDE ->
                    new Stand(
                            stand.pullBackMetres(),
                            stand.slideMetres() + metres,
                            stand.raiseMetres(),
                            stand.sideMetres());
                case RAISE ->
                    new Stand(
                            stand.pullBackMetres(),
                            stand.slideMetres(),
                            stand.raiseMetres() + metres,
                            stand.sideMetres());
                case SIDE ->
                    new Stand(
                            stand.pullBackMetres(),
                            stand.slideMetres(),
                            stand.raiseMetres(),
                            stand.sideMetres() + metres);
            };
        }
    }

    /**
     * Watts at each position.
     *
     * @param move along what
     * @param offsets m from the scenario's stand
     * @param shaded kept off the mirrors, W
     * @param underside on the underside or disc, W
     * @param wall on the wall, W
     * @param lid on the lid, W
     * @param caught all of it, W
     */
    public record Curve(
            Move move,
            double[] offsets,
            List<Estimate> shaded,
            List<Estimate> underside,
            List<Estimate> wall,
            List<Estimate> lid,
            List<Estimate> caught) {}

    /**
     * Watts at {@code count} positions from {@code from} to {@code to} (m, from the scenario's stand) along
     * {@code move}. Dishes whose panels hide each other are refused. A pan that a shaking dish carries is taken to shake as at
     * {@code from}: off by jitter × distance elsewhere.
     */
    public static Curve run(
            Scenario scenario, Move move, double from, double to, int count, TraceOptions options, Progress progress) {
        if (!(count >= 2 && to > from)) {
            throw new IllegalArgumentException("a move needs two positions or more, the last beyond the first");
        }
        double spacing = (to - from) / (count - 1);
        Scenario first = scenario.withStand(move.from(scenario.stand(), from));
        ReplicateCaster casting = new ReplicateCaster(first, options);
        if (casting.caster().blocking().possible()) {
            throw new IllegalArgumentException(
                    "panels of this dish can hide each other: trace it position by position");
        }
        Vec step = stepInTarget(first, move, spacing);
        List<PositionSweep> walks = new ArrayList<>();
        for (int r = 0; r < ReplicateCaster.REPLICATES; r++) {
            walks.add(new PositionSweep(
                    first.target(),
                    step,
                    count,
                    first.built().shares(),
                    ReplicateCaster.batchSize(ReplicateCaster.bitsFor(options.rays()))));
        }
        casting.castAll(
                ReplicateCaster.bitsFor(options.rays()),
                progress,
                (r, light) -> walks.get(r).add(light));
        double[] offsets =
                IntStream.range(0, count).mapToDouble(k -> from + k * spacing).toArray();
        return new Curve(
                move,
                offsets,
                estimates(walks, count, PositionSweep::shadedWatts),
                estimates(walks, count, PositionSweep::undersideWatts),
                estimates(walks, count, PositionSweep::wallWatts),
                estimates(walks, count, PositionSweep::lidWatts),
                estimates(walks, count, MoveStudy::caught));
    }

    private static double[] caught(PositionSweep walk) {
        double[] a = walk.undersideWatts();
        double[] b = walk.wallWatts();
        double[] c = walk.lidWatts();
        return IntStream.range(0, a.length).mapToDouble(k -> a[k] + b[k] + c[k]).toArray();
    }

    private static List<Estimate> estimates(
            List<PositionSweep> walks, int count, Function<PositionSweep, double[]> watts) {
        List<double[]> all = walks.stream().map(watts).toList();
        return IntStream.range(0, count)
                .mapToObj(k -> Replicates.mean(all.size(), r -> all.get(r)[k]))
                .toList();
    }

    private static Vec stepInTarget(Scenario first, Move move, double spacing) {
        Setup here = first.setup();
        Setup there = first.withStand(move.from(first.stand(), spacing)).setup();
        return here.target().fromParent(there.target().origin());
    }
}
