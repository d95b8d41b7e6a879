package simmerpoint.study.pan;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import simmerpoint.heat.BoilingOutcome;
import simmerpoint.heat.HeatLevel;
import simmerpoint.heat.HeatLevelRange;
import simmerpoint.scenario.CookingSetup;
import simmerpoint.setup.Stand;
import simmerpoint.study.trace.HeatResult;
import simmerpoint.study.trace.LikelyResult;
import simmerpoint.study.trace.MaximumFlux;
import simmerpoint.study.trace.TraceResult;

/**
 * Where the pan stands for what.
 *
 * @param base the scenario as it stands, traced
 * @param here the pan as it stands, from that trace
 * @param moves pull-back, slide, raise, in that order
 * @param simmer the recommended place for a simmer: the one with the least hot spot, of those at a height to cook at if
 *     there are any, traced anew there; empty if it simmers nowhere
 * @param best where it gets most
 * @param directWatts taken up of the sun's own light on lid and wall, W
 * @param run what differs from run to run
 */
public record PanResult(
        TraceResult base,
        PanPosition here,
        List<PanMove> moves,
        Optional<SimmerPlace> simmer,
        BestPlace best,
        double directWatts,
        RunInfo run) {
    /** Keeps its own list. */
    public PanResult {
        moves = List.copyOf(moves);
    }

    /**
     * What differs from run to run and is kept out of comparisons.
     *
     * @param rays of the trace and of each move
     * @param threads used
     * @param traceSeconds wall time of the one trace
     * @param moveSeconds wall time of the three moves
     */
    public record RunInfo(long rays, int threads, double traceSeconds, double moveSeconds) {}

    /** The same with what is likely, for a stand. */
    PanResult withLikely(Function<Stand, LikelyResult> likely) {
        Stand stand = base.scenario().stand();
        return new PanResult(
                base.withLikely(likely.apply(stand)),
                here,
                moves,
                simmer.map(place -> place.withLikely(
                        likely.apply(place.move().from(stand, place.position().offsetMetres())))),
                best.withLikely(
                        likely.apply(best.move().from(stand, best.position().offsetMetres()))),
                directWatts,
                run);
    }

    /** What is cooked in. */
    public CookingSetup cooking() {
        return base.scenario().cooking().orElseThrow();
    }

    /** What its water does where it stands. */
    public HeatResult heat() {
        return base.heat().orElseThrow();
    }

    /** When its water boils where it stands: likely, or by the pan's losses alone. */
    public BoilingOutcome boil() {
        return base.likely().flatMap(LikelyResult::boil).orElseGet(() -> heat().boil());
    }

    /** Its heat level where it stands: likely, or by the pan's losses alone. */
    public HeatLevelRange levelRange() {
        return base.likely().flatMap(LikelyResult::level).orElseGet(() -> heat().levelRange());
    }

    /** Height of the underside above the ground once the pan is moved, m. */
    public double height(MoveStudy.Move move, double offset) {
        return PanStudy.moved(base.scenario(), move, offset).panHeightMetres();
    }

    /** The flux that cautions go by, W/m²: on the pan at any position, or beside it where it stands. */
    public double cautionFlux() {
        double hottest = Math.max(MaximumFlux.of(base), here.hottestFlux());
        for (PanMove move : moves) {
            for (PanPosition position : move.positions()) {
                hottest = Math.max(hottest, position.hottestFlux());
            }
        }
        return hottest;
    }

    /**
     * Share of the mirror to leave open for a simmer where the pan stands: half way between the watts at which it begins
     * and those at which it boils. Empty if that is more than all of it or nothing at all.
     */
    public Optional<Double> openShareForSimmer() {
        double wanted = (heat().beginsLikely(HeatLevel.SIMMER) + heat().beginsLikely(HeatLevel.BOIL)) / 2;
        double open = (wanted - directWatts) / (here.absorbed().value() - directWatts);
        return open > 0 && open < 1 ? Optional.of(open) : Optional.empty();
    }
}
