package simmerpoint.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import simmerpoint.dish.Cut;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.MirrorSurface;
import simmerpoint.dish.MirrorSurfaces;
import simmerpoint.dish.PanelSize;
import simmerpoint.dish.mesh.MeshFocus;
import simmerpoint.geometry.Direction;
import simmerpoint.units.QuantityWriter;
import simmerpoint.units.UnitSystem;

/** Dishes that can be built and yet hardly were meant, one sentence each. */
final class OddDish {
    private static final double WIDE_GAP = 0.5;
    private static final double BARE = 0.5;
    private static final double OFF_FOCUS = 0.1;
    private static final QuantityWriter METRIC = new QuantityWriter(UnitSystem.METRIC);

    private OddDish() {}

    static List<String> of(DishPlan dish) {
        List<String> said = new ArrayList<>();
        gap(dish).ifPresent(said::add);
        cover(dish).ifPresent(said::add);
        focus(dish).ifPresent(said::add);
        return said;
    }

    private static Optional<String> gap(DishPlan dish) {
        OptionalDouble narrowest = narrowest(dish);
        if (narrowest.isEmpty() || dish.gapMetres() < WIDE_GAP * narrowest.getAsDouble()) {
            return Optional.empty();
        }
        return Optional.of("dish.gap: gaps of " + METRIC.length(dish.gapMetres()) + " beside panels of "
                + METRIC.length(narrowest.getAsDouble()) + " let much of the light through; check the unit");
    }

    /** The tile, or the shorter side of the largest panel; m. */
    private static OptionalDouble narrowest(DishPlan dish) {
        if (dish.cut() instanceof Cut.SquareTiles tiles) {
            return OptionalDouble.of(tiles.tileMetres());
        }
        if (dish.cut() instanceof Cut.HexagonTiles tiles) {
            return OptionalDouble.of(tiles.tileMetres());
        }
        Optional<PanelSize> size = PanelSize.of(dish);
        return size.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(Math.min(size.get().rimMetres(), size.get().ribMetres()));
    }

    private static Optional<String> cover(DishPlan dish) {
        MirrorSurface surface = MirrorSurfaces.of(dish, Direction.Z);
        double share = surface.apertureArea() / surface.outlineArea();
        return share < BARE
                ? Optional.of("dish: mirrors cover only " + Math.round(100 * share)
                        + " % of its outline; the rest falls through hub and gaps")
                : Optional.empty();
    }

    private static Optional<String> focus(DishPlan dish) {
        if (!(dish.cut() instanceof Cut.FromFile drawn)) {
            return Optional.empty();
        }
        double found = MeshFocus.focalLength(drawn.mesh());
        boolean gathers = found > 0 && found < Double.POSITIVE_INFINITY;
        if (!gathers) {
            return Optional.of("dish.surface.file: the panels of the mesh do not gather light in front of them; is it"
                    + " upside down?");
        }
        return Math.abs(found / dish.focalLengthMetres() - 1) <= OFF_FOCUS
                ? Optional.empty()
                : Optional.of("dish.focal-length: the panels of the mesh focus about " + METRIC.length(found)
                        + " from their middle, not " + METRIC.length(dish.focalLengthMetres()));
    }
}
