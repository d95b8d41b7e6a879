package simmerpoint.scenario.doubts;

import simmerpoint.units.DecimalFormatter;
import simmerpoint.units.Dimension;
import simmerpoint.units.PlusMinus;
import simmerpoint.units.QuantityWriter;
import simmerpoint.units.TypedQuantity;
import simmerpoint.units.UnitSystem;

/**
 * How badly a figure is known, as one reads it: "± 2 cm" is two standard deviations; "a factor of 1.5": four in five lie between the
 * figure's 1.5th part and 1.5 times the figure; "up to 8 mrad": one in twenty is more.
 *
 * @param words in metric units; empty for what has no size of its own
 * @param dimension of the quantity in them, unless it is a factor or a per cent of the figure
 */
public record DoubtSize(String words, Dimension dimension) {
    /** Of what has no size of its own. */
    public static final DoubtSize NONE = new DoubtSize("", Dimension.NUMBER);

    private static final String EITHER_WAY = "± ";
    private static final String UP_TO = "up to ";
    private static final int DIGITS = 2;
    private static final double LARGE_ANGLE = 0.01;

    /** What a row of the table says about a value. */
    static DoubtSize of(DoubtTable.Row row, double value, Dimension dimension) {
        String words = row.words(value);
        return new DoubtSize(words.replace(DoubtLaw.FACTOR, "a factor of ").replace(DoubtLaw.UP_TO, UP_TO), dimension);
    }

    /** That of a standard deviation, in SI units or radians. */
    static DoubtSize of(double value, double deviation, Dimension dimension) {
        double size = PlusMinus.DEVIATIONS * deviation;
        String words = switch (dimension) {
            case LENGTH -> QuantityWriter.length(size);
            case ANGLE -> size < LARGE_ANGLE ? QuantityWriter.milliradians(size) : QuantityWriter.degrees(size);
            case TEMPERATURE, TEMPERATURE_DIFFERENCE -> DecimalFormatter.decimals(size, 1, DIGITS) + " K";
            case SHARE -> DecimalFormatter.decimals(size, DIGITS, DIGITS);
            default -> value == 0 ? "" : QuantityWriter.share(size / Math.abs(value));
        };
        return words.isEmpty() ? NONE : new DoubtSize(EITHER_WAY + words, dimension);
    }

    /** Its words in a system of units. */
    public String in(UnitSystem system) {
        if (words.startsWith(EITHER_WAY)) {
            return EITHER_WAY + PlusMinus.split("0 " + words).doubtIn(system, dimension, DIGITS);
        }
        return words.startsWith(UP_TO)
                ? UP_TO
                        + TypedQuantity.of(words.substring(UP_TO.length()), dimension)
                                .map(q -> q.in(system, DIGITS).text())
                                .orElseThrow()
                : words;
    }
}
