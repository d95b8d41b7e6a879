package simmerpoint.dish.cut;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleFunction;
import simmerpoint.units.RangeCheck;

/**
 * The rim of a dish, seen along the axis.
 *
 * @param sides number of equal straight sides; 0 for a round rim
 * @param widthMetres twice the distance of a side from the axis; any number for a round rim
 * @param cornerCutMetres what a cut corner of a square takes off each side; 0 for none
 * @param turnedRadians how far the middle of a side is from the upper edge, towards the right
 * @param half which half there is
 * @param slotWidthMetres width of a slot, 0 for none
 * @param slotLengthMetres how far it reaches inwards from the edge, measured along its middle
 * @param slotAtRadians its angle from the upper edge, towards the right
 */
public record Rim(
        int sides,
        double widthMetres,
        double cornerCutMetres,
        double turnedRadians,
        Half half,
        double slotWidthMetres,
        double slotLengthMetres,
        double slotAtRadians) {
    /** Which half there is of a dish that is cut through its axis. */
    public enum Half {
        /** All of it. */
        WHOLE(0, 2 * Math.PI),
        /** Above the axis. */
        UPPER(-Math.PI / 2, Math.PI / 2),
        /** Below the axis. */
        LOWER(Math.PI / 2, 1.5 * Math.PI),
        /** To the left of whoever stands behind the dish and faces the sun. */
        LEFT(Math.PI, 2 * Math.PI),
        /** To the right. */
        RIGHT(0, Math.PI);

        private final double from;
        private final double to;

        Half(double from, double to) {
            this.from = from;
            this.to = to;
        }

        /** Its word in scenario files. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** A round rim of a whole dish. */
    public static final Rim ROUND = new Rim(0, 0, 0, 0, Half.WHOLE, 0, 0, 0);

    /** Checks the lengths. */
    public Rim {
        RangeCheck.require(sides == 0 || sides >= 3, "sides", sides, "3 or more");
        RangeCheck.require(sides == 0 || widthMetres > 0, "width", widthMetres, "above 0");
        RangeCheck.zeroOrMore(cornerCutMetres, "corner cut");
        RangeCheck.zeroOrMore(slotWidthMetres, "slot");
    }

    /** What lies within it, and within a circle of that radius about the axis, m. */
    public PlanRegion region(double radius) {
        PlanRegion region = withoutSlot(radius);
        return slotWidthMetres > 0 ? region.withSlot(slotWidthMetres, slotLengthMetres, slotAtRadians) : region;
    }

    /** How far its edge is from the axis where the slot is, m; 0 if no mirror is there. */
    public double edgeAtSlot(double radius) {
        return withoutSlot(radius).reach(slotAtRadians);
    }

    /** Diameter of the circle about the axis on which its farthest corners lie, m; 0 for a round rim. */
    public double acrossCorners() {
        return sides == 0
                ? 0
                : 2
                        * polygon(sides * widthMetres).corners().stream()
                                .mapToDouble(p -> Math.hypot(p.x(), p.y()))
                                .max()
                                .orElseThrow();
    }

    private PlanRegion withoutSlot(double radius) {
        return polygon(radius).between(half.from, half.to);
    }

    private PlanRegion polygon(double radius) {
        PlanRegion region =
                sides == 0 ? PlanRegion.circle(radius) : PlanRegion.regular(radius, sides, widthMetres, turnedRadians);
        if (cornerCutMetres > 0) {
            double across = Math.sqrt(2) * (widthMetres - cornerCutMetres);
            region = region.within(PlanRegion.regular(radius, 4, across, turnedRadians + Math.PI / 4)
                    .corners());
        }
        return region;
    }

    /** "square rim 80.0 cm wide, corners cut by 10.0 cm, upper half only, slot 4.0 cm wide, 20.0 cm long, at the lower edge"; lengths (m) written by {@code length}. */
    String words(DoubleFunction<String> length) {
        List<String> parts = new ArrayList<>();
        if (sides > 0) {
            parts.add((sides == 4 ? "square rim " : "rim of " + sides + " sides, ") + length.apply(widthMetres)
                    + " wide");
        }
        if (cornerCutMetres > 0) {
            parts.add("corners cut by " + length.apply(cornerCutMetres));
        }
        if (half != Half.WHOLE) {
            parts.add(half.word() + " half only");
        }
        if (slotWidthMetres > 0) {
            parts.add("slot " + length.apply(slotWidthMetres) + " wide, " + length.apply(slotLengthMetres) + " long, "
                    + slotPlace());
        }
        return String.join(", ", parts);
    }

    private String slotPlace() {
        long degrees = Math.floorMod(Math.round(Math.toDegrees(slotAtRadians)), 360L);
        return switch ((int) degrees) {
            case 0 -> "at the upper edge";
            case 90 -> "at the right";
            case 180 -> "at the lower edge";
            case 270 -> "at the left";
            default -> degrees + "\u00b0 from the upper edge to the right";
        };
    }
}
