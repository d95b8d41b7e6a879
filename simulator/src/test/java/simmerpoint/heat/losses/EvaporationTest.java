package simmerpoint.heat.losses;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import simmerpoint.heat.Pans;
import simmerpoint.heat.Surroundings;
import simmerpoint.heat.ThermalPan;
import simmerpoint.pan.Pan;

class EvaporationTest {
    private static Losses open(double celsius, double diameter, Surroundings surroundings) {
        ThermalPan vessel = ThermalPan.of(new Pan(diameter, 0.1, Pans.BLACK), Pans.STEEL, 1, false);
        return open(vessel, 0, celsius, surroundings);
    }

    private static Losses open(ThermalPan vessel, double rim, double celsius, Surroundings surroundings) {
        return new OpenWaterLosses(vessel, rim, surroundings, LossFactors.LIKELY).at(celsius + 273.15, 0);
    }

    /** Oke 1988 (from memory): skimming from a depth of 0.65 widths on, with a third of the wind; still air knows no rim. */
    @Test
    void theRimSheltersFromTheWind() {
        assertEquals(1, OpenWaterLosses.windShare(0), 0);
        assertEquals(1.0 / 3, OpenWaterLosses.windShare(0.65), 1e-12);
        assertEquals(1.0 / 3, OpenWaterLosses.windShare(2), 1e-12);
        ThermalPan pan = Pans.teaPan(false);
        Surroundings windy = new Surroundings(20, 3, 0, 0.5, false);
        double brimful = open(pan, 0, 80, windy).steamWatts();
        double low = open(pan, 0.08, 80, windy).steamWatts();
        double still = open(pan, 0.08, 80, Pans.KITCHEN).steamWatts();
        assertEquals(open(pan, 0, 80, Pans.KITCHEN).steamWatts(), still, 1e-9);
        assertTrue(low < 0.9 * brimful && low > still, still + ", " + low + ", " + brimful);
    }

    /** Dunkle's form of 1961 worked outside this project: air 20 °C, half humid, still. */
    @ParameterizedTest
    @CsvSource({"60, 1086.7", "80, 3402.0", "90, 5768.0", "95, 7476.6"})
    void stillWaterGivesOffWhatDunkleSays(double celsius, double wattsPerSquareMetre) {
        double area = Math.PI * 0.01;
        assertEquals(
                wattsPerSquareMetre, open(celsius, 0.2, Pans.KITCHEN).steamWatts() / area, 1e-3 * wattsPerSquareMetre);
    }

    @Test
    void panOfTwentyCentimetresGivesOff181WattsAtNinetyDegrees() {
        assertEquals(181, open(90, 0.2, Pans.KITCHEN).steamWatts(), 1);
    }

    /**
     * A mug of hot water without a lid lost 40 W, 8 to 10 kW/m² of open water (one run by a metrologist; the mug's width of
     * 7 to 8 cm is a guess): band of 50 % either way about 9, from 80 to 95 °C.
     */
    @Test
    void mugIsInBand() {
        double flux = open(92, 0.075, Pans.KITCHEN).total() / (Math.PI * 0.0375 * 0.0375);
        assertTrue(flux > 4500 && flux < 13_500, "mug loses " + flux + " W/m²");
    }

    /** With a lid that mug lost 7.5 times less (wall included in both); ours for the top alone must save at least that. */
    @Test
    void lidStopsMostOfIt() {
        ThermalPan vessel = ThermalPan.of(new Pan(0.075, 0.1, Pans.BLACK), Pans.STEEL, 0.3, true);
        double covered = new LidLosses(vessel, Pans.KITCHEN, LossFactors.LIKELY)
                .at(365.15, 0)
                .total();
        double bare = open(92, 0.075, Pans.KITCHEN).total();
        assertTrue(covered > 0 && bare / covered > 5 && bare / covered < 20, "lid saves " + bare / covered + " times");
    }

    @Test
    void lidIsBetweenWaterAndAirAndNearTheWater() {
        LidLosses lid = new LidLosses(Pans.teaPan(true), Pans.KITCHEN, LossFactors.LIKELY);
        double at95 = lid.lidKelvin(368.15, 0) - 273.15;
        assertTrue(at95 > 80 && at95 < 95, "lid at " + at95 + " °C");
        assertTrue(lid.lidKelvin(368.15, 40) - 273.15 > at95, "sunlight does not warm the lid");
    }

    /** In the sun over cold water the lid is warmer than the water; it passes heat down and loses the rest. */
    @Test
    void sunOnTheLidWarmsColdWater() {
        LidLosses lid = new LidLosses(Pans.teaPan(true), Pans.KITCHEN, LossFactors.LIKELY);
        double celsius = lid.lidKelvin(283.15, 40) - 273.15;
        assertTrue(celsius > 20, "lid at " + celsius + " °C");
        double lost = lid.at(283.15, 40).total();
        assertTrue(lost < 40, "of 40 W " + lost + " are lost");
    }

    @Test
    void windAndDryAirTakeMore() {
        double still = open(80, 0.2, Pans.KITCHEN).steamWatts();
        double windy = open(80, 0.2, new Surroundings(20, 3, 0, 0.5, false)).steamWatts();
        double dry = open(80, 0.2, new Surroundings(20, 0, 0, 0.1, false)).steamWatts();
        assertTrue(windy > still && windy < 4 * still, "wind: " + windy + " against " + still + " W");
        assertTrue(dry > still && dry < 1.1 * still, "dry air: " + dry + " against " + still + " W");
    }

    /** Just below boiling the drive is the whole air pressure everywhere, so mountains change little (derived). */
    @Test
    void justBelowBoilingAltitudeMattersLittle() {
        Surroundings high = new Surroundings(20, 0, 4000, 0.5, false);
        double low = open(Pans.KITCHEN.boilingCelsius(), 0.2, Pans.KITCHEN).steamWatts();
        double up = open(high.boilingCelsius(), 0.2, high).steamWatts();
        assertEquals(1, up / low, 0.1);
    }
}
