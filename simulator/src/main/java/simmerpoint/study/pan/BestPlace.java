package simmerpoint.study.pan;

import java.util.Optional;
import simmerpoint.study.trace.LikelyResult;

/**
 * Where the pan gets most along one of its moves: the most cooking power of all places at which one can cook, or of all if there
 * are none.
 *
 * @param move along what
 * @param position the pan there, traced anew
 * @param fromMetres from here, from where the pan stands, the cooking power is within {@link #ZONE} of the best
 * @param toMetres up to here
 * @param likely what is likely there over all doubts, if that was worked out
 */
public record BestPlace(
        MoveStudy.Move move, PanPosition position, double fromMetres, double toMetres, Optional<LikelyResult> likely) {
    /** So little less than the best makes no difference to a cook, as a share (this project's choice). */
    public static final double ZONE = 0.01;

    /** So much more cooking power is worth a move, as a share (this project's choice). */
    public static final double WORTH = 0.03;

    /** Without a look at doubts. */
    BestPlace(MoveStudy.Move move, PanPosition position, double fromMetres, double toMetres) {
        this(move, position, fromMetres, toMetres, Optional.empty());
    }

    /** The same with what is likely there. */
    BestPlace withLikely(LikelyResult found) {
        return new BestPlace(move, position, fromMetres, toMetres, Optional.of(found));
    }

    /** Whether it beats {@code here} by so much that a move is worth it, and surely. */
    public boolean isWorthAMove(PanPosition here) {
        double gain = position.cookingPower().value() - here.cookingPower().value();
        double error = Math.hypot(
                position.cookingPower().standardError(), here.cookingPower().standardError());
        return gain > WORTH * Math.abs(here.cookingPower().value()) && gain > 2 * error;
    }
}
