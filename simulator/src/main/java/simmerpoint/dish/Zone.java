package simmerpoint.dish;

import java.util.Optional;
import java.util.function.UnaryOperator;
import simmerpoint.dish.mirror.Mirror;

/**
 * A part of a dish with a cut of its own, and perhaps a mirror of its own.
 *
 * @param name as the scenario calls it
 * @param plan its ring of the paraboloid: hub and diameter are its inner and outer diameter
 * @param mirror what covers it; empty for the mirror of the dish
 */
public record Zone(String name, DishPlan plan, Optional<Mirror> mirror) {
    /** The same with another mirror, if it has one of its own. */
    public Zone withMirror(UnaryOperator<Mirror> change) {
        return new Zone(name, plan, mirror.map(change));
    }

    /** The same with a change to its mirror: its own, or {@code usual} where it has none, which becomes its own if it changes. */
    public Zone withMirror(Mirror usual, UnaryOperator<Mirror> change) {
        Mirror now = mirror.orElse(usual);
        Mirror changed = change.apply(now);
        return changed.equals(now) ? this : new Zone(name, plan, Optional.of(changed));
    }

    /** The same with wider slits between its panels, m. */
    public Zone withWiderGaps(double metres) {
        return withPlan(plan.withWiderGaps(metres));
    }

    /** The same cut otherwise. */
    public Zone withPlan(DishPlan other) {
        return new Zone(name, other, mirror);
    }
}
