package simmerpoint.answer;

import simmerpoint.dish.Cut;
import simmerpoint.dish.DishPlan;

/** How to speak of the parts of a dish's outline that no mirror covers. */
final class DishWords {
    private DishWords() {}

    /** Whether panels of this cut leave part of the outline's edge bare, since they do not follow it. */
    private static boolean hasBareEdge(DishPlan dish) {
        Cut cut = dish.cut();
        return cut instanceof Cut.SquareTiles || cut instanceof Cut.HexagonTiles || cut instanceof Cut.FromFile;
    }

    /** A name for those parts. */
    static String bare(DishPlan dish) {
        return hasBareEdge(dish) ? "hub, gaps, bare edge" : "hub and gaps";
    }

    /** What happens to light there, after "that". */
    static String bareLoss(DishPlan dish) {
        return hasBareEdge(dish)
                ? "meets no mirror: hub, gaps and the edge that the panels leave bare"
                : "falls through the hub and the gaps between the panels";
    }
}
