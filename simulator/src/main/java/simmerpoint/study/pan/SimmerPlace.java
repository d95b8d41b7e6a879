package simmerpoint.study.pan;

import java.util.Optional;
import simmerpoint.study.trace.LikelyResult;

/**
 * A place for a simmer.
 *
 * @param move along what
 * @param stretch where it simmers
 * @param position the pan in the middle of that stretch
 * @param likely what is likely there over all doubts, if that was worked out
 */
public record SimmerPlace(
        MoveStudy.Move move, LevelStretch stretch, PanPosition position, Optional<LikelyResult> likely) {
    /** Without a look at doubts. */
    public SimmerPlace(MoveStudy.Move move, LevelStretch stretch, PanPosition position) {
        this(move, stretch, position, Optional.empty());
    }

    /** The same with what is likely there. */
    SimmerPlace withLikely(LikelyResult found) {
        return new SimmerPlace(move, stretch, position, Optional.of(found));
    }
}
