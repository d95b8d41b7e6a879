package simmerpoint.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class KitchenUnitsTest {
    /**
     * US gallon of 231 cubic inches = 3.785411784 l, quart a quarter, cup a sixteenth of it; pound 0.45359237 kg; foot
     * 0.3048 m (NIST Handbook 44, appendix C, from memory). A litre of water counts as a kilogram.
     */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "WATER|2 l|2",
                "WATER|1.5 kg|1.5",
                "WATER|250 ml|0.25",
                "WATER|250 g|0.25",
                "WATER|5 dl|0.5",
                "WATER|1 cup|0.2365882365",
                "WATER|8 cups|1.892705892",
                "WATER|2 quarts|1.892705892",
                "WATER|1 gallon|3.785411784",
                "WATER|1 lb|0.45359237",
                "TEMPERATURE_DIFFERENCE|6 K|6",
                "TEMPERATURE_DIFFERENCE|6 °C|6",
                "TEMPERATURE_DIFFERENCE|9 °F|5",
                "STEAM|6 kg/(h·m²)|6",
                "STEAM|6 kg/(h m2)|6",
                "STEAM|6 kg/h/m^2|6",
                "STEAM|1 lb/(h·ft²)|4.882427636383",
                "NUMBER|3.2|3.2"
            })
    void readsWhatCooksWrite(Dimension dimension, String text, double value) throws QuantityException {
        assertEquals(value, QuantityParser.parse(text, dimension), 1e-12 * value);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "WATER|2 m|2 m is not an amount of water; write for instance 1.5 l or 1.5 kg",
                "WATER|2|2 has no unit, and an amount of water needs one",
                "WATER|2 Cups|did you mean cups?",
                "STEAM|6 kg/h|6 kg/h is not a rate of steam: kg/h is not a known unit",
                "NUMBER|3 %|3 % is not a plain number"
            })
    void saysWhatIsWrong(Dimension dimension, String text, String words) {
        QuantityException e = assertThrows(QuantityException.class, () -> QuantityParser.parse(text, dimension));
        assertEquals(true, e.getMessage().contains(words), e.getMessage());
    }
}
