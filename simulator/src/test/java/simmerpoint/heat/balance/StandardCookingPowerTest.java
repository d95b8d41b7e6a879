package simmerpoint.heat.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import simmerpoint.heat.AbsorbedLight;
import simmerpoint.heat.balance.StandardCookingPower.Interval;
import simmerpoint.heat.losses.LinearLoss;

class StandardCookingPowerTest {
    /** Clauses 7.2 to 7.5 of ASAE S580, numbers worked here: 2 kg from 50 to 62 °C in 600 s at 850 W/m². */
    @Test
    void powerIsThatOfTheStandard() {
        Interval interval = new Interval(600, 2, 50, 62, 56, 25, 850);
        assertEquals(167.440, interval.watts(), 1e-3);
        assertEquals(137.892, interval.standardisedWatts(), 1e-3);
        assertEquals(31, interval.difference(), 1e-12);
        // 7 kg per m²: a dish 1.2 m wide takes 7.917 kg (from memory of the standard).
        assertEquals(7.917, StandardCookingPower.LOAD * Math.PI * 0.36, 1e-3);
    }

    private static List<Interval> simulated(boolean trueMean) {
        double u = 2;
        double capacity = 9092;
        PotModel pot = new PotModel(new LinearLoss(u, 25), 0, capacity / 4186, 100);
        AbsorbedLight light = AbsorbedLight.onUnderside(300);
        TemperatureHistory temperatureHistory =
                HeatingSimulation.temperatureHistory(pot, 30, List.of(new LightInterval(2400, light)), 600);
        List<TemperatureHistory.Point> points = temperatureHistory.points();
        List<Interval> intervals = new ArrayList<>();
        for (int k = 1; k < points.size(); k++) {
            TemperatureHistory.Point from = points.get(k - 1);
            TemperatureHistory.Point to = points.get(k);
            double seconds = to.seconds() - from.seconds();
            // Energy balance over the interval gives the true mean: lost = U·(mean − air)·time.
            double lost = to.since().convection() - from.since().convection();
            double mean = trueMean ? 25 + lost / u / seconds : (from.celsius() + to.celsius()) / 2;
            intervals.add(new Interval(seconds, capacity / 4186, from.celsius(), to.celsius(), mean, 25, 800));
        }
        return intervals;
    }

    /** A pan of linear loss gives a straight line of slope −U·700/I and intercept 700/I times its light (derived). */
    @Test
    void simulatedTestGivesItsCoefficientsBack() {
        StandardCookingPower.Line line = StandardCookingPower.line(simulated(true));
        assertEquals(-2 * 700 / 800.0, line.wattsPerKelvin(), 1e-6);
        assertEquals(300 * 700 / 800.0, line.interceptWatts(), 1e-5);
        assertEquals((300 - 100) * 700 / 800.0, line.standardPowerWatts(), 1e-4);
        assertEquals(1, line.determination(), 1e-9);
    }

    /**
     * The cooking power of a pan of linear loss is (light − U · 50 K) times the water's share of the heat capacity (derived
     * here), and 700/I times that is the single figure of a simulated test by ASAE S580, whose powers count the water alone.
     */
    @Test
    void cookingPowerIsTheSingleFigureOfTheTest() {
        double u = 2;
        double water = 1.5;
        double empty = 600;
        PotModel pot = new PotModel(new LinearLoss(u, 25), empty, water, 100);
        AbsorbedLight light = AbsorbedLight.onUnderside(300);
        double closed = (300 - u * 50) * water * 4186 / (water * 4186 + empty);
        assertEquals(closed, pot.waterHeatWatts(75, light), 1e-9);
        List<TemperatureHistory.Point> points = HeatingSimulation.temperatureHistory(
                        pot, 30, List.of(new LightInterval(1800, light)), 600)
                .points();
        List<Interval> intervals = new ArrayList<>();
        for (int k = 1; k < points.size(); k++) {
            TemperatureHistory.Point from = points.get(k - 1);
            TemperatureHistory.Point to = points.get(k);
            double seconds = to.seconds() - from.seconds();
            double mean = 25 + (to.since().convection() - from.since().convection()) / u / seconds;
            intervals.add(new Interval(seconds, water, from.celsius(), to.celsius(), mean, 25, 800));
        }
        assertEquals(closed * 700 / 800, StandardCookingPower.line(intervals).standardPowerWatts(), 1e-4);
    }

    /** With the mean of the two ends the slope is low by (U·600/(M c))²/12 = 0.145 % (derived). */
    @Test
    void meanOfTheEndsMakesTheSlopeALittleLow() {
        double slope = StandardCookingPower.line(simulated(false)).wattsPerKelvin();
        assertEquals(0.00145, 1 - slope / (-2 * 700 / 800.0), 2e-5);
    }

    @Test
    void tooFewIntervalsAreRefused() {
        Interval interval = new Interval(600, 2, 50, 62, 56, 25, 850);
        assertThrows(
                IllegalArgumentException.class, () -> StandardCookingPower.line(List.of(interval, interval, interval)));
        assertThrows(IllegalArgumentException.class, () -> new Interval(600, 2, 50, 62, 56, 25, 0));
    }
}
