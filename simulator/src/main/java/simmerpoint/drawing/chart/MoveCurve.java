package simmerpoint.drawing.chart;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import simmerpoint.study.pan.MoveStudy;
import simmerpoint.study.pan.PanMove;
import simmerpoint.study.pan.PanPosition;
import simmerpoint.study.pan.PanResult;

/**
 * The curves over one move of the pan, as points close enough to be drawn.
 *
 * @param result the study
 * @param move one of its moves
 * @param positions from the least offset to the largest, equally spaced
 * @param mostWatts upper end of the watts' scale, the same for all moves of the study, W
 * @param mostFlux upper end of the hottest spot's scale, the same for all moves, W/m²
 */
public record MoveCurve(
        PanResult result, PanMove move, List<PanPosition> positions, double mostWatts, double mostFlux) {
    private static final int FINE = 240;
    private static final double HEADROOM = 1.25;

    /** Keeps its own list. */
    public MoveCurve {
        positions = List.copyOf(positions);
    }

    /** The curves over one of the moves of {@code result}. */
    public static MoveCurve of(PanResult result, MoveStudy.Move kind) {
        PanMove move = result.moves().stream()
                .filter(m -> m.move() == kind)
                .findFirst()
                .orElseThrow();
        double step = (move.toMetres() - move.fromMetres()) / FINE;
        return new MoveCurve(
                result,
                move,
                IntStream.rangeClosed(0, FINE)
                        .mapToObj(k -> move.at(k == FINE ? move.toMetres() : move.fromMetres() + k * step))
                        .toList(),
                Math.max(1, HEADROOM * largest(result, p -> p.cookingPower().value())),
                Math.max(100, HEADROOM * largest(result, PanPosition::hottestFlux)));
    }

    private static double largest(PanResult result, ToDoubleFunction<PanPosition> figure) {
        double largest = figure.applyAsDouble(result.here());
        for (PanMove move : result.moves()) {
            for (PanPosition position : move.positions()) {
                largest = Math.max(largest, figure.applyAsDouble(position));
            }
        }
        return largest;
    }

    /** Least place on the way, m from the focus. */
    public double low() {
        return move.presentMetres() + move.fromMetres();
    }

    /** Largest place on the way, m from the focus. */
    public double high() {
        return move.presentMetres() + move.toMetres();
    }

    /** The pan at a place on the way, m from the focus; the nearest end beyond the ends. */
    public PanPosition at(double place) {
        double offset = Math.max(move.fromMetres(), Math.min(move.toMetres(), place - move.presentMetres()));
        return move.at(offset);
    }
}
