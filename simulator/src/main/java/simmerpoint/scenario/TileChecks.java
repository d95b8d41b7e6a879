package simmerpoint.scenario;

import simmerpoint.dish.Cut;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.MirrorSurfaces;
import simmerpoint.geometry.Direction;

/** Whether any whole tile fits into the dish: only laying them out tells. For scenarios whose keys are good otherwise. */
final class TileChecks {
    private static final String KEY = "dish.surface.tile";

    private TileChecks() {}

    static void check(DishPlan dish, Values values, Problems problems) {
        boolean tiles = dish.cut() instanceof Cut.SquareTiles || dish.cut() instanceof Cut.HexagonTiles;
        if (!tiles) {
            return;
        }
        try {
            MirrorSurfaces.of(dish, Direction.Z);
        } catch (IllegalArgumentException e) {
            String where = dish.hubMetres() > 0
                    ? "between the hub, " + values.get("dish.hub").typed() + " wide, and the rim of the dish, "
                    : "into the dish, ";
            problems.add(
                    values.line(KEY),
                    KEY,
                    "not one whole tile of " + values.get(KEY).typed() + " fits " + where
                            + values.get("dish.diameter").typed() + " wide; a tile must be smaller");
        }
    }
}
