package simmerpoint.scenario.checks;

import java.util.Locale;
import java.util.Optional;
import simmerpoint.dish.Cut;
import simmerpoint.dish.CutKind;
import simmerpoint.dish.CutTrait;
import simmerpoint.dish.cut.Clipped;
import simmerpoint.dish.cut.Rim;
import simmerpoint.scenario.Problems;
import simmerpoint.scenario.values.ScenarioValues;
import simmerpoint.units.QuantityWriter;

/** The values of {@code dish.rim}: what lies within it, and whether it leaves a dish. */
final class RimValues {
    private static final String RIM = "dish.rim";
    private static final String DIAMETER = "dish.diameter";
    private static final String SHAPE = "dish.rim.shape";
    private static final String AT = "dish.rim.slot-at";
    private static final String WIDTH = "dish.rim.width";
    private static final String CORNER = "dish.rim.corner-cut";
    private static final String SLOT = "dish.rim.slot-width";
    private static final String LENGTH = "dish.rim.slot-length";

    private final ScenarioValues v;
    private final double diameter;

    private RimValues(ScenarioValues values) {
        v = values;
        diameter = values.has(DIAMETER) ? values.number(DIAMETER) : Double.NaN;
    }

    /** A cut within the rim that a scenario asks for. */
    static Cut clipped(Cut cut, ScenarioValues values) {
        return values.hasSection(RIM)
                ? Clipped.within(cut, new RimValues(values).rim(), values.number(DIAMETER) / 2)
                : cut;
    }

    /** Tells what would leave no dish, or cut nothing. */
    static void check(ScenarioValues values, CutKind kind, Problems problems) {
        if (!values.hasSection(RIM)) {
            return;
        }
        if (!kind.has(CutTrait.PARABOLOID)) {
            problems.add(values.line(RIM), RIM, "the mesh itself says where the rim is; leave rim out");
            return;
        }
        if (kind.has(CutTrait.OWN_SIZE)) {
            problems.add(
                    values.line(RIM), RIM, "a dish cut as " + kind.word() + " has a rim of its own; leave rim out");
            return;
        }
        RimValues rim = new RimValues(values);
        rim.width(problems);
        rim.corner(problems);
        rim.slot(problems);
        if (!problems.isAnyIn(RIM)) {
            rim.slotOnMirror(problems);
        }
    }

    /** The diameter that leaves the corners of a rim whole where the file gives none: "1257 mm". */
    static Optional<String> neededDiameter(ScenarioValues values) {
        return values.has(WIDTH) && values.has(SHAPE) && !values.text(SHAPE).equals("round")
                ? Optional.of(wholeCorners(new RimValues(values).rim()))
                : Optional.empty();
    }

    /** The same of a rim, rounded up to a whole millimetre. */
    static String wholeCorners(Rim rim) {
        return Math.round(Math.ceil(1000 * rim.acrossCorners() - 1e-6)) + " mm";
    }

    private void width(Problems problems) {
        if (!v.has(WIDTH)) {
            return;
        }
        double width = v.number(WIDTH);
        double least = v.number("dish.hub");
        if (!(width < diameter)) {
            problems.add(
                    v.line(WIDTH),
                    WIDTH,
                    "a rim " + v.shown(WIDTH) + " wide cuts nothing off a dish " + v.shown(DIAMETER) + " wide");
        } else if (!(width > least)) {
            problems.add(
                    v.line(WIDTH),
                    WIDTH,
                    v.shown(WIDTH) + " leaves nothing of the mirror about the hub, which is " + v.shown("dish.hub")
                            + " wide");
        }
    }

    private void corner(Problems problems) {
        if (v.has(CORNER) && !(v.number(CORNER) < width(4) / 2)) {
            problems.add(
                    v.line(CORNER),
                    CORNER,
                    v.shown(CORNER) + " off each corner leaves no sides; it must be below "
                            + QuantityWriter.length(width(4) / 2));
        }
    }

    private void slot(Problems problems) {
        if (v.number(SLOT) == 0 && v.has(LENGTH)) {
            problems.add(v.line(LENGTH), LENGTH, "a slot needs a width; write for instance slot-width: 4 cm");
        }
        if (!(v.number(SLOT) < diameter / 2)) {
            problems.add(v.line(SLOT), SLOT, v.shown(SLOT) + " is half of the dish or more, no slot");
        }
    }

    /** A slot begins at the rim's edge where it is. */
    private void slotOnMirror(Problems problems) {
        if (v.number(SLOT) == 0) {
            return;
        }
        double edge = rim().edgeAtSlot(diameter / 2);
        if (edge == 0) {
            problems.add(
                    v.line(v.has(AT) ? AT : SLOT),
                    AT,
                    "at " + v.shown(AT) + " from the upper edge this dish has no mirror: only the "
                            + v.text("dish.rim.half") + " half is there");
        } else if (v.has(LENGTH) && !(v.number(LENGTH) <= edge)) {
            problems.add(
                    v.line(LENGTH),
                    LENGTH,
                    v.shown(LENGTH) + " is more than from rim to middle, " + QuantityWriter.length(edge));
        }
    }

    private Rim rim() {
        int sides = sides();
        double slot = v.number(SLOT);
        return new Rim(
                sides,
                width(sides),
                sides == 4 ? v.number(CORNER) : 0,
                v.number("dish.rim.turned"),
                Rim.Half.valueOf(v.text("dish.rim.half").toUpperCase(Locale.ROOT)),
                slot,
                v.number(LENGTH),
                v.number(AT));
    }

    private int sides() {
        return switch (v.text(SHAPE)) {
            case "square" -> 4;
            case "polygon" -> v.count("dish.rim.sides");
            default -> 0;
        };
    }

    /** Distance of opposite sides, m. */
    private double width(int sides) {
        return v.number(WIDTH, sides == 0 ? diameter : diameter * Math.cos(Math.PI / sides));
    }
}
