package simmerpoint.answer.design;

import simmerpoint.answer.Section;
import simmerpoint.answer.SectionBuilder;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.LikelyWords;
import simmerpoint.study.design.DesignChoice;
import simmerpoint.study.design.DesignLimits;
import simmerpoint.study.design.DesignResult;

/** What to say where no dish within the limits does what is wanted: how far they go, and which of them is in the way. */
record DesignLimitWords(DesignResult result, FigureFormat figures) {
    Section section() {
        return said().build();
    }

    SectionBuilder said() {
        SectionBuilder out = Section.headed("No dish within the limits does it").say(first());
        result.loosened()
                .forEach((limit, dish) -> out.say("The " + name(limit) + " binds: without that limit "
                        + DesignAnswer.dish(dish, figures) + " would do it."));
        return out.sayIf(
                result.loosened().isEmpty(),
                "No single limit is in the way: widening any one of them alone is not enough."
                        + " Ask for less, use a better mirror, or widen several.");
    }

    private String first() {
        String wanted = "Wanted, of four in five such cookers: " + DesignAnswer.wanted(result.goal()) + ". ";
        if (result.bound().isEmpty()) {
            return wanted + "No dish at all can be built within the limits.";
        }
        DesignChoice most = result.bound().get();
        return wanted + "The most within the limits is "
                + LikelyWords.power(most.likely().power()) + ", from " + DesignAnswer.dish(most.candidate(), figures)
                + ".";
    }

    private static String name(DesignLimits.Limit limit) {
        return switch (limit) {
            case DIAMETER -> "largest diameter";
            case PANELS -> "number of panels, sectors or rings";
            case FOCAL_LENGTH -> "range of focal lengths";
            case SHEET -> "size of the sheet";
            case STOCK -> "size of what ribs and panels are cut from (build.sheet-width, build.sheet-length)";
            case PAN_HEIGHT -> "height of the pan";
            case COST -> "most that it may cost";
        };
    }
}
