package simmerpoint.dish.shape;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.MirrorSurface;
import simmerpoint.dish.RibLayout;

/**
 * How the shape of a dish differs from its plan. Errors of the whole dish move the ribs; between these the sheet stays straight. Where
 * there are none, every place of the mirror moves; small tiles then bend with the dish, by less than the error over the tile's share of it.
 *
 * @param metres size of each error; those of nothing are left out
 */
public record ShapeErrors(Map<ShapeError, Double> metres) {
    /** The shape as planned. */
    public static final ShapeErrors NONE = new ShapeErrors(Map.of());

    /** Keeps its own copy. */
    public ShapeErrors {
        Map<ShapeError, Double> copy = new EnumMap<>(ShapeError.class);
        metres.forEach((error, size) -> {
            if (size != 0) {
                copy.put(error, size);
            }
        });
        metres = Collections.unmodifiableMap(copy);
    }

    /** Size of one of them, m. */
    public double of(ShapeError error) {
        return metres.getOrDefault(error, 0.0);
    }

    /** The same with one of another size, m. */
    public ShapeErrors with(ShapeError error, double size) {
        Map<ShapeError, Double> others = new EnumMap<>(ShapeError.class);
        others.putAll(metres);
        others.put(error, size);
        return new ShapeErrors(others);
    }

    /** Whether there is one. */
    public boolean any() {
        return !metres.isEmpty();
    }

    /** Whether one depends on how high the dish points. */
    public boolean byWeight() {
        return metres.keySet().stream().anyMatch(ShapeError::byWeight);
    }

    /**
     * The surface of a dish with these errors.
     *
     * @param plan the dish
     * @param planned its surface without them
     * @param elevation how high its axis points, rad
     */
    public MirrorSurface deform(DishPlan plan, MirrorSurface planned, double elevation) {
        return any() ? new DeformedSurface(deformation(plan, elevation), plan.hubMetres() / 2, planned) : planned;
    }

    /** What all of them do to a dish whose axis points so high, rad. */
    Deformation deformation(DishPlan plan, double elevation) {
        WeightDirection weight = WeightDirection.at(elevation);
        Deformation sheet = sum(ShapeError::isBetweenRibs, plan, weight);
        if (metres.keySet().stream().allMatch(ShapeError::isBetweenRibs)) {
            return sheet;
        }
        Deformation whole = sum(error -> !error.isBetweenRibs(), plan, weight);
        Optional<RibLayout> ribs = plan.cut().ribs(plan);
        return Deformation.sum(List.of(
                ribs.isPresent()
                        ? new RuledDeformation(
                                ribs.get(), RibHeights.of(whole, ribs.get().sectors()))
                        : whole,
                sheet));
    }

    private Deformation sum(Predicate<ShapeError> which, DishPlan plan, WeightDirection weight) {
        return Deformation.sum(metres.entrySet().stream()
                .filter(entry -> which.test(entry.getKey()))
                .map(entry -> entry.getKey().of(entry.getValue(), plan, weight))
                .toList());
    }
}
