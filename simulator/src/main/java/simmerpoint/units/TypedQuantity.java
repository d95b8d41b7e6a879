package simmerpoint.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A quantity as the user typed it, and its conversion to the other system of units. Units of neither system (angles,
 * shares, watts, minutes) are not converted.
 *
 * @param si value in SI units or radians
 * @param dimension what it measures
 * @param unit symbol as typed; empty for plain numbers
 * @param text as typed
 * @param doubt what stands behind a ±; empty if there is none
 */
public record TypedQuantity(double si, Dimension dimension, String unit, String text, String doubt) {
    private static final int SHOWN_DIGITS = 4;
    private static final int SAWN_DIGITS = 3;
    private static final int DOUBT_DIGITS = 2;

    /** Into how many parts an inch rule and a measuring jug are divided. */
    private static final Map<String, Integer> PARTS = Map.of("in", 16, "qt", 4);

    private static final int FINEST_PARTS = 64;

    /** A fraction stands for a figure that is no farther off than this share of it. */
    private static final double AS_GOOD = 2e-4;

    private static final Pattern UNIT = Pattern.compile("[+\\-−]?[0-9.]+(?:[eE][+\\-−]?[0-9]+)?(.*)");
    private static final double EXACT = 1e-9;
    private static final double SMALL_METRES = 0.0995;
    private static final double USUAL_METRES = 0.9995;
    private static final double LONG_METRES = 6;
    private static final Set<String> INCH_UNITS = Set.of(
            "in",
            "inch",
            "inches",
            "\"",
            "″",
            "”",
            "ft",
            "foot",
            "feet",
            "'",
            "′",
            "’",
            "°F",
            "ºF",
            "degF",
            "F",
            "lb",
            "lbs",
            "pound",
            "pounds",
            "oz",
            "ounce",
            "ounces",
            "gal",
            "gallon",
            "gallons",
            "qt",
            "quart",
            "quarts",
            "cup",
            "cups",
            "mph",
            "lb/(h·ft²)",
            "lb/(h ft²)",
            "lb/(h ft2)",
            "lb/h/ft²",
            "lb/h/ft2");
    private static final Map<Dimension, String> INCH = Map.of(
            Dimension.LENGTH, "in",
            Dimension.TEMPERATURE, "°F",
            Dimension.TEMPERATURE_DIFFERENCE, "°F",
            Dimension.MASS, "lb",
            Dimension.VOLUME, "qt",
            Dimension.WATER, "qt",
            Dimension.SPEED, "mph",
            Dimension.STEAM, "lb/(h·ft²)");
    private static final Map<Dimension, String> METRIC = Map.of(
            Dimension.LENGTH, "cm",
            Dimension.TEMPERATURE, "°C",
            Dimension.TEMPERATURE_DIFFERENCE, "K",
            Dimension.MASS, "kg",
            Dimension.VOLUME, "l",
            Dimension.WATER, "l",
            Dimension.SPEED, "m/s",
            Dimension.PRESSURE, "Pa",
            Dimension.TENSION, "N/m",
            Dimension.STEAM, "kg/(h·m²)");

    /** What was typed, if it is a quantity of that dimension. */
    public static Optional<TypedQuantity> of(String typed, Dimension dimension) {
        try {
            PlusMinus parts = PlusMinus.split(typed);
            double si = QuantityParser.parse(parts.value(), dimension);
            Matcher matcher = UNIT.matcher(QuantityParser.asDecimal(InputText.normalised(parts.value()), dimension));
            return matcher.matches()
                    ? Optional.of(
                            new TypedQuantity(si, dimension, matcher.group(1).strip(), typed, parts.doubt()))
                    : Optional.empty();
        } catch (QuantityException e) {
            return Optional.empty();
        }
    }

    /**
     * The SI value in a unit, rounded to a number of decimals.
     *
     * @param si value in SI units or radians; finite
     * @param dimension what it measures
     * @param unit symbol of that dimension
     * @param decimals of the number; 0 or more
     */
    public static TypedQuantity written(double si, Dimension dimension, String unit, int decimals) {
        BigDecimal number = unitOf(dimension, unit).fromSi(si).setScale(decimals, RoundingMode.HALF_EVEN);
        return ofNumber(number, dimension, unit, "");
    }

