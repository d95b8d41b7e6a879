package simmerpoint.answer.words;

import simmerpoint.dish.CutTrait;
import simmerpoint.dish.DishPlan;

/** How to speak of the parts of a dish's outline that no mirror covers. */
public final class DishWords {
    private DishWords() {}

    /** A name for those parts. */
    public static String bare(DishPlan dish) {
        return dish.cut().has(CutTrait.FULL_RIM) ? "hub and gaps" : "hub, gaps, bare edge";
    }

    /** What happens to light there, after "that". */
    public static String bareLoss(DishPlan dish) {
        return dish.cut().has(CutTrait.FULL_RIM)
                ? "falls through the hub and the gaps between the panels"
                : "meets no mirror: hub, gaps and the edge that the panels leave bare";
    }
}
