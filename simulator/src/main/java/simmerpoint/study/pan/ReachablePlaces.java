package simmerpoint.study.pan;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.pan.MoveStudy.Move;

/**
 * How high the pan stands once it is moved, and what is to be had at heights at which one can cook.
 *
 * @param result whose moves
 */
public record ReachablePlaces(PanResult result) {
    private static final int FINE = 400;

    private Scenario scenario() {
        return result.base().scenario();
    }

    /** Height of the underside above the ground once the pan is moved, m. */
    public double height(Move move, double offset) {
        return scenario().withStand(move.from(scenario().stand(), offset)).panHeightMetres();
    }

    /**
     * A place along one move.
     *
     * @param along the move
     * @param position the pan there
     */
    public record Place(PanMove along, PanPosition position) {
        private double watts() {
            return position.absorbed().value();
        }
    }

    /** Where the pan takes up most of all places at which one can cook; if there are none, of all. */
    public Place hottest() {
        return result.moves().stream()
                .flatMap(move -> hottest(move).stream())
                .max(Comparator.comparingDouble(Place::watts))
                .orElseGet(() ->
                        new Place(result.hottestMove(), result.hottestMove().hottest()));
    }

    /** Heights go evenly along a move. */
    private Optional<Place> hottest(PanMove move) {
        double from = height(move.move(), move.fromMetres());
        double to = height(move.move(), move.toMetres());
        Stream<PanPosition> inReach = IntStream.rangeClosed(0, FINE)
                .filter(k -> scenario().heights().allows(from + k * (to - from) / FINE))
                .mapToObj(k -> move.at(move.fromMetres() + k * (move.toMetres() - move.fromMetres()) / FINE));
        return inReach.map(position -> new Place(move, position)).max(Comparator.comparingDouble(Place::watts));
    }
}
