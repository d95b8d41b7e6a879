package simmerpoint.answer.cut;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import simmerpoint.answer.Columns;
import simmerpoint.answer.Section;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.study.build.DepthTolerance;
import simmerpoint.units.SawLength;
import simmerpoint.units.UnitSystem;
import simmerpoint.workshop.BuildCheck;
import simmerpoint.workshop.CutPlan;
import simmerpoint.workshop.EdgeBevel;
import simmerpoint.workshop.RibShape;
import simmerpoint.workshop.StringRule;
import simmerpoint.workshop.ThroughRibs;

/**
 * How ribs and panels are shaped, how to draw the curve and how to check it.
 *
 * @param plan the dish
 * @param units for lengths
 */
record ShapeSections(CutPlan plan, UnitSystem units) {
    private static final String CARD = "A card with the ribs\u2019 curve, to lay in, is among the patterns.";

    Section ribs(RibShape rib) {
        return Section.headed("The ribs' edge")
                .say("Measured from the dish's middle: out along the level, and up from there to the edge. Ribs end "
                        + saw(rib.innerEnd()) + " from the middle, where they meet side by side; the stock is "
                        + saw(rib.stock().belowCurve()) + " high below the middle of the curve.")
                .add(Columns.<Double>none()
                        .with("out", r -> saw(r))
                        .with("up", r -> saw(rib.height(r)))
                        .table(radii(rib)))
                .sayIf(
                        !rib.ribs().curved(),
                        "The edge is straight between the rings' borders, which are marked on the pattern.")
                .sayIf(rib.lengths().size() > 1, lengths(rib))
                .sayIf(
                        rib.lengths().size() > 1 && plan.throughRibs().isPresent(),
                        "Ribs that run through the middle are drawn as long as the longest; cut each off where the rim is.")
                .say(plan.throughRibs().map(this::through))
                .build();
    }

    /** Which rib is how long. */
    private String lengths(RibShape rib) {
        return "Ribs are as long as the rim allows: "
                + rib.lengths().stream()
                        .map(length -> rib.letter(length) + " to " + saw(length) + " from the middle ("
                                + rib.ofLength(length).stream()
                                        .map(String::valueOf)
                                        .collect(Collectors.joining(", "))
                                + ")")
                        .collect(Collectors.joining("; "))
                + ". Rib 1 points to the upper edge, the others follow anticlockwise as seen from the sun.";
    }

    private String through(ThroughRibs through) {
        if (!through.cross()) {
            return "One rib runs through the middle from rim to rim; the others end against it.";
        }
        return "Two ribs run through the middle from rim to rim and cross at "
                + degrees(OptionalDouble.of(through.angle()))
                + " in a half-lap: a slot " + thin(through.slotWidth()) + " wide and " + saw(through.slotDepth())
                + " deep, from above in one and from below in the other. The other ribs end where they meet them.";
    }

    /** Of a slot, which must fit the sheet: tenths of a millimetre. */
    private String thin(double metres) {
        return units == UnitSystem.METRIC ? new FigureFormat(units).length(metres, 2) : saw(metres);
    }

    /** A dozen round distances and the rim. */
    private List<Double> radii(RibShape rib) {
        double step = units == UnitSystem.METRIC ? 0.05 : 2 * units.shortUnitMetres();
        if (!rib.ribs().curved()) {
            return Arrays.stream(rib.ribs().borders()).boxed().toList();
        }
        List<Double> all = new ArrayList<>();
        for (double r = step * Math.ceil(rib.hub() / step); r < rib.rim() - step / 4; r += step) {
            all.add(r);
        }
        all.add(rib.rim());
        return all;
    }

    Section bevels() {
        return Section.headed("The panels\u2019 edges")
                .say("Panels meet at an angle. Thick ones meet without a slit if their edges are bevelled by:")
                .add(Columns.<EdgeBevel>none()
                        .with("piece", EdgeBevel::piece)
                        .with("sides", bevel -> degrees(bevel.sides()))
                        .with("towards the middle", bevel -> degrees(bevel.inwards()))
                        .with("towards the rim", bevel -> degrees(bevel.outwards()))
                        .table(plan.bevels()))
                .build();
    }

    private static String degrees(OptionalDouble radians) {
        return radians.isPresent() ? FigureFormat.fixed(Math.toDegrees(radians.getAsDouble()), 1) + "\u00b0" : "\u2013";
    }

    Section string(StringRule s) {
        return Section.headed("Drawing the curve with a string")
                .say("Draw a straight line: the axis. Drive a pin into it " + saw(s.focus())
                        + " above the middle of the dish. Fix a straight bar square to the axis " + saw(s.bar())
                        + " above the middle. Take a string " + saw(s.string())
                        + " long. Fix one end to the pin, let the other slide along the bar, and keep that part of the string square to the "
                        + "bar: a pencil that holds the string tight against a square draws the curve.")
                .say("To check: the curve is " + saw(s.depth()) + " high at the rim, and " + saw(s.halfHeight())
                        + " at half that distance, " + saw(s.halfRadius()) + " from the middle.")
                .build();
    }

    Section check(BuildCheck check) {
        if (!check.acrossLongest()) {
            return Section.headed("Checking the build")
                    .say(new CheckWords(check, units).tips()
                            + " The longest ribs have none as long opposite them: no straight edge lies across the rim, and"
                            + " depths below it are left out.")
                    .say(CARD)
                    .build();
        }
        CheckWords words = new CheckWords(check, units);
        return Section.headed("Checking the build")
                .say(words.tips() + " " + words.straightEdge() + " and measure down to the mirror:")
                .add(Columns.<BuildCheck.Depth>none()
                        .with("from the middle", d -> saw(d.radius()))
                        .with("depth", d -> saw(d.depth()))
                        .withIf(
                                hasTolerances(),
                                "within",
                                d -> plan.tolerance(d.radius())
                                        .map(t -> ToleranceWords.of(t, units))
                                        .orElse(""))
                        .table(check.depths()))
                .sayIf(
                        hasTolerances(),
                        "Ribs that are off by as much as that at one of these distances, by turns two up and two down, cost "
                                + FigureFormat.rounded(100 * DepthTolerance.LOSS, 1) + FigureFormat.NBSP
                                + "% of the watts.")
                .say(CARD)
                .build();
    }

    private boolean hasTolerances() {
        return plan.trace().stream().anyMatch(trace -> !trace.tolerances().isEmpty());
    }

    private String saw(double metres) {
        return SawLength.text(metres, units);
    }
}
