package simmerpoint.scenario.doubts;

import simmerpoint.scenario.keys.KeyRange;
import simmerpoint.uncertainty.Distribution;
import simmerpoint.uncertainty.Distributions;
import simmerpoint.units.Dimension;
import simmerpoint.units.PlusMinus;
import simmerpoint.units.QuantityException;
import simmerpoint.units.QuantityParser;

/** Laws of the table doubts.tsv for a figure. */
final class DoubtLaw {
    /** Begins a factor. */
    static final String FACTOR = "× ";

    /** Begins the most that a figure of nothing may be. */
    static final String UP_TO = "0 to ";

    private DoubtLaw() {}

    /** The law that a row's words mean about a value. */
    static Distribution of(DoubtTable.Row row, double value, Dimension dimension, KeyRange allowed) {
        String words = row.words(value);
        if (words.startsWith(FACTOR)) {
            return factor(words, value, allowed);
        }
        double deviation = deviation(words, value, dimension);
        return normal(value, deviation, allowed);
    }

    /** Normal, within what is allowed. */
    static Distribution normal(double value, double deviation, KeyRange allowed) {
        Distribution law = Distributions.normalWithin(value, deviation, allowed.low(), allowed.high());
        return probability -> allowed.nearest(law.quantile(probability));
    }

    /** A factor about 1. */
    static Distribution factor(DoubtTable.Row row) {
        return Distributions.logNormal(1, number(row.doubt()));
    }

    private static Distribution factor(String words, double value, KeyRange allowed) {
        if (value == 0) {
            return Distributions.exact(0);
        }
        Distribution size = Distributions.logNormal(Math.abs(value), number(words));
        return probability -> allowed.nearest(value > 0 ? size.quantile(probability) : -size.quantile(1 - probability));
    }

    private static double number(String words) {
        return Double.parseDouble(words.substring(FACTOR.length()));
    }

    private static double deviation(String words, double value, Dimension dimension) {
        try {
            return words.startsWith(UP_TO)
                    ? QuantityParser.parse(words.substring(UP_TO.length()), dimension) / PlusMinus.DEVIATIONS
                    : PlusMinus.split("0 " + words).deviation(dimension, value).orElseThrow();
        } catch (QuantityException e) {
            throw new IllegalStateException("doubts.tsv: " + words + ": " + e.getMessage(), e);
        }
    }
}
