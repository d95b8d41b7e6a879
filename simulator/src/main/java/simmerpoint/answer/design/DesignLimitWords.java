package simmerpoint.answer.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import simmerpoint.answer.Item;
import simmerpoint.answer.Section;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.study.design.DesignChoice;
import simmerpoint.study.design.DesignLimits;
import simmerpoint.study.design.DesignResult;
import simmerpoint.study.design.DishCandidate;

/** What to say where no dish within the limits does what is wanted: how far they go, and which of them is in the way. */
final class DesignLimitWords {
    private final DesignResult result;
    private final FigureFormat figures;

    DesignLimitWords(DesignResult result, FigureFormat figures) {
        this.result = result;
        this.figures = figures;
    }

    Section section() {
        List<Item> items = new ArrayList<>();
        items.add(new Item.Sentence(first()));
        for (Map.Entry<DesignLimits.Limit, DishCandidate> each :
                result.loosened().entrySet()) {
            items.add(new Item.Sentence("The " + name(each.getKey()) + " binds: without that limit "
                    + DesignAnswer.dish(each.getValue(), figures) + " would do it."));
        }
        if (result.loosened().isEmpty()) {
            items.add(new Item.Sentence("No single limit is in the way: widening any one of them alone is not enough."
                    + " Ask for less, use a better mirror, or widen several."));
        }
        return new Section("No dish within the limits does it", items);
    }

    private String first() {
        String wanted = "Wanted: " + DesignAnswer.wanted(result.goal()) + ". ";
        if (result.bound().isEmpty()) {
            return wanted + "No dish at all can be built within the limits.";
        }
        DesignChoice most = result.bound().get();
        return wanted + "At most " + figures.watts(most.watts()) + " can be had within the limits, from "
                + DesignAnswer.dish(most.candidate(), figures) + ".";
    }

    private static String name(DesignLimits.Limit limit) {
        return switch (limit) {
            case DIAMETER -> "largest diameter";
            case PANELS -> "number of panels, sectors or rings";
            case FOCAL_LENGTH -> "range of focal lengths";
            case SHEET -> "size of the sheet";
            case PAN_HEIGHT -> "height of the pan";
        };
    }
}
