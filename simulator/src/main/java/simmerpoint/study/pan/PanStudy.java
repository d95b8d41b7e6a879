package simmerpoint.study.pan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Supplier;
import simmerpoint.heat.FryingAssessment;
import simmerpoint.heat.FryingThresholds;
import simmerpoint.heat.ThermalPan;
import simmerpoint.heat.balance.HeatLevelModel;
import simmerpoint.sampling.Estimate;
import simmerpoint.scenario.CookingSetup;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.setup.Stand;
import simmerpoint.study.light.StoredLight;
import simmerpoint.study.likely.LikelyLight;
import simmerpoint.study.likely.LikelyStudy;
import simmerpoint.study.trace.HeatResult;
import simmerpoint.study.trace.ImpossibleSetupException;
import simmerpoint.study.trace.LikelyResult;
import simmerpoint.study.trace.PanIrradiation;
import simmerpoint.study.trace.PartialProgress;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.ReplicateCaster;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.study.trace.TraceStudy;
import simmerpoint.target.CaughtByFace;
import simmerpoint.target.Ledger;

/**
 * Where the pan stands for what: the scenario traced as it is, then each of the three moves. A move's watts come from one
 * cast of light, a quarter of the rays, caught at all its positions; what needs maps (hottest spot, evenness, slant of the
 * light) from twice the rays, at most as many as a trace has where none are asked for, stored and caught anew at some of them, joined by
 * smooth curves. Dishes whose panels hide each other are traced
 * position by position, at fewer positions.
 */
public final class PanStudy {
    /** Positions of one move. */
    public static final int POSITIONS = 41;

    private static final int FEWER_POSITIONS = 13;
    private static final long FEWER = 16;
    private static final long MAP_RAYS = 1 << 12;
    private static final long MOST_STORED = TraceOptions.DEFAULT_RAYS;
    private static final double BASE_SHARE = 0.2;
    private static final double LIGHT_SHARE = 0.25;
    private static final double LAST_SHARE = 0.85;
    private static final double BEST_SHARE = 0.9;
    private static final long MOVE_RAYS = 4;
    private static final List<MoveStudy.Move> MOVES =
            List.of(MoveStudy.Move.PULL_BACK, MoveStudy.Move.SLIDE, MoveStudy.Move.RAISE);

    private final Scenario scenario;
    private final CookingSetup kitchen;
    private final TraceResult base;
    private final TraceOptions options;
    private final TraceOptions forMove;
    private final TraceOptions fewer;
    private final ReplicateCaster casting;
    private final HeatLevelModel levels;
    private final Optional<StoredLight> light;
    private final Optional<LikelyLight> likely;

    private PanStudy(Scenario scenario, Optional<CheckedScenario> read, TraceOptions asked, Progress progress) {
        this.scenario = scenario;
        kitchen = scenario.cooking()
                .orElseThrow(() -> new IllegalArgumentException("only a pan can be asked for its place"));
        levels = kitchen.heatLevels();
        casting = new ReplicateCaster(scenario, asked);
        base = TraceStudy.run(scenario, asked, new PartialProgress(progress, 0, BASE_SHARE));
        likely = read.map(file -> LikelyLight.of(file, asked));
        options = asked.withPrecision(0).withRays(base.run().rays());
        forMove = options.withRays(Math.max(MAP_RAYS, options.rays() / MOVE_RAYS));
        fewer = options.withRays(Math.max(MAP_RAYS, options.rays() / FEWER));
        light = casting.caster().blocking().possible()
                ? Optional.empty()
                : Optional.of(StoredLight.cast(
                        scenario,
                        options.withRays(Math.max(MAP_RAYS, Math.min(MOST_STORED, 2 * options.rays()))),
                        new PartialProgress(progress, BASE_SHARE, LIGHT_SHARE)));
    }

    /**
     * Studies the moves of {@code scenario}, which must have a pan.
     *
     * @throws ImpossibleSetupException if the things named cannot stand as asked
     * @throws java.util.concurrent.CancellationException if {@code progress} says stop
     */
    public static PanResult run(Scenario scenario, TraceOptions options, Progress progress) {
        return new PanStudy(scenario, Optional.empty(), options, progress).run(progress);
    }

