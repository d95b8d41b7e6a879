package simmerpoint.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static simmerpoint.units.Dimension.ANGLE;
import static simmerpoint.units.Dimension.COUNT;
import static simmerpoint.units.Dimension.IRRADIANCE;
import static simmerpoint.units.Dimension.LENGTH;
import static simmerpoint.units.Dimension.SHARE;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Inch, foot, pound: exact by the international yard and pound agreement of 1959. US gallon: 231 cubic inches. The rest is
 * the definition of the unit.
 */
class QuantityParserTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "0.9 m|0.9",
                "0.9m|0.9",
                "36 in|0.9144",
                "36in|0.9144",
                "36\"|0.9144",
                "36″|0.9144",
                "1 inch|0.0254",
                "3 ft|0.9144",
                "3'|0.9144",
                "12.5 mm|0.0125",
                "12.3mm|0.0123",
                "110 cm|1.1",
                "1e-3 m|0.001",
                "1E-3m|0.001",
                "1.5e+2 mm|0.15",
                ".5 m|0.5",
                "1. m|1",
                "+2 m|2",
                "-3 cm|-0.03",
                "−3 cm|-0.03",
                "1e−3 m|0.001",
                "  0.9   m  |0.9",
                "0.9\u00a0m|0.9",
                "0.9\u202fm|0.9",
                "0 m|0",
                "-0 m|0"
            })
    void readsLengths(String text, double metres) throws QuantityException {
        assertEquals(metres, QuantityParser.parse(text, LENGTH));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "180°|3.141592653589793", "180 deg|3.141592653589793", "-0.5 °|-0.008726646259971648", "4 mrad|0.004",
                "4.65mrad|0.00465", "0.1 rad|0.1", "10800'|3.141592653589793", "60 arcmin|0.017453292519943295",
                "50º|0.8726646259971648"
            })
    void readsAngles(String text, double radians) throws QuantityException {
        assertEquals(radians, QuantityParser.parse(text, ANGLE));
    }

    @ParameterizedTest
    @CsvSource({
        "SHARE, 0.85, 0.85",
        "SHARE, 85 %, 0.85",
        "SHARE, 85%, 0.85",
        "SHARE, 1e-2, 0.01",
        "IRRADIANCE, 850 W/m², 850",
        "IRRADIANCE, 850 W/m2, 850",
        "IRRADIANCE, 850W/m^2, 850",
        "IRRADIANCE, 0.85 kW/m², 850",
        "COUNT, 24, 24",
        "TIME, 1.5 h, 5400",
        "TIME, 10 min, 600",
        "TIME, 7 s, 7",
        "TEMPERATURE, 100 °C, 373.15",
        "TEMPERATURE, 212 °F, 373.15",
        "TEMPERATURE, -40 °F, 233.15",
        "TEMPERATURE, 300 K, 300",
        "POWER, 0.4 kW, 400",
        "MASS, 2 lb, 0.90718474",
        "MASS, 500 g, 0.5",
        "VOLUME, 2 l, 0.002",
        "VOLUME, 250 ml, 0.00025",
        "VOLUME, 1 gal, 0.003785411784",
        "SPEED, 36 km/h, 10",
        "SPEED, 10 mph, 4.4704",
        "SPEED, 2 m/s, 2"
    })
    void readsOtherQuantities(Dimension dimension, String text, double si) throws QuantityException {
        assertEquals(si, QuantityParser.parse(text, dimension), Math.abs(si) * 1e-15);
    }

    @Test
    void theMachinesLanguageDoesNotMatter() throws QuantityException {
        Locale before = Locale.getDefault();
        try {
            for (String tag : new String[] {"de-DE", "ar-EG-u-nu-arab", "tr-TR", "hi-IN-u-nu-deva"}) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                assertEquals(0.9, QuantityParser.parse("0.9 m", LENGTH), tag);
                assertEquals("12 mm", QuantityWriter.length(0.0123), tag);
            }
        } finally {
            Locale.setDefault(before);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "m",
                "0.9",
                "12 kg",
                "50°",
                "NaN m",
                "nan",
                "Infinity m",
                "-inf m",
                "∞ m",
                "1,5 m",
                "1,500 mm",
                "1.500,2 mm",
                "1 500 mm",
                "1_500 mm",
                "1'500 mm",
                "0x1F m",
                "0b1 m",
                "1 m 2 cm",
                "1 m2",
                "1 mm mm",
                "1 furlong",
                "1e400 m",
                "1e999999999999 m",
                "1e m",
                "1..2 m",
                "--1 m",
                "1-2 m",
                "٣ m",
                "5 M",
                "1.2.3 m",
                "m 5",
                "~",
                "5 m!",
                "5;m",
                "true",
                "1e5",
                "5 µ"
            })
    void refusesWhatIsNoLength(String text) {
        assertThrows(QuantityException.class, () -> QuantityParser.parse(text, LENGTH));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "12 kg|12 kg is not a length; write for instance 0.9 m or 36 in",
                "0.9|0.9 has no unit, and a length needs one; write for instance 0.9 m or 36 in",
                "1,5 m|1,5 m has a comma; decimals take a point and thousands no separator; write 1.5 m",
                "NaN m|NaN m is not a finite number; write for instance 0.9 m or 36 in",
                "5 MM|5 MM is not a length: MM is not a known unit; did you mean mm?",
                "0x1F m|0x1F m is not a decimal number; write for instance 0.9 m or 36 in",
                "1 m 2 cm|1 m 2 cm is more than one quantity; give one number with one unit; write for instance 0.9 m or 36 in",
                "1 500 mm|1 500 mm is more than one number; thousands take no separator; write for instance 0.9 m or 36 in",
                "1e400 m|1e400 m is too large a number",
                "wide|wide is not a length; write for instance 0.9 m or 36 in"
            })
    void saysWhatIsWrong(String text, String sentence) {
        assertEquals(
                sentence,
                assertThrows(QuantityException.class, () -> QuantityParser.parse(text, LENGTH))
                        .getMessage());
    }

    /** Inches in a foot: 12. The rest is counting. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "47 1/4 in|47.25 in",
                "47-1/4 in|47.25 in",
                "47¼ in|47.25 in",
                "3/4\"|0.75 \"",
                "½ m|0.5 m",
                "1/3 ft|0.3333 ft",
                "3 ft 11 in|47 in",
                "3' 11\"|47 in",
                "3'11 1/2\"|47.5 in",
                "3 feet 11.25 inches|47.25 in",
                "-3 ft 11 in|-47 in"
            })
    void fractionsAndFeetWithInchesAreRead(String text, String decimal) throws QuantityException {
        assertEquals(QuantityParser.parse(decimal, LENGTH), QuantityParser.parse(text, LENGTH));
    }

    @ParameterizedTest
    @ValueSource(strings = {"1/0 in", "3/ in", "/3 in", "1/2/3 in", "3 ft 11 kg", "1 1/2"})
    void oddFractionsAreRefusedToo(String text) {
        assertThrows(QuantityException.class, () -> QuantityParser.parse(text, LENGTH));
    }

    @ParameterizedTest
    @CsvSource({
        "LENGTH, 1.2 metres, 1.2",
        "LENGTH, 1 meter, 1",
        "LENGTH, 120 centimetres, 1.2",
        "LENGTH, 5 millimeters, 0.005",
        "ANGLE, 5 milliradians, 0.005",
        "ANGLE, 1 radian, 1",
        "TIME, 2 hours, 7200",
        "TIME, 1 minute, 60",
        "TIME, 30 seconds, 30",
        "MASS, 1.5 kilograms, 1.5",
        "MASS, 500 grams, 0.5",
        "MASS, 2 pounds, 0.90718474",
        "VOLUME, 2 litres, 0.002",
        "VOLUME, 2 liters, 0.002",
        "WATER, 2 kilograms, 2",
        "WATER, 2 pounds, 0.90718474",
        "IRRADIANCE, 850 W/sqm, 850"
    })
    void readsUnitsWrittenOut(Dimension dimension, String text, double si) throws QuantityException {
        assertEquals(si, QuantityParser.parse(text, dimension), Math.abs(si) * 1e-15);
    }

    @Test
    void doesNotGuessWhetherACommaGroupsThousands() {
        String message = assertThrows(QuantityException.class, () -> QuantityParser.parse("1,500 mm", LENGTH))
                .getMessage();
        assertTrue(message.endsWith("write for instance 0.9 m or 36 in"), message);
    }

    @Test
    void sharesAndCountsTakeNoLength() {
        assertThrows(QuantityException.class, () -> QuantityParser.parse("5 mm", SHARE));
        assertThrows(QuantityException.class, () -> QuantityParser.parse("24 mm", COUNT));
        assertThrows(QuantityException.class, () -> QuantityParser.parse("50 %", COUNT));
        assertThrows(QuantityException.class, () -> QuantityParser.parse("850 W", IRRADIANCE));
    }

    @ParameterizedTest
    @ValueSource(strings = {"2.7", "1e10", "24.5", "a", "", "0x10", "1,000"})
    void refusesCountsThatAreNotWhole(String text) {
        assertThrows(QuantityException.class, () -> QuantityParser.parseCount(text, "24"));
    }

    @Test
    void readsCounts() throws QuantityException {
        assertEquals(24, QuantityParser.parseCount("24", "24"));
        assertEquals(1000, QuantityParser.parseCount("1e3", "24"));
        assertEquals(-2, QuantityParser.parseCount("-2", "24"));
    }

    @Test
    void longNumbersAreRefusedAtOnce() {
        String digits = "1".repeat(900_000) + " m";
        String message = assertThrows(QuantityException.class, () -> QuantityParser.parse(digits, LENGTH))
                .getMessage();
        assertTrue(message.length() < 200, "message of " + message.length() + " characters");
    }

    @Test
    void messagesStayOnOneLineAndArePrintable() {
        String message = assertThrows(
                        QuantityException.class, () -> QuantityParser.parse("a\n\u001b[31m\u202eb", LENGTH))
                .getMessage();
        assertTrue(message.chars().noneMatch(c -> c < 32 || c == 0x202e), message);
    }
}
