package simmerpoint.heat.losses;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import simmerpoint.heat.AbsorbedLight;
import simmerpoint.heat.LikelyRange;
import simmerpoint.heat.PanMaterial;
import simmerpoint.heat.Pans;
import simmerpoint.heat.Surroundings;
import simmerpoint.heat.ThermalPan;
import simmerpoint.pan.Pan;

class DryPanTest {
    private static final Surroundings STILL = new Surroundings(20, 0, 0, 0.5, false);

    private static ThermalPan skillet(double height) {
        return ThermalPan.of(
                new Pan(0.24, height, Pans.BLACK), PanMaterial.find("cast iron").orElseThrow(), 2, false);
    }

    /**
     * A bare plate with 400 W: radiation from both sides alone would hold 399 °C (Stefan and Boltzmann, emissivity 0.87 and
     * 0.85, derived), and with 15 W/(m² K) of convection besides still 200 °C; the truth is between.
     */
    @Test
    void plateSettlesBetweenTheLimits() {
        double area = Math.PI * 0.0144;
        double radiationOnly =
                Math.pow(400 / (area * 5.670374e-8 * (0.87 + 0.85)) + Math.pow(293.15, 4), 0.25) - 273.15;
        LikelyRange celsius = new DryPan(skillet(1e-3), STILL, 0.85, 0).settles(AbsorbedLight.onUnderside(400));
        assertTrue(celsius.likely() < radiationOnly && celsius.likely() > 200, celsius + " < " + radiationOnly);
        assertTrue(celsius.low() < celsius.likely() - 10 && celsius.high() > celsius.likely() + 10, celsius.toString());
    }

    /** At the settled temperature what radiates is below the light, and it is 20 °C without light under a roof. */
    @Test
    void withoutLightItIsAsWarmAsTheAir() {
        assertEquals(
                20,
                new DryPan(skillet(0.04), STILL, 0.85, 0)
                        .settles(AbsorbedLight.NOTHING)
                        .likely(),
                1e-3);
    }

    @Test
    void wallWindAndOilCoolOrSlowIt() {
        AbsorbedLight sun = AbsorbedLight.onUnderside(400);
        DryPan pan = new DryPan(skillet(0.04), STILL, 0.85, 0);
        double plain = pan.settles(sun).likely();
        double windy = new DryPan(skillet(0.04), new Surroundings(20, 3, 0, 0.5, false), 0.85, 0)
                .settles(sun)
                .likely();
        double tall = new DryPan(skillet(0.12), STILL, 0.85, 0).settles(sun).likely();
        double bright = new DryPan(skillet(0.04), STILL, 0.2, 0).settles(sun).likely();
        assertTrue(windy < plain && tall < plain && bright > plain, plain + ", " + windy + ", " + tall + ", " + bright);
        double oiled =
                new DryPan(skillet(0.04), STILL, 0.85, 0.05).secondsTo(180, sun).likely();
        double dry = pan.secondsTo(180, sun).likely();
        assertEquals((2 * 460 + 0.05 * 2000) / (2 * 460), oiled / dry, 1e-9);
        // C·ΔT/P is the least it can take; at most it takes C·ΔT over what is spare at 180 °C.
        double stored = 2 * 460 * 160;
        double held = wattsToHold(pan, 180);
        assertTrue(dry > stored / 400 && dry < stored / (400 - held), dry + " s with " + held + " W to hold");
    }

    /** Light that settles at a temperature, by halving. */
    private static double wattsToHold(DryPan pan, double celsius) {
        double low = 0;
        double high = 2000;
        for (int k = 0; k < 40; k++) {
            double middle = (low + high) / 2;
            if (pan.settles(AbsorbedLight.onUnderside(middle)).likely() < celsius) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    @Test
    void weakLightNeverFries() {
        DryPan pan = new DryPan(skillet(0.04), STILL, 0.85, 0);
        assertEquals(
                Double.POSITIVE_INFINITY,
                pan.secondsTo(180, AbsorbedLight.onUnderside(60)).low());
        assertEquals(0, pan.secondsTo(10, AbsorbedLight.onUnderside(60)).high());
    }
}
