package simmerpoint.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import simmerpoint.sampling.Estimate;

/** What is written reads back; sizes are drawn over many decades. */
class QuantityRoundTripProperties {
    @Provide
    Arbitrary<Double> sizes() {
        Arbitrary<Double> mantissa = Arbitraries.doubles().between(-10, 10).ofScale(15);
        Arbitrary<Integer> decade = Arbitraries.integers().between(-12, 9);
        return mantissa.flatMap(m -> decade.map(d -> m * Math.pow(10, d)));
    }

    @Property(seed = "42", tries = 500)
    void exactLengthsReadBackAsTheSameNumber(@ForAll("sizes") double metres, @ForAll UnitSystem system)
            throws QuantityException {
        String text = new QuantityWriter(system).exactLength(metres);
        assertEquals(metres, QuantityParser.parse(text, Dimension.LENGTH), Math.ulp(metres), text);
    }

    @Property(seed = "43", tries = 500)
    void exactAnglesReadBackAsTheSameNumber(@ForAll("sizes") double radians) throws QuantityException {
        for (String unit : new String[] {"°", "mrad"}) {
            String text = new QuantityWriter(UnitSystem.METRIC).exactAngle(radians, unit);
            assertEquals(radians, QuantityParser.parse(text, Dimension.ANGLE), Math.ulp(radians), text);
        }
    }

    /** Two significant digits at least: 5 % off at most, or half a unit of the ninth decimal. */
    @Property(seed = "44", tries = 500)
    void roundedLengthsReadBackNearby(@ForAll("sizes") double metres, @ForAll UnitSystem system)
            throws QuantityException {
        String text = new QuantityWriter(system).length(metres);
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

    /** The printed figure is within half of its printed error's last digit, which is at most half the error; the ninth decimal is the last. */
    @Property(seed = "46", tries = 500)
    void estimatesKeepTheDigitsTheyDeserve(@ForAll("sizes") double value, @ForAll("sizes") double error)
            throws QuantityException {
        double se = Math.abs(error);
        String text = new QuantityWriter(UnitSystem.METRIC).watts(new Estimate(value, se));
        double read = QuantityParser.parse(text.split(" ± ")[0], Dimension.POWER);
        double slack = Math.max(0.5 * se, 0.006 * Math.abs(value) * (se == 0 ? 1 : 1e-4));
        assertTrue(Math.abs(read - value) <= slack + 1e-9, text + " for " + value + " ± " + se);
    }
}
