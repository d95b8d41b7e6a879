package simmerpoint.answer.day;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import simmerpoint.answer.Item;
import simmerpoint.answer.Section;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.HeightWords;
import simmerpoint.answer.words.TimeWords;
import simmerpoint.scenario.GroundHeights;
import simmerpoint.setup.Aim;
import simmerpoint.setup.FocusTravel;
import simmerpoint.setup.StandGeometry;
import simmerpoint.study.day.DayHour;
import simmerpoint.study.day.DayResult;
import simmerpoint.units.UnitSystem;

/** Where pan, dish and tripod stand through the day, how often to aim, and what will not go. */
final class StandSection {

    private final DayResult result;
    private final FigureFormat figures;
    private final List<DayHour> hours;
    private final boolean carried;

    private final String aimHint;

    private StandSection(DayResult result, FigureFormat figures, String aimHint) {
        this.result = result;
        this.aimHint = aimHint;
        this.figures = figures;
        hours = result.hours().isEmpty() ? result.curve() : result.hours();
        carried = result.scenario().aim().panCarriedBy() == Aim.PanCarrier.DISH;
    }

    /** The section; {@code aimHint} ends a sentence that says who tells what other times between two aimings cost. */
    static Section of(DayResult result, FigureFormat figures, String aimHint) {
        StandSection section = new StandSection(result, figures, aimHint);
        List<Item> items = new ArrayList<>();
        section.warnings().forEach(text -> items.add(new Item.Caution(text)));
        items.add(section.table());
        items.add(new Item.Sentence(section.walking()));
        return new Section("How it stands", items);
    }

    private Item table() {
        List<String> heads = new ArrayList<>(List.of(
                "time", "dish\ntilted", "pan above\nground", "mirror above\nground", "pan to\ntripod", "aim\nevery"));
        if (!carried) {
            heads.addAll(List.of("then\nmove", "pan up\nor down"));
        }
        return new Item.Table(heads, hours.stream().map(this::row).toList());
    }

    private List<String> row(DayHour hour) {
        StandGeometry stand = hour.stand();
        FocusTravel walk = hour.walk();
        List<String> row = new ArrayList<>(List.of(
                TimeWords.clock(hour.time()),
                HourWords.elevation(hour),
                inColumn(stand.panHeightMetres(), 0),
                inColumn(stand.clearanceMetres(), 0),
                inColumn(stand.distanceMetres(), 0),
                FigureFormat.fixed(walk.minutes(), 0) + FigureFormat.NBSP + "min"));
        if (!carried) {
            row.add(inColumn(walk.levelMetres(), 1));
            row.add((walk.riseMetres() > 0 ? "+" : "") + inColumn(walk.riseMetres(), 1));
        }
        return row;
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
        String often =
                "Aim again when the spot has walked a quarter of the pan's radius; how much heat other intervals cost, "
                        + aimHint + " ";
        if (carried) {
            return tilt + often + "The dish carries the pan, so nothing else is moved.";
        }
        FocusTravel walk = hours.get(0).walk();
        return tilt + often + "The pan has its own stand: at each new aiming the focus walks off it by "
                + figures.length(walk.focusMetres(), 2)
                + ", the distance from mount to focus times the sun's angle. Then move tripod or pan over the ground as "
                + "far as the table says, and bring the pan up or down.";
    }

    private List<String> warnings() {
        List<String> warnings = new ArrayList<>();
        touching(warnings);
        heights(warnings);
        legs(warnings);
        return warnings;
    }

    private void touching(List<String> warnings) {
        String when = HourWords.when(hours, h -> h.stand().touchesGround());
        if (!when.isEmpty()) {
            warnings.add("The dish touches the ground at " + when + ": its mount, now at "
                    + figures.length(ground().tripodHeightMetres(), 2) + ", would have to stand higher than "
                    + figures.length(worst(h -> h.stand().leastMountMetres()), 2) + ".");
        }
    }

    private void heights(List<String> warnings) {
        HeightWords words = new HeightWords(ground(), figures);
        String high = HourWords.when(hours, h -> h.stand().panHeightMetres() > ground().highestPanMetres());
        if (!high.isEmpty()) {
            warnings.add("The pan stands " + words.tooHigh() + ", at " + high + " (up to "
                    + figures.length(worst(h -> h.stand().panHeightMetres()), 2) + ").");
        }
        String low = HourWords.when(hours, h -> h.stand().panHeightMetres() < ground().lowestPanMetres());
        if (!low.isEmpty()) {
            warnings.add("The pan stands " + words.tooLow() + ", at " + low + " (down to "
                    + figures.length(-worst(h -> -h.stand().panHeightMetres()), 2) + ").");
        }
    }

    private void legs(List<String> warnings) {
        String when = HourWords.when(hours, h -> h.stand().legInBeam());
        if (!when.isEmpty()) {
            double lean = -worst(h -> -h.stand().legLeanRadians());
            warnings.add("A leg of the tripod that points towards the sun and leans more than " + figures.degrees(lean)
                    + " from upright stands in the mirror's light at " + when
                    + ": turn a gap between two legs towards the sun.");
        }
    }

    private GroundHeights ground() {
        return result.scenario().heights();
    }

    private double worst(ToDoubleFunction<DayHour> what) {
        return hours.stream()
                .max(Comparator.comparingDouble(what))
                .map(what::applyAsDouble)
                .orElse(Double.NaN);
    }
}
