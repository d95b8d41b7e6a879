package simmerpoint.answer.budget;

import simmerpoint.answer.words.DishWords;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.budget.Flaw;
import simmerpoint.study.budget.FlawSize;

/**
 * Names of a scenario's flaws, with their size where one figure tells it.
 *
 * @param scenario whose flaws
 * @param figures in the reader's units
 */
public record FlawWords(Scenario scenario, FigureFormat figures) {
    /** The name alone: "slope error", "flat tiles". */
    public String name(Flaw flaw) {
        return switch (flaw.key()) {
            case "flat-panels" -> scenario.dish().cut().shapeLossName();
            case "hub-and-gaps" -> DishWords.bare(scenario.dish());
            default -> flaw.name();
        };
    }

    /** Name and size: "slope error 5.0 mrad". */
    public String sized(Flaw flaw) {
        String size = size(flaw);
        return name(flaw) + (size.isEmpty() ? "" : FigureFormat.NBSP + size);
    }

    /** The same for a sentence: "slope error of 5.0 mrad". */
    public String told(Flaw flaw) {
        String size = size(flaw);
        return name(flaw) + (size.isEmpty() ? "" : " of " + size);
    }

    private String size(Flaw flaw) {
        return flaw.size().apply(scenario).map(this::written).orElse("");
    }

    private String written(FlawSize size) {
        return switch (size.kind()) {
            case DEVIATION -> FigureFormat.milliradians(size.value());
            case SKY_ANGLE -> FigureFormat.rounded(Math.toDegrees(size.value()), 2) + "\u00b0";
            case SHARE -> figures.percent(size.value());
            case LENGTH -> figures.length(size.value(), 2);
        };
    }
}
