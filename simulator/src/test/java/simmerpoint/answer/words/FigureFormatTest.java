package simmerpoint.answer.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import simmerpoint.sampling.Estimate;
import simmerpoint.units.UnitSystem;

class FigureFormatTest {
    private static final FigureFormat METRIC = new FigureFormat(UnitSystem.METRIC);
    private static final FigureFormat INCH = new FigureFormat(UnitSystem.INCH);

    private static String plain(String text) {
        return text.replace('\u00a0', ' ');
    }

    /** Two digits of an error that starts with 1 or 2, one digit of any other: common practice in laboratories. */
    @ParameterizedTest
    @CsvSource({
        "623.4, 2.4, 623.4 ± 2.4 W",
        "623.4, 3.4, 623 ± 3 W",
        "623.4, 34, 620 ± 30 W",
        "623.4, 0.17, 623.40 ± 0.17 W",
        "623.4, 0.0001, 623.40 ± 0.01 W",
        "623.4, 0, 623.4 W",
        "623.4, 1e-12, 623.4 W",
        "0, 0, 0.00 W",
        "0, 3, 0 ± 3 W",
        "-0.001, 0.02, 0.00 ± 0.02 W",
        "-5, 0.3, −5.0 ± 0.3 W",
        "1.2e6, 2000, 1200.0 ± 2.0 kW",
        "NaN, 1, unknown",
    })
    void wattsHaveTheDigitsTheirErrorDeserves(double value, double error, String expected) {
        assertEquals(expected, plain(METRIC.watts(new Estimate(value, error))));
    }

    @ParameterizedTest
    @CsvSource({
        "0.0123, 1.23 cm, 1/2 in",
        "0.24, 24 cm, 9 7/16 in",
        "0.0004, 0.4 mm, 0.016 in",
        "0.8, 80 cm, 31 1/2 in",
        "2.5, 2.5 m, 8 ft 2 in",
        "0, 0 mm, 0 in",
    })
    void lengthsComeInBothSystems(double metres, String metric, String inch) {
        assertEquals(metric, plain(METRIC.length(metres)));
        assertEquals(inch, plain(INCH.length(metres)));
    }

    @Test
    void smallWattsBesideLargeOnesAreNoFinerThanAHundredth() {
        Estimate small = new Estimate(0.0446, 0.0001);
        assertEquals("0.04 \u00b1 0.01 W", plain(METRIC.wattsOf(900, small)));
        assertEquals("0.0446 \u00b1 0.0001 W", plain(METRIC.wattsOf(0.09, small)));
        assertEquals("120.0 \u00b1 0.5 kW", plain(METRIC.wattsOf(2e5, new Estimate(1.2e5, 500))));
    }

    /** A figure of rounding alone is nothing; a hundredth of a watt is the least that is told: common practice. */
    @ParameterizedTest
    @CsvSource({
        "1.1e-12, 0 W",
        "-3e-12, 0 W",
        "0, 0 W",
        "0.004, 0 W",
        "0.04, 0.04 W",
        "0.4, 0.4 W",
        "623.4, 623 W",
        "NaN, unknown",
    })
    void wattsOfASentenceEndAtAHundredth(double watts, String expected) {
        assertEquals(expected, plain(METRIC.plainWatts(new Estimate(watts, 0))));
    }

    @Test
    void sharesAreReadable() {
        assertEquals("43 %", plain(METRIC.percent(0.4321)));
        assertEquals("4.3 %", plain(METRIC.percent(0.04321)));
        assertEquals("< 0.1 %", plain(METRIC.percent(0.0001)));
        assertEquals("0 %", plain(METRIC.percent(0)));
        assertEquals("100 %", plain(METRIC.percent(1)));
        assertEquals("unknown", METRIC.percent(Double.NaN));
    }

    @Test
    void countsAreGrouped() {
        assertEquals("262 144", plain(FigureFormat.count(262144)));
        assertEquals("12", FigureFormat.count(12));
    }

    /** The rounded figure lies within half its shown error of the true one, plus half of its last digit. */
    @Property(seed = "42")
    void roundingLosesLessThanTheError(
            @ForAll @DoubleRange(min = -9e4, max = 9e4) double value,
            @ForAll @DoubleRange(min = 0.02, max = 9e3) double error) {
        String[] parts = plain(METRIC.watts(new Estimate(value, error)))
                .replace('−', '-')
                .split(" ");
        assertTrue(Math.abs(Double.parseDouble(parts[0]) - value) <= 0.5 * error + 0.005, parts[0] + " for " + value);
        assertTrue(Math.abs(Double.parseDouble(parts[2]) - error) <= 0.18 * error + 0.005, parts[2] + " for " + error);
    }

    /** 125 cm told as 130 cm would be 5 cm off, by which a pan may cook otherwise. */
    @Test
    void noLengthIsRoundedCoarserThanACentimetre() {
        assertEquals("125 cm", plain(METRIC.length(1.2534, 2)));
        assertEquals("55 cm", plain(METRIC.length(0.5519, 2)));
        assertEquals("5.3 cm", plain(METRIC.length(0.0531, 2)));
        assertEquals("2.53 m", plain(METRIC.length(2.534, 2)));
        assertEquals("10 ft 5 in", plain(INCH.length(3.175, 2)));
    }
}
