package simmerpoint.safety.risk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class RiskTablesTest {
    /** EPA, FEMA, DOT: Handbook of Chemical Hazard Analysis Procedures, 1989, table 4.2. */
    @ParameterizedTest
    @CsvSource({
        "1, 115, 663",
        "2, 45, 187",
        "3, 27, 92",
        "4, 18, 57",
        "5, 13, 40",
        "6, 11, 30",
        "8, 7, 20",
        "10, 5, 14",
        "12, 4, 11"
    })
    void skinTimesAreThoseOfTheTableAtItsRows(double kilowatts, double pain, double burn) {
        assertEquals(pain, SkinTimes.pain(1000 * kilowatts).orElseThrow(), 1e-9);
        assertEquals(burn, SkinTimes.burn(1000 * kilowatts).orElseThrow(), 1e-9);
    }

    /** t = 200 q^−1.46 s (DESR 6055.09): 1.6 kW/m² 100.697 s, 2.5 52.4853, 5 19.0780, 10 6.93474. */
    @ParameterizedTest
    @CsvSource({"1.6, 100.697", "2.5, 52.4853", "5, 19.0780", "10, 6.93474"})
    void theSoonerOfTwoLawsCounts(double kilowatts, double seconds) {
        assertEquals(seconds, SkinTimes.soonestBurn(1000 * kilowatts).orElseThrow(), 1e-3);
    }

    @Test
    void strongerLightIsNeverSlower() {
        for (double q = 1000; q < 3e5; q *= 1.03) {
            assertTrue(
                    SkinTimes.pain(q).orElseThrow() >= SkinTimes.pain(1.03 * q).orElseThrow());
            assertTrue(SkinTimes.burn(q).orElseThrow() >= SkinTimes.pain(q).orElseThrow());
            for (Stuff stuff : Stuff.values()) {
                assertTrue(stuff.harmed(q).orElse(1e9) >= stuff.harmed(1.03 * q).orElse(1e9), stuff + " " + q);
            }
        }
    }

    /**
     * Glasstone and Dolan 1977, tables 7.35 and 7.40: exposures for pulses of about 2, 10, 32 s; mean fluxes of 80 % of them in
     * kW/m² (66.9, 20.1, 8.4 for dry beech leaves). Exact at the knots.
     */
    @ParameterizedTest
    @CsvSource({
        "DRY_GRASS, 4, 6, 8",
        "PAPER, 4, 6, 11",
        "CARD, 16, 20, 40",
        "DARK_CLOTH, 10, 15, 20",
        "PLYWOOD, 9, 16, 20"
    })
    void thingsCatchFireAfterTheTablesTimes(Stuff stuff, double two, double ten, double thirty) {
        double scale = 0.8 * 41840;
        assertEquals(2, stuff.harmed(scale * two / 2 * (1 + 1e-9)).orElseThrow(), 1e-6);
        assertEquals(10, stuff.harmed(scale * ten / 10).orElseThrow(), 1e-6);
        assertEquals(32, stuff.harmed(scale * thirty / 32 * (1 + 1e-9)).orElseThrow(), 1e-6);
        assertTrue(stuff.harmed(scale * thirty / 32 * 0.99).isEmpty());
        assertTrue(stuff.isSooner(scale * two) && !stuff.isSooner(scale * ten / 10));
    }

    /** Visible charring of bare wood at 10 to 15 cal/cm² (section 7.38): 20 kW/m² for 20 to 30 s. */
    @Test
    void woodCharsInTwentyToThirtySecondsAtTwentyKilowatts() {
        assertEquals(20.9, Stuff.WOOD.harmed(20_000).orElseThrow(), 0.1);
        assertTrue(Stuff.WOOD.harmed(8_000).isEmpty());
    }

    /** The fluxes at which dry leaves catch fire within 32, 10 and 2 s, rounded down by up to 5 %. */
    @ParameterizedTest
    @EnumSource(
            value = Hazard.class,
            names = {"TINDER", "CHAR"})
    void hazardsOfFireBeginJustBelowTheTable(Hazard hazard) {
        double seconds = hazard == Hazard.TINDER ? 32 : 10;
        assertTrue(Stuff.DRY_GRASS.harmed(1.06 * hazard.wattsPerSquareMetre()).orElseThrow() <= seconds);
    }

    @Test
    void theWorstFireIsNamedAndNoneBelow() {
        assertEquals(Optional.empty(), Hazard.ofFire(4_300));
        assertEquals(Optional.of(Hazard.SMOULDER), Hazard.ofFire(4_301));
        assertEquals(Optional.of(Hazard.FLASH), Hazard.ofFire(90_000));
        assertEquals(Optional.of(Hazard.BURST), Hazard.ofFire(1e9));
        assertEquals(Optional.empty(), Hazard.ofFire(Double.NaN));
        assertEquals(Optional.of(Hazard.CHAR), Hazard.find("char"));
        assertTrue(Hazard.words().contains("discomfort, pain"));
    }

    @ParameterizedTest
    @EnumSource(Hazard.class)
    void aHazardBeginsAboveItsThreshold(Hazard hazard) {
        double flux = hazard.wattsPerSquareMetre();
        assertEquals(Optional.of(hazard), Hazard.worst(Math.nextUp(flux)));
        assertTrue(
                Hazard.worst(flux).filter(worst -> worst.compareTo(hazard) >= 0).isEmpty());
    }
}
