package simmerpoint.answer.words;

import java.util.Optional;
import simmerpoint.scenario.GroundHeights;
import simmerpoint.study.trace.BetterHeight;

/**
 * Whether one can cook at a pan that stands so high: the same words for an hour of a day and for a place to move it to.
 *
 * @param ground between which heights one likes to cook
 * @param figures writes heights
 */
public record HeightWords(GroundHeights ground, FigureFormat figures) {
    /** "too high to cook at, above 130 cm". */
    public String tooHigh() {
        return "too high to cook at, above " + figures.length(ground.highestPanMetres(), 2);
    }

    /** "too low to cook at, below 40 cm". */
    public String tooLow() {
        return "too low to cook at, below " + figures.length(ground.lowestPanMetres(), 2);
    }

    /** Which of them holds of a pan whose underside stands so high, m; empty where one can cook. */
    public Optional<String> beyond(double panHeightMetres) {
        if (ground.allows(panHeightMetres)) {
            return Optional.empty();
        }
        return Optional.of(panHeightMetres > ground.highestPanMetres() ? tooHigh() : tooLow());
    }

    /** The same with the height in brackets. */
    public Optional<String> outOfReach(double panHeightMetres) {
        return beyond(panHeightMetres)
                .map(words -> words + " (" + figures.length(panHeightMetres, 2) + " above the ground)");
    }

    /** "4.0 cm lower it would get 20 % more". */
    public static String better(BetterHeight height, FigureFormat figures) {
        return figures.length(Math.abs(height.raisedMetres()), 2) + (height.raisedMetres() < 0 ? " lower" : " higher")
                + " it would get " + figures.percent(height.gainedShare()) + " more";
    }
}
