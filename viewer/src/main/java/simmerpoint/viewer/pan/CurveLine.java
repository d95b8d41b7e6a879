package simmerpoint.viewer.pan;

import java.util.stream.IntStream;
import simmerpoint.study.pan.MoveStudy;
import simmerpoint.study.pan.PanMove;
import simmerpoint.study.pan.PanPosition;
import simmerpoint.study.pan.PanResult;

/**
 * The curves over the pull-back, as points close enough to be drawn.
 *
 * @param result the study
 * @param move its pull-back
 * @param positions from the least to the largest, equally spaced
 */
record CurveLine(PanResult result, PanMove move, java.util.List<PanPosition> positions) {
    private static final int FINE = 240;

    /** Keeps its own list. */
    CurveLine {
        positions = java.util.List.copyOf(positions);
    }

    static CurveLine of(PanResult result) {
        PanMove move = result.moves().stream()
                .filter(m -> m.move() == MoveStudy.Move.PULL_BACK)
                .findFirst()
                .orElseThrow();
        double step = (move.toMetres() - move.fromMetres()) / FINE;
        return new CurveLine(
                result,
                move,
                IntStream.rangeClosed(0, FINE)
                        .mapToObj(k -> move.at(k == FINE ? move.toMetres() : move.fromMetres() + k * step))
                        .toList());
    }

    /** Least pull-back, m from the focus. */
    double low() {
        return move.presentMetres() + move.fromMetres();
    }

    /** Largest pull-back, m from the focus. */
    double high() {
        return move.presentMetres() + move.toMetres();
    }

    /** The pan at a pull-back, the nearest end beyond the ends. */
    PanPosition at(double pullBack) {
        double offset = Math.max(move.fromMetres(), Math.min(move.toMetres(), pullBack - move.presentMetres()));
        return move.at(offset);
    }
}
