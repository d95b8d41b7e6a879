package simmerpoint.trial.log;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import simmerpoint.scenario.keys.NearestWord;

/** Columns that a log may have, each with its unit in its name. */
@SuppressWarnings("ImmutableEnumChecker") // Its functions hold no state.
enum LogColumn {
    /** Minutes from any beginning. */
    TIME_MIN("time_min", Quantity.TIME, x -> 60 * x),
    /** Seconds from any beginning. */
    TIME_S("time_s", Quantity.TIME, x -> x),
    /** Hours from any beginning. */
    TIME_H("time_h", Quantity.TIME, x -> 3600 * x),
    /** Time of day, with a date or without. */
    TIME_LOCAL("time_local", Quantity.TIME, x -> x),
    /** Water, °C. */
    WATER_C("water_C", Quantity.WATER, x -> x),
    /** Water, °F. */
    WATER_F("water_F", Quantity.WATER, LogColumn::celsius),
    /** Air, °C. */
    AIR_C("air_C", Quantity.AIR, x -> x),
    /** Air, °F. */
    AIR_F("air_F", Quantity.AIR, LogColumn::celsius),
    /** All sunlight on a plane that faces the sun. */
    IRRADIANCE("irradiance_W_m2", Quantity.IRRADIANCE, x -> x),
    /** Direct sunlight on a plane that faces the sun. */
    BEAM("beam_W_m2", Quantity.BEAM, x -> x),
    /** Wind, m/s. */
    WIND_M_S("wind_m_s", Quantity.WIND, x -> x),
    /** Wind, km/h. */
    WIND_KM_H("wind_km_h", Quantity.WIND, x -> x / 3.6),
    /** Wind, miles an hour: 1609.344 m exactly. */
    WIND_MPH("wind_mph", Quantity.WIND, x -> x * 1609.344 / 3600),
    /** Anything. */
    NOTES("notes", Quantity.NOTES, x -> x);

    /** What a column is of; a log has one column for each at most. */
    enum Quantity {
        /** When. */
        TIME("time", Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, "s"),
        /** The water's temperature. */
        WATER("water", -5, 115, "°C"),
        /** The air's. */
        AIR("air", -40, 60, "°C"),
        /** All light. */
        IRRADIANCE("irradiance", 0, 1500, "W/m²"),
        /** The sun's own. */
        BEAM("beam", 0, 1500, "W/m²"),
        /** Wind. */
        WIND("wind", 0, 40, "m/s"),
        /** Words. */
        NOTES("notes", 0, 0, "");

        private final String word;
        private final double low;
        private final double high;
        private final String unit;

        Quantity(String word, double low, double high, String unit) {
            this.word = word;
            this.low = low;
            this.high = high;
            this.unit = unit;
        }

        String word() {
            return word;
        }

        boolean allows(double value) {
            return value >= low && value <= high;
        }

        /** "-5 to 115 °C". */
        String range() {
            return String.format(Locale.ROOT, "%.0f to %.0f %s", low, high, unit);
        }
    }

    private final String head;
    private final Quantity quantity;
    private final DoubleUnaryOperator toSi;

    LogColumn(String head, Quantity quantity, DoubleUnaryOperator toSi) {
        this.head = head;
        this.quantity = quantity;
        this.toSi = toSi;
    }

    private static double celsius(double fahrenheit) {
        return (fahrenheit - 32) / 1.8;
    }

    String head() {
        return head;
    }

    Quantity quantity() {
        return quantity;
    }

    double si(double value) {
        return toSi.applyAsDouble(value);
    }

    /** The column with that name in the header, capitals or not. */
    static Optional<LogColumn> of(String name) {
        return Arrays.stream(values())
                .filter(column -> column.head.equalsIgnoreCase(name))
                .findFirst();
    }

    /** Why a name is none, and what was probably meant, as a sentence. */
    static String unknown(String name) {
        for (Quantity quantity : Quantity.values()) {
            if (quantity.word.equalsIgnoreCase(name)) {
                return "the column '" + name + "' needs its unit, as in "
                        + String.join(
                                " or ",
                                Arrays.stream(values())
                                        .filter(column -> column.quantity == quantity)
                                        .map(LogColumn::head)
                                        .toList())
                        + ".";
            }
        }
        List<String> heads = Arrays.stream(values()).map(LogColumn::head).toList();
        return "there is no column '" + name + "'"
                + NearestWord.of(name, heads)
                        .map(near -> "; did you mean " + near + "?")
                        .orElse("; columns are " + String.join(", ", heads) + ".");
    }
}
