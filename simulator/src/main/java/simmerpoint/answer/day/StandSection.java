package simmerpoint.answer.day;

import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;
import simmerpoint.answer.Columns;
import simmerpoint.answer.Item;
import simmerpoint.answer.Section;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.HeightWords;
import simmerpoint.answer.words.SkyWords;
import simmerpoint.answer.words.TimeWords;
import simmerpoint.scenario.GroundHeights;
import simmerpoint.setup.Aim;
import simmerpoint.setup.FocusTravel;
import simmerpoint.study.aim.AimTolerance;
import simmerpoint.study.day.DayHour;
import simmerpoint.study.day.DayResult;
import simmerpoint.units.UnitSystem;

/**
 * Where pan, dish and tripod stand through the day, how often to aim, and what will not go.
 *
 * @param result whose hours
 * @param figures in the reader's units
 * @param aimHint ends a sentence that says who tells what other times between two aimings cost
 */
record StandSection(DayResult result, FigureFormat figures, String aimHint) {

    Section section() {
        return Section.headed("How it stands")
                .caution(touching())
                .caution(tooHigh())
                .caution(tooLow())
                .caution(legs())
                .add(table())
                .say(walking())
                .build();
    }

    private boolean carried() {
        return result.scenario().aim().panCarriedBy() == Aim.PanCarrier.DISH;
    }

    private Item table() {
        return Columns.<DayHour>none()
                .with("time", hour -> TimeWords.clock(hour.time()))
                .with("dish\ntilted", HourWords::elevation)
                .with("pan above\nground", hour -> inColumn(hour.stand().panHeightMetres(), 0))
                .with("mirror above\nground", hour -> inColumn(hour.stand().clearanceMetres(), 0))
                .with("pan to\ntripod", hour -> inColumn(hour.stand().distanceMetres(), 0))
                .with("aim\nagain", hour -> walk(hour, walk -> SkyWords.minutes(walk.minutes())))
                .withIf(!carried(), "then\nmove", hour -> walk(hour, walk -> inColumn(walk.levelMetres(), 1)))
                .withIf(!carried(), "pan up\nor down", hour -> walk(hour, this::rise))
                .table(result.shown());
    }

    private static String walk(DayHour hour, Function<FocusTravel, String> words) {
        return hour.walk().map(words).orElse("");
    }

    private String rise(FocusTravel walk) {
        return (walk.riseMetres() > 0 ? "+" : "") + inColumn(walk.riseMetres(), 1);
    }

    /** A length in one unit all down its column: cm or inches. */
    private String inColumn(double metres, int decimals) {
        return switch (figures.system()) {
            case METRIC -> FigureFormat.fixed(100 * metres, decimals) + FigureFormat.NBSP + "cm";
            case INCH -> FigureFormat.fixed(metres / UnitSystem.INCH.shortUnitMetres(), 1) + FigureFormat.NBSP + "in";
        };
    }

    private String walking() {
        String tilt =
                "The dish's axis is tilted up from level as far as the sun stands high; the mirror's height above ground "
                        + "is that of its lowest point, without frame. ";
        String often = "Aim again when "
                + figures.percent(AimTolerance.USUAL_LOSS)
                + " of what a fresh aim gives is lost; what other times cost, "
                + aimHint + " ";
        Optional<FocusTravel> walk =
                result.shown().stream().flatMap(hour -> hour.walk().stream()).findFirst();
        if (carried() || walk.isEmpty()) {
            return tilt + often + (carried() ? "The dish carries the pan, so nothing else is moved." : "");
        }
        return tilt + often + "The pan has its own stand: at each new aim the focus moves off it, by "
                + figures.length(walk.get().focusMetres(), 2) + " at first, "
                + "the distance from mount to focus times the sun's angle. Then move tripod or pan over the ground as "
                + "far as the table says, and bring the pan up or down.";
    }

    /** Warns of hours in which the dish is in the ground. */
    Optional<String> touching() {
        return Optional.of(HourWords.when(result, result.touching()))
                .filter(when -> !when.isEmpty())
                .map(when -> "The dish touches the ground " + when + "; those hours are not counted. Its mount, now at "
                        + figures.length(ground().tripodHeightMetres(), 2) + ", would have to stand higher than "
                        + figures.length(
                                result.curve().stream()
                                        .mapToDouble(h -> h.stand().leastMountMetres())
                                        .max()
                                        .orElse(Double.NaN),
                                2)
                        + ".");
    }

    /** Warns of a pan out of reach. */
    Optional<String> tooHigh() {
        return warning(
                hour -> hour.stand().panHeightMetres() > ground().highestPanMetres(),
                when -> "The pan stands " + heights().tooHigh() + ", at " + when + " (up to "
                        + figures.length(worst(h -> h.stand().panHeightMetres()), 2) + ").");
    }

    private Optional<String> tooLow() {
        return warning(
                hour -> hour.stand().panHeightMetres() < ground().lowestPanMetres(),
                when -> "The pan stands " + heights().tooLow() + ", at " + when + " (down to "
                        + figures.length(-worst(h -> -h.stand().panHeightMetres()), 2) + ").");
    }

    private Optional<String> legs() {
        return warning(
                hour -> hour.stand().legInBeam(),
                when -> "A leg of the tripod that points towards the sun and leans more than "
                        + figures.degrees(-worst(h -> -h.stand().legLeanRadians()))
                        + " from upright stands in the mirror's light at " + when
                        + ": turn a gap between two legs towards the sun.");
    }

    /** A sentence about the hours for which {@code is} holds; empty if there are none. */
    private Optional<String> warning(Predicate<DayHour> is, UnaryOperator<String> sentence) {
        return Optional.of(HourWords.when(result.shown(), is))
                .filter(when -> !when.isEmpty())
                .map(sentence);
    }

    private HeightWords heights() {
        return new HeightWords(ground(), figures);
    }

    private GroundHeights ground() {
        return result.scenario().heights();
    }

    private double worst(ToDoubleFunction<DayHour> what) {
        return result.shown().stream().mapToDouble(what).max().orElse(Double.NaN);
    }
}
