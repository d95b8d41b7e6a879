package simmerpoint.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * All units that users may write. Inch, foot, pound, gallon and mile are defined by exact decimals (international yard
 * and pound agreement of 1959; US gallon of 231 cubic inches, its quarter the quart, its sixteenth the cup).
 */
final class UnitTable {
    private static final Map<Dimension, Map<String, Unit>> UNITS = new LinkedHashMap<>();
    private static final BigDecimal DEGREE =
            new BigDecimal("3.14159265358979323846264338327950288").divide(new BigDecimal(180), MathContext.DECIMAL128);

    static {
        add(Dimension.LENGTH, "1", "m", "metre", "metres", "meter", "meters");
        add(Dimension.LENGTH, "0.01", "cm", "centimetre", "centimetres", "centimeter", "centimeters");
        add(Dimension.LENGTH, "0.001", "mm", "millimetre", "millimetres", "millimeter", "millimeters");
        add(Dimension.LENGTH, "0.0254", "in", "inch", "inches", "\"", "″", "”");
        add(Dimension.LENGTH, "0.3048", "ft", "foot", "feet", "'", "′", "’");
        add(Dimension.ANGLE, DEGREE, "°", "º", "deg", "degree", "degrees");
        add(Dimension.ANGLE, "0.001", "mrad", "milliradian", "milliradians");
        add(Dimension.ANGLE, "1", "rad", "radian", "radians");
        add(Dimension.ANGLE, DEGREE.divide(new BigDecimal(60), MathContext.DECIMAL128), "arcmin", "'", "′", "’");
        add(Dimension.SHARE, "1", "");
        add(Dimension.SHARE, "0.01", "%");
        add(Dimension.NUMBER, "1", "");
        add(Dimension.COUNT, "1", "");
        add(Dimension.IRRADIANCE, "1", "W/m²", "W/m2", "W/m^2", "W/sqm");
        add(Dimension.IRRADIANCE, "1000", "kW/m²", "kW/m2", "kW/m^2", "kW/sqm");
        add(Dimension.TIME, "1", "s", "second", "seconds");
        add(Dimension.TIME, "60", "min", "minute", "minutes");
        add(Dimension.TIME, "3600", "h", "hour", "hours");
        temperatures();
        add(Dimension.POWER, "1", "W");
        add(Dimension.POWER, "1000", "kW");
        add(Dimension.MASS, "1", "kg", "kilogram", "kilograms");
        add(Dimension.MASS, "0.001", "g", "gram", "grams");
        add(Dimension.MASS, "0.45359237", "lb", "lbs", "pound", "pounds");
        add(Dimension.MASS, "0.028349523125", "oz", "ounce", "ounces");
        add(Dimension.VOLUME, "1", "m³", "m3", "m^3");
        add(Dimension.VOLUME, "0.001", "l", "L", "litre", "litres", "liter", "liters");
        add(Dimension.VOLUME, "0.000001", "ml", "mL", "millilitre", "millilitres", "milliliter", "milliliters");
        add(Dimension.VOLUME, "0.003785411784", "gal", "gallon", "gallons");
        add(Dimension.VOLUME, "0.000946352946", "qt", "quart", "quarts");
        water();
        steam();
        add(Dimension.SPEED, "1", "m/s");
        add(Dimension.SPEED, BigDecimal.ONE.divide(new BigDecimal("3.6"), MathContext.DECIMAL128), "km/h");
        add(Dimension.SPEED, "0.44704", "mph");
        add(Dimension.PRESSURE, "1", "Pa", "pascal");
        add(Dimension.PRESSURE, "100", "hPa", "mbar");
        add(Dimension.PRESSURE, "1000", "kPa");
        add(Dimension.PRESSURE, "249.08891", "inH2O", "inH₂O");
        add(Dimension.TENSION, "1", "N/m");
        add(Dimension.TENSION, "100", "N/cm");
        add(Dimension.TENSION, "1000", "N/mm", "kN/m");
        add(Dimension.TENSION, "175.126835", "lbf/in");
    }

    private UnitTable() {}