    /** The same with what is likely over all doubts, where the pan stands and where it is best put. */
    public static PanResult run(CheckedScenario read, TraceOptions options, Progress progress) {
        return run(read, () -> LikelyStudy.run(read, LikelyStudy.FOR_RANGE, options, Progress.NONE), options, progress);
    }

    /** The same where it is known what is likely {@code here}, where the pan stands. */
    public static PanResult run(
            CheckedScenario read, Supplier<LikelyResult> here, TraceOptions options, Progress progress) {
        Scenario scenario = read.scenario();
        PanResult asGiven = new PanStudy(scenario, Optional.of(read), options, progress).run(progress);
        return asGiven.withLikely(stand -> stand.equals(scenario.stand())
                ? here.get()
                : LikelyStudy.run(
                        read,
                        LikelyStudy.FOR_RANGE,
                        options,
                        drawn -> drawn.withStand(shifted(drawn.stand(), scenario.stand(), stand)),
                        Progress.NONE));
    }

    /** {@code stand} moved as far as from {@code from} to {@code to}. */
    private static Stand shifted(Stand stand, Stand from, Stand to) {
        return new Stand(
                stand.pullBackMetres() + to.pullBackMetres() - from.pullBackMetres(),
                stand.slideMetres() + to.slideMetres() - from.slideMetres(),
                stand.raiseMetres() + to.raiseMetres() - from.raiseMetres(),
                stand.sideMetres() + to.sideMetres() - from.sideMetres());
    }

    static Scenario moved(Scenario scenario, MoveStudy.Move move, double offset) {
        return scenario.withStand(move.from(scenario.stand(), offset));
    }

    /** Whether one can cook at the pan once it is moved. */
    static boolean isInReach(Scenario scenario, MoveStudy.Move move, double offset) {
        return scenario.heights().allows(moved(scenario, move, offset).panHeightMetres());
    }

    static TraceResult traceAt(
            Scenario scenario, MoveStudy.Move move, double offset, TraceOptions options, Progress progress) {
        return TraceStudy.run(moved(scenario, move, offset), options, progress);
    }

    private PanResult run(Progress progress) {
        long start = System.nanoTime();
        List<PanMove> moves = new ArrayList<>();
        double share = (LAST_SHARE - LIGHT_SHARE) / MOVES.size();
        for (MoveStudy.Move move : MOVES) {
            double from = LIGHT_SHARE + share * moves.size();
            moves.add(study(move, new PartialProgress(progress, from, from + share)));
        }
        Optional<SimmerPlace> simmer = SimmerSearch.best(SimmerSearch.inReach(SimmerSearch.places(moves), scenario))
                .map(p -> traced(p, new PartialProgress(progress, LAST_SHARE, BEST_SHARE)));
        return new PanResult(
                base,
                position(base, 0),
                moves,
                simmer,
                best(moves, new PartialProgress(progress, BEST_SHARE, 1)),
                PanIrradiation.direct(scenario, kitchen)
                        .absorbedBy(kitchen.vessel())
                        .total(),
                new PanResult.RunInfo(
                        base.run().rays(),
                        base.run().threads(),
                        base.run().traceSeconds(),
                        (System.nanoTime() - start) * 1e-9));
    }

    private SimmerPlace traced(SimmerPlace place, Progress progress) {
        double offset = place.position().offsetMetres();
        TraceOptions half = options.withRays(Math.max(MAP_RAYS, options.rays() / 2));
        TraceResult there = traceAt(scenario, place.move(), offset, half, progress);
        return new SimmerPlace(place.move(), place.stretch(), position(there, offset));
    }

