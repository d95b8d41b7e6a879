package simmerpoint.heat.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import simmerpoint.heat.AbsorbedLight;
import simmerpoint.heat.Pans;
import simmerpoint.heat.SaturatedWater;
import simmerpoint.heat.losses.LinearLoss;

class HeatingSimulationTest {
    private static PotModel linear(double wattsPerKelvin) {
        return new PotModel(new LinearLoss(wattsPerKelvin, 20), 0, 2, 100);
    }

    /** −(M c/U) ln((P − U·80)/P) and, without loss, M c·80/P: closed forms (derived), 2 kg from 20 to 100 °C. */
    @ParameterizedTest
    @CsvSource({"0, 500, 1339.52", "2, 500, 1614.384", "2, 300, 3190.318"})
    void timeToBoilMeetsTheClosedForm(double wattsPerKelvin, double watts, double seconds) {
        double found = WarmingTime.seconds(linear(wattsPerKelvin), AbsorbedLight.onUnderside(watts), 20, 100)
                .orElseThrow();
        double exact = wattsPerKelvin == 0
                ? 2 * 4186 * 80 / watts
                : -2 * 4186 / wattsPerKelvin * Math.log1p(-wattsPerKelvin * 80 / watts);
        assertEquals(exact, found, 1e-7 * exact);
        assertEquals(seconds, found, 1e-6 * seconds);
    }

    /** P = U (T − Ta) (derived): below 160 W it never boils, and says where it stops. */
    @Test
    void weakLightNeverBoils() {
        assertTrue(WarmingTime.seconds(linear(2), AbsorbedLight.onUnderside(159), 20, 100)
                .isEmpty());
        assertEquals(99.5, SteadyState.celsius(linear(2), AbsorbedLight.onUnderside(159)), 1e-7);
        assertEquals(20, SteadyState.celsius(linear(2), AbsorbedLight.NOTHING), 1e-7);
        assertEquals(100, SteadyState.celsius(linear(2), AbsorbedLight.onUnderside(161)), 1e-7);
    }

    /** Without sun a pan of linear loss cools by exp(−U t/(M c)); a 1 litre vacuum flask, 95 to 78 °C in 6 h, is 0.05 W/K. */
    @Test
    void coolingIsExponential() {
        double u = 4186 * Math.log(75.0 / 58.0) / 21_600;
        assertEquals(0.05, u, 0.001);
        PotModel flask = new PotModel(new LinearLoss(u, 20), 0, 1, 100);
        TemperatureHistory temperatureHistory = HeatingSimulation.temperatureHistory(
                flask, 95, List.of(new LightInterval(21_600, AbsorbedLight.NOTHING)), 1800);
        for (TemperatureHistory.Point point : temperatureHistory.points()) {
            assertEquals(20 + 75 * Math.exp(-u * point.seconds() / 4186), point.celsius(), 1e-6);
        }
        assertEquals(78, temperatureHistory.last().celsius(), 1e-6);
    }

    /** Boiling: surplus ÷ latent heat, 500 − 160 W; 2 kg last 3.64 h to a fiftieth (derived). */
    @Test
    void boilingTurnsTheSurplusIntoSteam() {
        LightInterval interval = new LightInterval(20_000, AbsorbedLight.onUnderside(500));
        TemperatureHistory temperatureHistory =
                HeatingSimulation.temperatureHistory(linear(2), 20, List.of(interval), 60);
        assertEquals(1614.384, temperatureHistory.boilSeconds().orElseThrow(), 1e-3);
        double rate = 340 / SaturatedWater.latentHeatJoulesPerKilogram(100);
        assertEquals(1614.384 + 1.96 / rate, temperatureHistory.drySeconds().orElseThrow(), 0.1);
        assertEquals(0.04, temperatureHistory.last().waterKilograms(), 1e-9);
        assertEquals(340, temperatureHistory.last().losses().steamWatts(), 1e-6);
        TemperatureHistory.Point last = temperatureHistory.last();
        assertEquals(last.absorbedWatts(), last.losses().total(), 1e-6);
    }

    /** A cloud of 5 min over a boiling pan: 80·(1 − exp(−U t/(M c))) = 5.53 K with U 2 W/K and 2 kg (closed form). */
    @Test
    void cloudCoolsAndTheSunBringsItBack() {
        AbsorbedLight sun = AbsorbedLight.onUnderside(500);
        List<LightInterval> intervals = List.of(
                new LightInterval(2000, sun),
                new LightInterval(300, AbsorbedLight.NOTHING),
                new LightInterval(1000, sun));
        TemperatureHistory temperatureHistory = HeatingSimulation.temperatureHistory(linear(2), 20, intervals, 10);
        double lost =
                80 * -Math.expm1(-2 * 300 / (temperatureHistory.points().get(0).waterKilograms() * 4186));
        double lowest = temperatureHistory.points().stream()
                .filter(p -> p.seconds() > 2000)
                .mapToDouble(TemperatureHistory.Point::celsius)
                .min()
                .orElseThrow();
        assertEquals(100 - lost, lowest, 0.2);
        assertEquals(100, temperatureHistory.last().celsius(), 1e-9);
        EnergyBalance since = temperatureHistory.last().since();
        double lostToAir = since.convection() + since.radiation();
        assertEquals(since.absorbed(), lostToAir + since.steam() + since.carried() + since.stored(), 1e-3);
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void curveOfARealPanIsOrderlyAndFinite(boolean lidOn) {
        CookingModel cooking = Pans.tea(2, lidOn);
        LightInterval sun = new LightInterval(5400, new AbsorbedLight(420, 20, 15, 30));
        TemperatureHistory temperatureHistory =
                cooking.temperatureHistory(List.of(sun, new LightInterval(3600, AbsorbedLight.NOTHING)), 30);
        double before = -1;
        for (TemperatureHistory.Point p : temperatureHistory.points()) {
            assertTrue(p.seconds() >= before, "time runs back at " + p.seconds());
            assertTrue(p.celsius() <= cooking.boilingCelsius() + 1e-6 && p.celsius() >= 19, "at " + p);
            assertTrue(Double.isFinite(p.losses().total()), "at " + p);
            before = p.seconds();
        }
        assertEquals(9000, before, 1e-6);
        assertEquals(temperatureHistory.last().celsius(), temperatureHistory.celsiusAt(1e6), 0);
        assertEquals(20, temperatureHistory.celsiusAt(0), 1e-12);
    }

    @Test
    void nonsenseIsRefused() {
        LightInterval interval = new LightInterval(10, AbsorbedLight.NOTHING);
        assertThrows(
                IllegalArgumentException.class,
                () -> HeatingSimulation.temperatureHistory(linear(2), 101, List.of(interval), 1));
        assertThrows(
                IllegalArgumentException.class,
                () -> HeatingSimulation.temperatureHistory(linear(2), 20, List.of(), 1));
        assertThrows(
                IllegalArgumentException.class,
                () -> HeatingSimulation.temperatureHistory(linear(2), 20, List.of(interval), 0));
        assertThrows(IllegalArgumentException.class, () -> new LightInterval(Double.NaN, AbsorbedLight.NOTHING));
    }
}
