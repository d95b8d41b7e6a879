package simmerpoint.answer.words;

import java.util.Comparator;
import java.util.List;
import simmerpoint.answer.Columns;
import simmerpoint.answer.Section;
import simmerpoint.dish.CutTrait;
import simmerpoint.dish.DishPlan;
import simmerpoint.study.build.ShapeTolerance;
import simmerpoint.units.UnitSystem;

/**
 * How true a dish must be, in millimetres.
 *
 * @param dish the dish
 * @param figures in the reader's units
 */
public record ShapeToleranceWords(DishPlan dish, FigureFormat figures) {
    /** What heads them. */
    public static final String HEADING = "How true it must be";

    private static final int FINEST = 3;
    private static final String SHARE = FigureFormat.rounded(100 * ShapeTolerance.LOSS, 1) + FigureFormat.NBSP + "%";

    /** All of them in a table. */
    public Section section(List<ShapeTolerance> tolerances) {
        return section(HEADING, tolerances);
    }

    /** The same under another heading. */
    public Section section(String heading, List<ShapeTolerance> tolerances) {
        return Section.headed(heading)
                .say("Each of these alone costs " + SHARE
                        + " of the watts while all else stays where it stands; what several cost adds up.")
                .add(Columns.<ShapeTolerance>none()
                        .with("what is off", this::what)
                        .with("by", this::size)
                        .table(tolerances))
                .say(measuring(tolerances))
                .build();
    }

    /** The finest of them in one sentence. */
    public String sentence(List<ShapeTolerance> tolerances) {
        List<String> finest = tolerances.stream()
                .filter(tolerance -> !tolerance.isMore())
                .sorted(Comparator.comparingDouble(ShapeTolerance::metres))
                .limit(FINEST)
                .map(tolerance -> what(tolerance) + " by " + size(tolerance))
                .toList();
        return finest.isEmpty()
                ? ""
                : "Each of these would cost another " + SHARE + ": " + String.join(", ", finest) + ".";
    }

    private String what(ShapeTolerance tolerance) {
        return switch (tolerance.place()) {
            case SHEET_HANGING -> "sheet hanging between ribs";
            case SHEET_BULGING -> "sheet bulging between ribs";
            case DEPTH -> "dish too shallow";
            case TWIST -> "rim twisted";
            case RIM -> "rim pulled in";
            case PANEL_SIDE -> piece() + " askew over " + figures.length(tolerance.span(), 2);
            case WAVES -> "waves over " + figures.length(tolerance.span(), 2);
        };
    }

    private String piece() {
        return dish.cut().has(CutTrait.RIBS) ? "panel" : "tile";
    }

    private String size(ShapeTolerance tolerance) {
        boolean random = switch (tolerance.place()) {
            case PANEL_SIDE, WAVES -> true;
            default -> false;
        };
        return small(tolerance.metres()) + (random ? " either way" : "") + (tolerance.isMore() ? " or more" : "");
    }

    private String small(double metres) {
        return figures.system() == UnitSystem.METRIC
                ? FigureFormat.rounded(1000 * metres, 2) + FigureFormat.NBSP + "mm"
                : figures.length(metres, 2);
    }

    private String measuring(List<ShapeTolerance> tolerances) {
        boolean sheet = tolerances.stream().anyMatch(t -> t.place() == ShapeTolerance.Place.SHEET_HANGING);
        boolean whole = tolerances.stream().anyMatch(t -> t.place() == ShapeTolerance.Place.TWIST);
        return (sheet
                        ? "Sheet: in all panels alike, midway between two ribs at the rim, hanging with the dish on its back, bulging "
                                + "towards the light. "
                        : "")
                + (whole
                        ? "Shallow: in the middle, below a straight edge across the rim. Twisted: two corners of the rim too high, two "
                                + "too low. Pulled in: all round, nearer to the axis. "
                        : "")
                + "Either way: at random, one place in twenty may be worse.";
    }
}
