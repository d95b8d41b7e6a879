package simmerpoint.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import simmerpoint.heat.balance.HeatLevelModel;

class FryingAssessmentTest {
    private static final double AREA = Math.PI * 0.12 * 0.12;

    /** Rings by the ratings of ENARGAS 2020 and 49 to 52 % into the pan, over a pan of 24 cm (derived). */
    @ParameterizedTest
    @CsvSource({"60, NO_FRYING", "250, GENTLE", "585, FRY", "825, SEAR", "1060, SEAR"})
    void hobsFryAsCooksKnow(double wattsIntoPan, FryingLevel level) {
        FryingAssessment frying = FryingAssessment.read(wattsIntoPan / AREA, 0.2, FryingThresholds.USUAL);
        assertEquals(level, frying.level());
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
        FryingAssessment near = FryingAssessment.read(24_000, 1.1, FryingThresholds.USUAL);
        FryingAssessment back = FryingAssessment.read(12_000, 0.5, FryingThresholds.USUAL);
        assertNotEquals(near.level(), back.level());
        assertEquals(FryingAssessment.Spread.HOT_SPOT, near.spread());
        assertEquals(FryingAssessment.Spread.PATCHY, back.spread());
    }

    @Test
    void nonsenseIsRefused() {
        assertThrows(
                IllegalArgumentException.class, () -> FryingAssessment.read(Double.NaN, 0, FryingThresholds.USUAL));
        assertThrows(IllegalArgumentException.class, () -> new FryingThresholds(4000, 3000, 18_000, 0.3, 0.7));
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
    }
}
