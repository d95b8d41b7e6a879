package simmerpoint.heat.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import simmerpoint.heat.AbsorbedLight;
import simmerpoint.heat.Pans;
import simmerpoint.heat.ThermalPan;
import simmerpoint.heat.losses.LinearLoss;
import simmerpoint.heat.losses.Losses;

class DeepOilTest {
    private static final AbsorbedLight LIGHT = AbsorbedLight.onUnderside(700);
    private static final double AIR = 20;

    /**
     * Without losses: C dT = P dt, with a specific heat that rises straight: the mean of both ends. 3 l of oil on 1.8 kW from 20 to
     * 180 °C then take 10 min; household fryers of that size are sold as hot in 8 to 12 min (common practice).
     */
    @Test
    void withoutLossesItIsHeatContentOverPower() {
        double kilograms = 3e-3 * 920;
        DeepOil oil =
                new DeepOil((t, light) -> new Losses(0, 0, 0), 500, kilograms, AIR, AbsorbedLight.onUnderside(1800));
        double mean = 1970 + 3.4 * 80;
        double seconds = oil.secondsUntil(180).orElseThrow();
        assertEquals((500 + kilograms * mean) * 160 / 1800, seconds, 1e-6 * seconds);
        assertTrue(seconds > 8 * 60 && seconds < 12 * 60, seconds + " s");
    }

    /** Losses that rise straight, U (T − air): it ends at air + P ÷ U, and warms as the integral of C dT ÷ (P − U (T − air)). */
    @Test
    void straightLossesWarmByTheClosedForm() {
        double u = 3;
        DeepOil oil = new DeepOil(new LinearLoss(u, AIR), 600, 1.5, AIR, LIGHT);
        assertEquals(AIR + 700 / u, oil.endCelsius(), 0.02);
        double c0 = 600 + 1.5 * 1970;
        double slope = 1.5 * 3.4;
        double x = 160;
        double closed = -slope * x / u + (c0 + slope * 700 / u) / u * -Math.log(1 - u * x / 700);
        assertEquals(closed, oil.secondsUntil(AIR + x).orElseThrow(), 1e-5 * closed);
        assertTrue(oil.secondsUntil(AIR + 234).isEmpty());
    }

    /** A real pan: many small Euler steps of the same balance end at the same time; the curve rises all the way. */
    @Test
    void aRealPanWarmsAsSmallStepsDo() {
        ThermalPan pan = Pans.teaPan(false);
        DeepOil oil = DeepOil.of(pan, 0.04, Pans.KITCHEN, LIGHT);
        assertEquals(920 * pan.levelArea() * 0.04, oil.oilKilograms(), 1e-12);
        double t = oil.startCelsius();
        double seconds = 0;
        while (t < 150) {
            double capacity = oil.panHeatCapacity() + oil.oilKilograms() * (1970 + 3.4 * (t - 20));
            t += 0.1 * (LIGHT.total() - oil.losses().at(t, LIGHT).total()) / capacity;
            seconds += 0.1;
        }
        assertEquals(seconds, oil.secondsUntil(150).orElseThrow(), 1e-3 * seconds);
        List<DeepOil.Point> curve = oil.curve(150);
        for (int k = 1; k < curve.size(); k++) {
            assertTrue(curve.get(k).seconds() > curve.get(k - 1).seconds());
        }
        assertEquals(0, LIGHT.total() - oil.losses().at(oil.endCelsius(), LIGHT).total(), 0.1);
    }

    /** Oil does not steam: at 90 °C it loses less than as much water without a lid. */
    @Test
    void oilDoesNotSteam() {
        ThermalPan pan = Pans.teaPan(false);
        DeepOil oil = DeepOil.of(pan, 0.04, Pans.KITCHEN, LIGHT);
        PotModel water = PotModel.of(
                pan,
                new simmerpoint.heat.PanContents(1000 * pan.levelArea() * 0.04, 20),
                Pans.KITCHEN,
                simmerpoint.heat.losses.LossFactors.LIKELY);
        assertEquals(0, oil.losses().at(90, LIGHT).steamWatts());
        assertTrue(oil.losses().at(90, LIGHT).total()
                < 0.7 * water.losses().at(90, LIGHT).total());
    }
}
