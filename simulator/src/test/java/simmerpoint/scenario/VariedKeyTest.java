package simmerpoint.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import simmerpoint.scenario.variants.VariedKey;

class VariedKeyTest {
    @Test
    void valuesStandBetweenCommasAsInTheFile() throws ScenarioException {
        VariedKey key = VariedKey.parse("dish.hub = 60 mm, 3 in ,0 mm");
        assertEquals("dish.hub", key.path());
        assertEquals(List.of("60 mm", "3 in", "0 mm"), key.values());
    }

    @Test
    void aValueWithACommaStandsInQuotesOrHasABackslash() throws ScenarioException {
        assertEquals(
                List.of("a, b", "c's", "d,e", "f"),
                VariedKey.parse("title=\"a, b\",c's,d\\,e,'f'").values());
        assertEquals(List.of("36\""), VariedKey.parse("title=36\"").values());
        assertEquals(List.of("a=b"), VariedKey.parse("title=a=b").values());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "=12 | --vary: a key is missing; write for instance --vary dish.surface.sectors=12,24",
                "dish.surface.sectors | no value is given; write for instance --vary dish.surface.sectors=24",
                "dish.surface.sectors= | no value is given",
                "dish.surface.sectors=12,,24 | nothing between two commas",
                "dish.surface.sectors=12, | nothing between two commas",
                "dish.surface.secters=12 | --vary, dish.surface.secters: this key is not known; did you mean dish.surface.sectors?",
                "sectors=12 | did you mean dish.surface.sectors?",
                "dish.sectors=12 | did you mean dish.surface.sectors?",
                "diameter=12 | did you mean dish.diameter or pan.diameter?",
                "dish=12 | it is a section, its keys are diameter, focal-length, hub",
                "dish.surface.sectors=2 | --vary, dish.surface.sectors: 2 is out of range; allowed is 3 to 10000",
                "dish.surface.sectors=12,twelve | --vary, dish.surface.sectors: ",
                "dish.hub=60 | --vary, dish.hub: ",
                "mirror.material=household miror | did you mean household mirror?",
                "dish.hub=60 mm,6 cm | --vary, dish.hub: 6 cm is given twice (60 mm is the same)",
                "title=x,x | x is given twice",
                "title=\"x | a quotation mark is opened and not closed",
            })
    void whatIsWrongIsOneSentence(String typed, String words) {
        ScenarioException e = assertThrows(ScenarioException.class, () -> VariedKey.parse(typed));
        assertTrue(e.getMessage().contains(words), e.getMessage());
        assertTrue(e.getMessage().startsWith("--vary"), e.getMessage());
    }
}
