package simmerpoint.heat.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import simmerpoint.heat.AbsorbedLight;
import simmerpoint.heat.balance.ParaboloidProtocol.Reading;
import simmerpoint.heat.losses.LinearLoss;

class ParaboloidProtocolTest {
    private static final double CAPACITY = 2 * 4186 + 0.8 * 900;

    /** Mullick, Kandpal and Kumar 1991 (formulas from memory), numbers worked here. */
    @Test
    void workedExample() {
        assertEquals(9092, CAPACITY, 1e-9);
        ParaboloidProtocol pan = new ParaboloidProtocol(CAPACITY, 0.08, 1.13, 20, 0.6);
        assertEquals(5682.50, pan.timeConstantSeconds(), 1e-5 * 5682.5);
        assertEquals(1420.91, pan.secondsToBoil(75, 800), 1e-5 * 1420.91);
        assertEquals(1257.19, CAPACITY * 75 / (0.6 * 1.13 * 800), 0.01);
        assertEquals(Double.POSITIVE_INFINITY, pan.secondsToBoil(75, 150));
    }

    /** Simulate both curves, recover both coefficients. */
    @Test
    void simulatedTestGivesItsCoefficientsBack() {
        double panArea = 0.08;
        double aperture = 1.13;
        PotModel pot = new PotModel(new LinearLoss(20 * panArea, 25), 720, 2, 100);
        TemperatureHistory cooling = HeatingSimulation.temperatureHistory(
                pot, 90, List.of(new LightInterval(7200, AbsorbedLight.NOTHING)), 300);
        double constant = ParaboloidProtocol.timeConstant(cooling.points().stream()
                .map(p -> new Reading(p.seconds(), p.celsius() - 25))
                .toList());
        double loss = ParaboloidProtocol.lossFactor(CAPACITY, panArea, constant);
        assertEquals(20, loss, 1e-6 * 20);

        AbsorbedLight light = AbsorbedLight.onUnderside(0.6 * aperture * 800);
        TemperatureHistory heating =
                HeatingSimulation.temperatureHistory(pot, 30, List.of(new LightInterval(1000, light)), 100);
        double optical = ParaboloidProtocol.opticalFactor(
                loss, panArea, aperture, constant, 5, heating.last().celsius() - 25, 800, 1000);
        assertEquals(0.6, optical, 1e-6);

        double seconds = WarmingTime.seconds(pot, light, 25, 100).orElseThrow();
        ParaboloidProtocol found = new ParaboloidProtocol(CAPACITY, panArea, aperture, loss, optical);
        assertEquals(seconds, found.secondsToBoil(75, 800), 1e-5 * seconds);
    }

    @Test
    void curveThatDoesNotCoolIsRefused() {
        List<Reading> warming = List.of(new Reading(0, 20), new Reading(100, 30));
        assertThrows(IllegalArgumentException.class, () -> ParaboloidProtocol.timeConstant(warming));
        assertThrows(IllegalArgumentException.class, () -> new Reading(0, Double.NaN));
    }
}
