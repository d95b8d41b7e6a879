package simmerpoint.viewer.live;

import java.util.Optional;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.paired.GluingLuck;
import simmerpoint.study.paired.PairedTrace;

/**
 * How far two scenarios that are held against each other have come.
 *
 * @param kept the one; both traced with the same samples; empty before the first pair
 * @param now the other
 * @param luck of gluing both, if panels are glued askew
 * @param working whether a pair is being traced
 * @param done share of that work that is done, 0 to 1
 * @param refusal why there is none, in one sentence
 */
public record PairState(
        Optional<PairedTrace> kept,
        Optional<PairedTrace> now,
        Optional<GluingLuck> luck,
        boolean working,
        double done,
        Optional<String> refusal) {
    /** Before anything was asked. */
    public static final PairState NOTHING_YET =
            new PairState(Optional.empty(), Optional.empty(), Optional.empty(), false, 0, Optional.empty());

    /** Whether it is the pair of these two. */
    public boolean isOf(Scenario first, Scenario second) {
        return kept.filter(p -> p.trace().scenario().equals(first)).isPresent()
                && now.filter(p -> p.trace().scenario().equals(second)).isPresent();
    }

    PairState at(double share) {
        return new PairState(kept, now, luck, true, share, Optional.empty());
    }

    PairState atRest(Optional<String> why) {
        return new PairState(kept, now, luck, false, why.isEmpty() ? 1 : 0, why);
    }
}