    private static void temperatures() {
        put(Dimension.TEMPERATURE, BigDecimal.ONE, BigDecimal.ZERO, "K");
        put(Dimension.TEMPERATURE, BigDecimal.ONE, new BigDecimal("273.15"), "°C", "ºC", "degC", "C");
        BigDecimal fiveNinths = new BigDecimal(5).divide(new BigDecimal(9), MathContext.DECIMAL128);
        put(Dimension.TEMPERATURE, fiveNinths, new BigDecimal("459.67"), "°F", "ºF", "degF", "F");
        add(Dimension.TEMPERATURE_DIFFERENCE, "1", "K", "°C", "ºC", "degC", "C");
        add(Dimension.TEMPERATURE_DIFFERENCE, fiveNinths, "°F", "ºF", "degF", "F");
    }

    /** A litre counts as a kilogram: 0.2 % too much at 20 °C, 4 % at boiling. */
    private static void water() {
        add(Dimension.WATER, "1", "kg", "kilogram", "kilograms", "l", "L", "litre", "litres", "liter", "liters");
        add(
                Dimension.WATER,
                "0.001",
                "g",
                "gram",
                "grams",
                "ml",
                "mL",
                "millilitre",
                "millilitres",
                "milliliter",
                "milliliters");
        add(Dimension.WATER, "0.01", "cl");
        add(Dimension.WATER, "0.1", "dl");
        add(Dimension.WATER, "0.45359237", "lb", "lbs", "pound", "pounds");
        add(Dimension.WATER, "0.028349523125", "oz", "ounce", "ounces");
        add(Dimension.WATER, "0.2365882365", "cup", "cups");
        add(Dimension.WATER, "0.946352946", "qt", "quart", "quarts");
        add(Dimension.WATER, "3.785411784", "gal", "gallon", "gallons");
    }

    private static void steam() {
        String[] metric = {"kg/(h·m²)", "kg/(h m²)", "kg/h/m²", "kg/h per m²", "kg/(h*m²)"};
        for (String symbol : metric) {
            add(Dimension.STEAM, "1", symbol, symbol.replace("²", "2"), symbol.replace("²", "^2"));
        }
        BigDecimal pound = new BigDecimal("0.45359237").divide(new BigDecimal("0.09290304"), MathContext.DECIMAL128);
        add(Dimension.STEAM, pound, "lb/(h·ft²)", "lb/(h ft²)", "lb/(h ft2)", "lb/h/ft²", "lb/h/ft2");
    }

    private static void add(Dimension dimension, String factor, String... symbols) {
        add(dimension, new BigDecimal(factor), symbols);
    }

    private static void add(Dimension dimension, BigDecimal factor, String... symbols) {
        put(dimension, factor, BigDecimal.ZERO, symbols);
    }

    private static void put(Dimension dimension, BigDecimal factor, BigDecimal offset, String... symbols) {
        Map<String, Unit> units = UNITS.computeIfAbsent(dimension, d -> new LinkedHashMap<>());
        for (String symbol : symbols) {
            units.put(symbol, new Unit(symbol, dimension, factor, offset));
        }
    }

    /** The unit of that symbol in that dimension. */
    static Optional<Unit> find(Dimension dimension, String symbol) {
        return Optional.ofNullable(UNITS.get(dimension).get(symbol));
    }

    /** The unit of that symbol in any dimension. */
    static Optional<Unit> findAnywhere(String symbol) {
        return UNITS.values().stream()
                .map(units -> units.get(symbol))
                .filter(unit -> unit != null)
                .findFirst();
    }

    /** A unit of the dimension that differs from {@code symbol} only in capital letters. */
    static Optional<Unit> findIgnoringCase(Dimension dimension, String symbol) {
        return UNITS.get(dimension).values().stream()
                .filter(unit -> unit.symbol().equalsIgnoreCase(symbol))
                .findFirst();
    }

    /** Every symbol of the dimension in the order of the table. */
    static List<String> symbols(Dimension dimension) {
        return new ArrayList<>(UNITS.get(dimension).keySet());
    }
}
