package simmerpoint.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FryingAssessmentTest {
    private static final double AREA = Math.PI * 0.12 * 0.12;

    /** Rings by the ratings of ENARGAS 2020 and 49 to 52 % into the pan, over a pan of 24 cm (derived). */
    @ParameterizedTest
    @CsvSource({"60, NO_FRYING", "250, GENTLE", "585, FRY", "825, SEAR", "1060, SEAR"})
    void hobsFryAsCooksKnow(double wattsIntoPan, FryingLevel level) {
        FryingAssessment frying = FryingAssessment.read(wattsIntoPan / AREA, 0.2, AREA, FryingThresholds.USUAL);
        assertEquals(level, frying.level());
        assertEquals(wattsIntoPan, frying.hobWattsOnThisPan(), 1e-9);
        assertEquals(FryingAssessment.Spread.EVEN, frying.spread());
    }

    /**
     * Pulling a long dish back by a hand's breadth keeps the watts and halves the hottest flux (an independent tracer and
     * common practice): the frying level falls, the heat level does not.
     */
    @Test
    void boilingReadsTheWattsAndFryingTheFlux() {
        HeatLevelModel levels = new HeatLevelModel(Pans.tea(2, true), HeatLevelThresholds.USUAL);
        assertEquals(levels.level(AbsorbedLight.onUnderside(400)), levels.level(AbsorbedLight.onUnderside(390)));
        FryingAssessment near = FryingAssessment.read(24_000, 1.1, AREA, FryingThresholds.USUAL);
        FryingAssessment back = FryingAssessment.read(12_000, 0.5, AREA, FryingThresholds.USUAL);
        assertNotEquals(near.level(), back.level());
        assertEquals(FryingAssessment.Spread.HOT_SPOT, near.spread());
        assertEquals(FryingAssessment.Spread.PATCHY, back.spread());
    }

    @Test
    void nonsenseIsRefused() {
        assertThrows(
                IllegalArgumentException.class,
                () -> FryingAssessment.read(Double.NaN, 0, AREA, FryingThresholds.USUAL));
        assertThrows(IllegalArgumentException.class, () -> new FryingThresholds(4000, 3000, 18_000, 0.3, 0.7));
    }

    /** Small 0.57 to 0.60, medium 0.80 to 0.85, large 1.03 to 1.09 kW into the pan (ENARGAS 2020 ratings, derived). */
    @ParameterizedTest
    @CsvSource({
        "20, far less than the lowest flame of a gas ring",
        "80, less than a low flame that keeps a lidded pan at a simmer",
        "160, about a low flame that keeps a lidded pan at a simmer",
        "300, about half of a small gas ring on full",
        "380, about two thirds of a small gas ring on full",
        "400, a little below a small gas ring on full",
        "500, a little below a small gas ring on full",
        "585, about a small gas ring on full",
        "700, between a small gas ring and a medium gas ring on full",
        "825, about a medium gas ring on full",
        "950, between a medium gas ring and a large gas ring on full",
        "1060, about a large gas ring on full",
        "1400, more than a large gas ring on full",
        "2120, about 2.0 times a large gas ring on full"
    })
    void wattsAreSaidAsACookWould(double watts, String words) {
        assertEquals(words, BurnerComparison.compare(watts));
    }

    /** Kilocalories an hour by 49 to 52 %, rounded to 10 W: the ring figures themselves. */
    @Test
    void ringsFollowFromRatingsAndEfficiency() {
        double[] kilocalories = {1000, 1400, 1800};
        for (int k = 0; k < kilocalories.length; k++) {
            double rating = kilocalories[k] * 4186.8 / 3600;
            assertEquals(0.49 * rating, GasBurner.ALL.get(k).lowWatts(), 6);
            assertEquals(0.52 * rating, GasBurner.ALL.get(k).highWatts(), 6);
        }
        assertThrows(IllegalArgumentException.class, () -> BurnerComparison.compare(Double.NaN));
    }
}
