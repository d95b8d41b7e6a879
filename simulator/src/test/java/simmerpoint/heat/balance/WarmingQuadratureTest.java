package simmerpoint.heat.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import simmerpoint.heat.AbsorbedLight;
import simmerpoint.heat.PanContents;
import simmerpoint.heat.Pans;
import simmerpoint.heat.Surroundings;
import simmerpoint.heat.losses.LossFactors;

class WarmingQuadratureTest {
    private static PotModel pot(boolean lid, double wind) {
        return PotModel.of(
                Pans.teaPan(lid), new PanContents(2, 20), Surroundings.outdoors(20, wind, 0), LossFactors.LIKELY);
    }

    /** Against Commons Math's Dormand-Prince integrator, good to 1e-9, from little to much more light than boiling takes. */
    @Test
    void agreesWithTheIntegrator() {
        for (boolean lid : new boolean[] {true, false}) {
            PotModel pot = pot(lid, 2);
            double boiling = pot.boilingCelsius();
            AbsorbedLight none = new AbsorbedLight(0, 0, 0, 0);
            double needed = -pot.surplusWatts(boiling, none);
            for (double times : new double[] {1.15, 1.5, 3, 8}) {
                AbsorbedLight light = new AbsorbedLight(times * needed, 0, 0, 0);
                double exact = WarmingTime.seconds(pot, light, 20, boiling).orElseThrow();
                assertEquals(
                        exact,
                        WarmingQuadrature.seconds(pot, light, 20, boiling).orElseThrow(),
                        5e-4 * exact);
            }
            OptionalDouble never =
                    WarmingQuadrature.seconds(pot, new AbsorbedLight(0.95 * needed, 0, 0, 0), 20, boiling);
            assertTrue(never.isEmpty());
        }
    }
}
