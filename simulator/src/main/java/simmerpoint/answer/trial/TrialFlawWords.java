package simmerpoint.answer.trial;

import simmerpoint.answer.words.FigureFormat;
import simmerpoint.trial.fit.FlawLikelihood;
import simmerpoint.trial.fit.FlawStep.Way;
import simmerpoint.trial.fit.NextMeasurement;
import simmerpoint.trial.fit.TrialFlaw;
import simmerpoint.units.UnitSystem;

/**
 * Flaws that a trial may show, in a builder's words.
 *
 * @param figures in the reader's units
 */
record TrialFlawWords(FigureFormat figures) {
    private static final double MPH = 1609.344 / 3600;

    /** "the pan about 9 cm further out". */
    String sized(FlawLikelihood found) {
        double size = found.size();
        return switch (found.flaw()) {
            case SLOPE_ERROR -> "a rougher mirror (slope error some " + FigureFormat.milliradians(size) + " more)";
            case PANEL_TILT -> "panels glued askew (some " + FigureFormat.milliradians(size) + " more)";
            case SPRINGBACK -> "a flatter dish than planned (focal length some " + percent(size) + " longer)";
            case AIM -> "the dish aimed some " + FigureFormat.fixed(Math.toDegrees(size), 1) + "\u00b0 wrong";
            case REFLECTANCE -> "a dull or dusty mirror, or a pale pan (some " + percent(size) + " less light)";
            case PAN_PLACE -> "the pan some " + figures.length(size, 1) + " " + way(found.way());
            case LID -> "the lid off or ajar";
            case WIND -> "some " + wind(size) + " more wind";
        };
    }

    private static String way(Way way) {
        return switch (way) {
            case IN -> "nearer to the dish than the scenario says";
            case ASIDE -> "to the side";
            default -> "further out than the scenario says";
        };
    }

    private String wind(double metresPerSecond) {
        return figures.system() == UnitSystem.INCH
                ? FigureFormat.rounded(metresPerSecond / MPH, 1) + FigureFormat.NBSP + "mph"
                : FigureFormat.rounded(metresPerSecond, 1) + FigureFormat.NBSP + "m/s";
    }

    /** In a word or two. */
    static String plain(TrialFlaw flaw) {
        return switch (flaw) {
            case SLOPE_ERROR -> "rougher mirror";
            case PANEL_TILT -> "panels glued askew";
            case SPRINGBACK -> "dish flatter than planned";
            case AIM -> "aimed wrong";
            case REFLECTANCE -> "dull or dusty mirror, pale pan";
            case PAN_PLACE -> "pan out of place";
            case LID -> "lid off or ajar";
            case WIND -> "more wind";
        };
    }

    /** What to do next and what it would show. */
    String next(NextMeasurement next) {
        String shows = watts(next.firstExpects()) + " if it is \u201c" + plain(next.first())
                + "\u201d, " + watts(next.secondExpects()) + " if it is \u201c"
                + plain(next.second()) + "\u201d";
        String size = figures.length(next.size(), 1);
        return switch (next.kind()) {
            case PULL_BACK -> "the same with the pan " + size + " further out: " + shows;
            case PUSH_IN -> "the same with the pan " + size + " nearer to the dish: " + shows;
            case SMALLER_PAN -> "the same water in a pan " + figures.length(next.size(), 2) + " wide: " + shows;
            case LARGER_PAN -> "the same water in a pan " + figures.length(next.size(), 2) + " wide: " + shows;
            case MASK_RIM -> "the same with the outer " + size + " of the mirror covered all round: " + shows;
            case MASK_MIDDLE -> "the same with a round mask " + size + " wide over the middle of the mirror: " + shows;
            case MASK_UPPER, MASK_LOWER, MASK_RIGHT ->
                "the same with the " + next.kind().covered().word() + " half of the mirror covered: " + shows;
            case CARD ->
                "the spot on a card " + figures.length(next.size(), 2) + " from the middle of the dish: "
                        + figures.length(next.firstExpects(), 2) + " wide if it is \u201c" + plain(next.first())
                        + "\u201d, " + figures.length(next.secondExpects(), 2) + " if it is \u201c"
                        + plain(next.second())
                        + "\u201d";
            case COOLING -> "let the pan cool without sun, with a log: at 40\u00a0K above the air it loses " + shows;
        };
    }

    /** Two digits: what one further trial tells. */
    private static String watts(double watts) {
        return FigureFormat.rounded(watts, 2) + FigureFormat.NBSP + "W";
    }

    /** "40 %", to the nearest whole one. */
    static String percent(double share) {
        long whole = Math.round(100 * share);
        return (share > 0 && whole < 1 ? "below 1" : whole > 99 && share < 1 ? "above 99" : Long.toString(whole))
                + FigureFormat.NBSP + "%";
    }
}
