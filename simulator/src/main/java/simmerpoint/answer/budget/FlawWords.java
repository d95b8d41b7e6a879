package simmerpoint.answer.budget;

import java.util.Optional;
import simmerpoint.answer.words.DishWords;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.dish.Cut;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.budget.Flaw;
import simmerpoint.study.budget.FlawSize;
import simmerpoint.study.budget.Flaws;

/**
 * Names of a scenario's flaws, with their size where one figure tells it.
 *
 * @param scenario whose flaws
 * @param figures in the reader's units
 */
public record FlawWords(Scenario scenario, FigureFormat figures) {
    /** The name alone: "slope error", "flat tiles", "slope error in zone rim". */
    public String name(Flaw flaw) {
        return what(flaw) + zone(flaw).map(zone -> " in " + zone).orElse("");
    }

    /** Name and size: "slope error 5.0 mrad", "slope error 5.0 mrad, zone rim". */
    public String sized(Flaw flaw) {
        return sizedAlone(flaw) + zone(flaw).map(zone -> ", " + zone).orElse("");
    }

    /** Name and size without the zone: "slope error 5.0 mrad". */
    public String sizedAlone(Flaw flaw) {
        String size = size(flaw);
        return what(flaw) + (size.isEmpty() ? "" : FigureFormat.NBSP + size);
    }

    /** The zone whose flaw it is: "zone rim". */
    public Optional<String> zone(Flaw flaw) {
        return flaw.zone().map(zone -> "zone " + zone);
    }

    /** The same for a sentence: "slope error of 5.0 mrad", "slope error of 5.0 mrad in zone rim". */
    public String told(Flaw flaw) {
        String size = size(flaw);
        return what(flaw)
                + (size.isEmpty() ? "" : " of " + size)
                + zone(flaw).map(zone -> " in " + zone).orElse("");
    }

    private String what(Flaw flaw) {
        return switch (flaw.name()) {
            case Flaws.FLAT_PANELS -> cut(flaw).shapeLossName();
            case Flaws.HUB_AND_GAPS -> DishWords.bare(scenario.dish());
            default -> flaw.name();
        };
    }

    private Cut cut(Flaw flaw) {
        return flaw.zone()
                .map(zone -> scenario.dish().zone(zone).plan())
                .orElse(scenario.dish())
                .cut();
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
