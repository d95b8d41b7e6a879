package simmerpoint.answer.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import simmerpoint.uncertainty.LikelyRange;

class LikelyWordsTest {
    @Test
    void whatHasNoRangeNamesNone() {
        assertEquals("about 680\u00a0W", LikelyWords.power(LikelyRange.exact(684)));
        assertEquals(
                "about 680 W (four in five such cookers: 600 to 750 W)",
                LikelyWords.power(new LikelyRange(601, 684, 749)).replace('\u00a0', ' '));
    }
}
