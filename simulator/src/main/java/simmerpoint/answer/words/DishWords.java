package simmerpoint.answer.words;

import simmerpoint.dish.CutTrait;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.built.Mask;
import simmerpoint.scenario.Scenario;

/** How to speak of the parts of a dish's outline that no mirror covers. */
public final class DishWords {
    private DishWords() {}

    /** A name for those parts. */
    public static String bare(DishPlan dish) {
        return dish.cut().has(CutTrait.FULL_RIM) ? "hub and gaps" : "hub, gaps, bare edge";
    }

    /** The same, with the mask if there is one. */
    public static String bare(Scenario scenario) {
        return bare(scenario.dish()) + (scenario.mask().isThere() ? ", mask" : "");
    }

    /** "the lower half", "the outer 15 cm", "the middle 40 cm": what a mask covers. */
    public static String masked(Mask mask, FigureFormat figures) {
        return switch (mask.part()) {
            case NONE -> "nothing";
            case MIDDLE -> "the middle " + figures.length(mask.widthMetres());
            case RIM -> "the outer " + figures.length(mask.widthMetres());
            default -> "the " + mask.part().word() + " half";
        };
    }

    /** What happens to light there, after "that". */
    public static String bareLoss(DishPlan dish) {
        return dish.cut().has(CutTrait.FULL_RIM)
                ? "falls through the hub and the gaps between the panels"
                : "meets no mirror: hub, gaps and the edge that the panels leave bare";
    }
}