    /** Where the pan gets most, in reach if any place is. The moves decide; the place itself is traced as the present one is. */
    private BestPlace best(List<PanMove> moves, Progress progress) {
        PanMove along = null;
        double offset = 0;
        double gain = Double.NEGATIVE_INFINITY;
        boolean anyInReach = moves.stream().anyMatch(move -> move.anyOf(x -> isInReach(scenario, move.move(), x)));
        for (PanMove move : moves) {
            OptionalDouble best = move.best(x -> !anyInReach || isInReach(scenario, move.move(), x));
            if (best.isPresent() && move.gainWatts(best.getAsDouble()) > gain) {
                along = move;
                offset = best.getAsDouble();
                gain = move.gainWatts(offset);
            }
        }
        TraceResult there = offset == 0 ? base : traceAt(scenario, along.move(), offset, options, progress);
        double[] zone = along.zone(offset, BestPlace.ZONE);
        return new BestPlace(along.move(), position(there, offset), zone[0], zone[1]);
    }

    private PanMove study(MoveStudy.Move move, Progress progress) {
        double[] clear = MoveRange.clear(scenario, casting.surface(), move);
        if (light.isEmpty()) {
            double[] grid = MoveRange.grid(clear, FEWER_POSITIONS - 1);
            return positionByPosition(move, grid, progress);
        }
        double[] range = MoveRange.worthwhile(scenario, move, clear, fewer);
        double[] grid = MoveRange.grid(range, POSITIONS - 1);
        double to = grid[grid.length - 1];
        MoveStudy.Curve curve =
                MoveStudy.run(scenario, move, grid[0], to, POSITIONS, forMove, new PartialProgress(progress, 0, 0.5));
        MoveStudy.Curve onGrid = new MoveStudy.Curve(
                move, grid, curve.shaded(), curve.underside(), curve.wall(), curve.lid(), curve.caught());
        return move(
                move,
                onGrid,
                HotSpotCurves.caught(base, light.get(), move, grid, new PartialProgress(progress, 0.5, 1)));
    }

    private PanMove positionByPosition(MoveStudy.Move move, double[] grid, Progress progress) {
        List<TraceResult> traced = new ArrayList<>();
        for (double offset : grid) {
            PartialProgress part = new PartialProgress(
                    progress, (double) traced.size() / grid.length, (traced.size() + 1.0) / grid.length);
            traced.add(offset == 0 ? base : traceAt(scenario, move, offset, forMove, part));
        }
        Function<Function<Ledger, Estimate>, List<Estimate>> line =
                figure -> traced.stream().map(t -> figure.apply(t.ledger())).toList();
        MoveStudy.Curve curve = new MoveStudy.Curve(
                move,
                grid,
                line.apply(Ledger::shaded),
                line.apply(Ledger::underside),
                line.apply(Ledger::wall),
                line.apply(Ledger::lid),
                line.apply(Ledger::caught));
        return move(move, curve, HotSpotCurves.of(grid, traced));
    }

    private PanMove move(MoveStudy.Move move, MoveStudy.Curve curve, HotSpotCurves spots) {
        return new PanMove(
                move,
                move.of(scenario.stand()),
                Arrays.copyOf(curve.offsets(), curve.offsets().length),
                new MoveLight(scenario, kitchen, curve, spots),
                levels,
                kitchen.vessel().levelArea(),
                (level, offset, there) -> likely.map(
                                doubts -> doubts.beginning(level, there, drawn -> moved(drawn, move, offset)))
                        .orElseGet(() -> levels.thresholdWatts(level, there)));
    }

    /** The pan as traced in one place, with the same figures that the trace itself answers. */
    private PanPosition position(TraceResult result, double offset) {
        ThermalPan vessel = kitchen.vessel();
        CaughtByFace faces = result.faces();
        HeatResult heat = result.heat().orElseThrow();
        double caught = result.ledger().caught().value();
        double middle =
                HotSpotCurves.middleFlux(result) * vessel.underside().absorptance() * faces.undersideAbsorptance();
        double evenness = Math.max(0, result.spot().evenness().value());
        return new PanPosition(
                offset,
                result.ledger().absorbed(),
                heat.absorbed(),
                heat.cookingPower(),
                heat.level(),
                result.spot().peakFlux(),
                HotSpotCurves.wallPeak(result),
                result.ledger().underside().value() / vessel.levelArea(),
                caught > 0 ? result.ledger().wall().value() / caught : 0,
                caught > 0 ? result.ledger().underside().value() / caught : 0,
                middle,
                evenness,
                FryingAssessment.read(middle, evenness, FryingThresholds.USUAL));
    }
}
