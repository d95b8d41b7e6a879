package simmerpoint.units;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A quantity with how badly it is known: {@code 0.85 ± 0.03}, {@code 1.20 m ± 1 cm}, {@code 850 W/m² ± 5 %}; {@code +-} and {@code
 * +/-} are read too. A ± is two standard deviations. One unit serves both numbers; per cent behind the ± is a share of the value,
 * unless the value itself is a share.
 *
 * @param value what stands before the ±, with a unit if either number has one
 * @param doubt what stands behind it, with a unit if either number has one; empty if there is no ±
 */
public record PlusMinus(String value, String doubt) {
    /** Standard deviations of a ±: one in twenty is further off (common practice). */
    public static final double DEVIATIONS = 2;

    private static final Pattern SIGN = Pattern.compile("\\s*(?:±|\\+/?[-−])\\s*");
    private static final Pattern BARE =
            Pattern.compile("[+\\-−]?(?:[0-9]+\\.?[0-9]*|\\.[0-9]+)(?:[eE][+\\-−]?[0-9]+)?");
    private static final String PER_CENT = "%";

    /** Parts what was typed at its ±. */
    public static PlusMinus split(String typed) {
        String text = InputText.normalised(typed);
        Matcher sign = SIGN.matcher(text);
        if (!sign.find() || sign.start() == 0) {
            return new PlusMinus(text, "");
        }
        String before = text.substring(0, sign.start());
        String behind = text.substring(sign.end());
        String unitBehind = unit(behind);
        if (isBare(before) && !unitBehind.isEmpty() && !unitBehind.equals(PER_CENT)) {
            return new PlusMinus(joined(before, unitBehind), behind);
        }
        return new PlusMinus(before, isBare(behind) ? joined(behind, unit(before)) : behind);
    }

    private static boolean isBare(String text) {
        return BARE.matcher(text).matches();
    }

    private static String unit(String text) {
        Matcher number = BARE.matcher(text);
        return number.lookingAt() ? text.substring(number.end()).strip() : "";
    }

    private static String joined(String number, String unit) {
        return unit.isEmpty() || unit.equals("°") ? number + unit : number + " " + unit;
    }

    /** Whether there is a ±. */
    public boolean isGiven() {
        return !doubt.isEmpty();
    }

    /**
     * The standard deviation in SI units or radians; empty if there is no ±.
     *
     * @param dimension of the value
     * @param si the value in SI units or radians
     * @throws QuantityException if what stands behind the ± is no such quantity, or is below nothing
     */
    public OptionalDouble deviation(Dimension dimension, double si) throws QuantityException {
        if (!isGiven()) {
            return OptionalDouble.empty();
        }
        double size = size(dimension, si);
        if (!(size >= 0)) {
            throw new QuantityException(InputText.shown(doubt) + " after the ± is negative");
        }
        return OptionalDouble.of(size / DEVIATIONS);
    }

    private double size(Dimension dimension, double si) throws QuantityException {
        if (isShareOfValue(dimension)) {
            return Math.abs(si) * QuantityParser.parse(doubt, Dimension.SHARE);
        }
        Dimension difference = difference(dimension);
        return QuantityParser.parse(doubt, difference, "± " + difference.example());
    }

    private boolean isShareOfValue(Dimension dimension) {
        boolean has = dimension != Dimension.SHARE && dimension != Dimension.TEMPERATURE;
        return has && unit(doubt).equals(PER_CENT);
    }

    /** What differences of a quantity are. */
    private static Dimension difference(Dimension dimension) {
        return dimension == Dimension.TEMPERATURE ? Dimension.TEMPERATURE_DIFFERENCE : dimension;
    }

    /** What stands behind the ± in a system of units, to so many digits; empty if there is no ±. */
    public String doubtIn(UnitSystem system, Dimension dimension, int digits) {
        if (!isGiven() || isShareOfValue(dimension)) {
            return doubt;
        }
        Optional<TypedQuantity> size = TypedQuantity.of(doubt, difference(dimension));
        return size.map(q -> q.in(system, digits).text()).orElse(doubt);
    }
}
