package simmerpoint.units;

import static org.junit.jupiter.api.Assertions.assertEquals;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** What is written reads back; sizes are drawn over many decades. */
class QuantityRoundTripProperties {
    @Provide
    Arbitrary<Double> sizes() {
        Arbitrary<Double> mantissa = Arbitraries.doubles().between(-10, 10).ofScale(15);
        Arbitrary<Integer> decade = Arbitraries.integers().between(-12, 9);
        return mantissa.flatMap(m -> decade.map(d -> m * Math.pow(10, d)));
    }

    /** Two significant digits at least: 5 % off at most, or half a unit of the ninth decimal. */
    @Property(seed = "44", tries = 500)
    void roundedLengthsReadBackNearby(@ForAll("sizes") double metres) throws QuantityException {
        String text = QuantityWriter.length(metres);
        assertEquals(metres, QuantityParser.parse(text, Dimension.LENGTH), 0.05 * Math.abs(metres) + 1e-9, text);
    }

    @Property(seed = "45", tries = 100)
    void everyPlainSpellingIsRead(@ForAll("sizes") double value) throws QuantityException {
        for (Dimension dimension : Dimension.values()) {
            for (String symbol : UnitTable.symbols(dimension)) {
                double spaced = QuantityParser.parse(value + " " + symbol, dimension);
                assertEquals(spaced, QuantityParser.parse(value + symbol, dimension));
            }
        }
    }
}