    private static TypedQuantity ofNumber(BigDecimal number, Dimension dimension, String unit, String doubt) {
        boolean close = unit.isEmpty() || unit.equals("°");
        String behind = doubt.isEmpty() ? "" : " ± " + doubt;
        String text = DecimalFormatter.stripped(number) + (close ? "" : " ") + unit + behind;
        return new TypedQuantity(unitOf(dimension, unit).toSi(number), dimension, unit, text, doubt);
    }

    private static Unit unitOf(Dimension dimension, String symbol) {
        return UnitTable.find(dimension, symbol).orElseThrow(() -> new IllegalArgumentException(symbol));
    }

    /** As typed if its unit belongs to that system or to both; else in a usual unit of it, to four digits. */
    public TypedQuantity in(UnitSystem system) {
        return in(system, SHOWN_DIGITS);
    }

    /** The same to show: sixteenths of an inch and quarters of a quart where they are as good as exact, else three digits. */
    public TypedQuantity shownIn(UnitSystem system) {
        TypedQuantity exact = in(system);
        if (exact.equals(this) || !PARTS.containsKey(exact.unit) || !doubt.isEmpty()) {
            return exact;
        }
        double number = exact.numberOf(si);
        double parts = PARTS.get(exact.unit);
        BigDecimal fraction = new BigDecimal(Math.rint(number * parts) / parts);
        boolean near = Math.abs(fraction.doubleValue() - number) <= AS_GOOD * Math.abs(number);
        return near ? ofNumber(fraction, dimension, exact.unit, "") : in(system, SAWN_DIGITS);
    }

    /** Its text as one says it: "12 1/2 in" for 12.5 in; other figures as they are written. */
    public String inFractions() {
        int parts = unit.equals("in") ? FINEST_PARTS : PARTS.getOrDefault(unit, 0);
        double number = parts > 0 && doubt.isEmpty() ? number() : Double.NaN;
        boolean exact = Math.abs(number * parts - Math.rint(number * parts)) < EXACT;
        return exact && number != Math.rint(number)
                ? InchLength.fraction(number, parts).replace('\u00a0', ' ') + " " + unit
                : text;
    }

    /** The decimal figure that a text with a fraction means: "12.5 in" for 12 1/2 in; other texts as they are. */
    public static String decimal(String typed, Dimension dimension) {
        return FractionConverter.decimal(InputText.normalised(typed), dimension).orElse(typed);
    }

    /** As typed if its unit belongs to that system or to both; else in a usual unit of it, to so many digits. */
    public TypedQuantity in(UnitSystem system, int digits) {
        boolean fits = !INCH.containsKey(dimension) || INCH_UNITS.contains(unit) == (system == UnitSystem.INCH);
        if (fits) {
            return this;
        }
        String other = counterpart(system);
        BigDecimal number = unitOf(dimension, other).fromSi(si);
        String otherDoubt = new PlusMinus(text, doubt).doubtIn(system, dimension, DOUBT_DIGITS);
        return ofNumber(number.round(new MathContext(digits, RoundingMode.HALF_EVEN)), dimension, other, otherDoubt);
    }

    private String counterpart(UnitSystem system) {
        if (system == UnitSystem.INCH) {
            return dimension == Dimension.LENGTH && Math.abs(si) >= LONG_METRES ? "ft" : INCH.get(dimension);
        }
        if (dimension != Dimension.LENGTH || si == 0) {
            return METRIC.get(dimension);
        }
        double size = Math.abs(si);
        return size < SMALL_METRES ? "mm" : size < USUAL_METRES ? "cm" : "m";
    }

    /** How many of its unit it is. */
    public double number() {
        return unitOf(dimension, unit).fromSi(si).doubleValue();
    }

    /** How many of its unit another SI value is. */
    public double numberOf(double otherSi) {
        return unitOf(dimension, unit).fromSi(otherSi).doubleValue();
    }

    /** Another number of its unit, rounded to so many decimals; what stands behind a ± stays. */
    public TypedQuantity withNumber(double number, int decimals) {
        return ofNumber(new BigDecimal(number).setScale(decimals, RoundingMode.HALF_EVEN), dimension, unit, doubt);
    }
}
