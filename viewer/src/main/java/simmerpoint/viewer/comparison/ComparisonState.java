package simmerpoint.viewer.comparison;

import java.util.List;
import java.util.Optional;
import simmerpoint.drawing.map.FluxScale;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.paired.PairedTrace;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.live.LiveState;
import simmerpoint.viewer.live.PairState;

/**
 * Two designs and how far what is known of them has come.
 *
 * @param kept the kept one; empty if none is
 * @param keptAlone its light as it was traced alone
 * @param now the current one
 * @param live its quick answers
 * @param pair the newest pair, which may be of earlier designs
 */
public record ComparisonState(
        Optional<KeptDesign> kept,
        Optional<TraceResult> keptAlone,
        Optional<KeptDesign> now,
        Optional<LiveState> live,
        PairState pair) {
    /** Nothing is kept. */
    static final ComparisonState NOTHING_KEPT = new ComparisonState(
            Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), PairState.NOTHING_YET);

    /** Whether there is a kept design. */
    public boolean isKept() {
        return kept.isPresent();
    }

    /** Whether the pair is of these two. */
    boolean paired() {
        return kept.isPresent() && now.isPresent() && pair.isOf(scenario(kept), scenario(now));
    }

    /** Whether no more will come of these two: nothing is kept, they are paired, or they cannot be. */
    public boolean settled() {
        return !isKept() || paired() || (!pair.working() && pair.refusal().isPresent());
    }

    private static Scenario scenario(Optional<KeptDesign> design) {
        return design.orElseThrow().read().scenario();
    }

    /** The kept design's light. */
    Optional<TraceResult> keptResult() {
        boolean mine = kept.isPresent()
                && pair.kept()
                        .filter(p -> p.trace().scenario().equals(scenario(kept)))
                        .isPresent();
        return mine ? pair.kept().map(PairedTrace::trace) : keptAlone;
    }

    /** The light of the current one: of the pair, or as far as it has come. */
    Optional<TraceResult> nowResult() {
        return paired() ? pair.now().map(PairedTrace::trace) : live.flatMap(LiveState::result);
    }

    /** Whether the light shown is that of an earlier design. */
    boolean nowEarlier() {
        return !paired() && !live.map(LiveState::current).orElse(false);
    }

    /** Upper end of one scale for both, W/m². */
    double top() {
        double first = keptResult().map(FluxScale::top).orElse(0.0);
        return Math.max(first, nowResult().map(FluxScale::top).orElse(0.0));
    }

    /** The figures of the pair, if it is of these two. */
    Optional<PairFigures> figures() {
        return paired()
                ? Optional.of(new PairFigures(
                        kept.orElseThrow(),
                        now.orElseThrow(),
                        pair.kept().orElseThrow(),
                        pair.now().orElseThrow(),
                        pair.luck()))
                : Optional.empty();
    }

    /** What to call the kept design or the current one: its title if they differ in that, else what is changed. */
    String name(boolean ofKept, UnitSystem units) {
        String which = ofKept ? "Kept" : "At hand";
        if (kept.isEmpty() || now.isEmpty()) {
            return which;
        }
        String title = ofKept ? kept.get().title() : now.get().title();
        String other = ofKept ? now.get().title() : kept.get().title();
        if (!title.equals(other)) {
            return title.isEmpty() ? which : which + ": " + title;
        }
        String changed = PairFigures.changed(differing(units), ofKept);
        return changed.isEmpty() ? which : which + ": " + changed;
    }

    /** What is said first. */
    String sentence(UnitSystem units) {
        if (paired() && differing().isEmpty()) {
            return "Both are the same. Change something to see what it does.";
        }
        return figures().map(f -> f.sentence(units)).orElseGet(this::waiting);
    }

    private String waiting() {
        return pair.refusal()
                .or(() -> live.flatMap(LiveState::refusal))
                .orElse(
                        pair.working()
                                ? "Both are traced with the same samples \u2026"
                                : "Both will be traced with the same samples when you pause.");
    }

    /** The keys in which both differ, lengths and the like in those units. */
    List<PairFigures.Row> differing(UnitSystem units) {
        return differing().stream().map(row -> row.in(units)).toList();
    }

    /** The keys in which both differ, as typed. */
    List<PairFigures.Row> differing() {
        return kept.isPresent() && now.isPresent() ? PairFigures.differing(kept.get(), now.get()) : List.of();
    }
}
