package simmerpoint.heat.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.ToDoubleFunction;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import simmerpoint.heat.AbsorbedLight;
import simmerpoint.heat.PanContents;
import simmerpoint.heat.PanMaterial;
import simmerpoint.heat.Surroundings;
import simmerpoint.heat.ThermalPan;
import simmerpoint.heat.losses.LossFactors;
import simmerpoint.pan.Finish;
import simmerpoint.pan.Pan;

/** Laws that hold for any pan, water, light and weather. */
class HeatingSimulationProperties {
    private static PotModel pot(double width, double fill, double air, double wind, double altitude, boolean lidOn) {
        Pan pan = new Pan(width, width / 2, new Finish("soot", 0.95));
        ThermalPan vessel =
                ThermalPan.of(pan, PanMaterial.all().get((int) (1000 * width) % 6), 20 * width * width, lidOn);
        PanContents contents = new PanContents(fill * vessel.brimfulKilograms(), 10);
        return PotModel.of(vessel, contents, Surroundings.outdoors(air, wind, altitude), LossFactors.LIKELY);
    }

    @Property(seed = "42", tries = 60)
    void energyBalanceClosesOverTheWholeCurve(
            @ForAll @DoubleRange(min = 0.08, max = 0.5) double width,
            @ForAll @DoubleRange(min = 0.05, max = 1) double fill,
            @ForAll @DoubleRange(min = -15, max = 45) double air,
            @ForAll @DoubleRange(min = 0, max = 8) double wind,
            @ForAll @DoubleRange(min = 0, max = 5000) double altitude,
            @ForAll @DoubleRange(min = 0, max = 3000) double watts,
            @ForAll boolean lidOn) {
        PotModel pot = pot(width, fill, air, wind, altitude, lidOn);
        AbsorbedLight sun = new AbsorbedLight(0.8, 0.08, 0.07, 0.05).times(watts);
        List<LightInterval> intervals = List.of(
                new LightInterval(3000, sun),
                new LightInterval(300, sun.times(0.1)),
                new LightInterval(2000, sun),
                new LightInterval(1500, AbsorbedLight.NOTHING));
        TemperatureHistory temperatureHistory = HeatingSimulation.temperatureHistory(pot, 10, intervals, 20);
        EnergyBalance since = temperatureHistory.last().since();
        double turnover = 1 + since.absorbed() + Math.abs(since.convection()) + Math.abs(since.radiation());
        double lostToAir = since.convection() + since.radiation();
        double accounted = lostToAir + since.steam() + since.carried() + since.stored();
        assertEquals(since.absorbed() / turnover, accounted / turnover, 1e-7);

        // Trapezoids under the drawn terms, apart from the integrator's sums: points 20 s apart, kinks where vapour
        // stops.
        assertEquals(integral(temperatureHistory, p -> p.absorbedWatts()), since.absorbed(), 1e-6 * turnover);
        assertEquals(
                integral(temperatureHistory, p -> p.losses().convectionWatts()), since.convection(), 2e-3 * turnover);
        assertEquals(
                integral(temperatureHistory, p -> p.losses().radiationWatts()), since.radiation(), 2e-3 * turnover);
        assertEquals(integral(temperatureHistory, p -> p.losses().steamWatts()), since.steam(), 2e-3 * turnover);
        assertTrue(temperatureHistory.points().stream().allMatch(p -> p.celsius() <= pot.boilingCelsius() + 1e-6));
    }

    private static double integral(
            TemperatureHistory temperatureHistory, ToDoubleFunction<TemperatureHistory.Point> watts) {
        double sum = 0;
        List<TemperatureHistory.Point> p = temperatureHistory.points();
        for (int k = 1; k < p.size(); k++) {
            double span = p.get(k).seconds() - p.get(k - 1).seconds();
            sum += span * (watts.applyAsDouble(p.get(k)) + watts.applyAsDouble(p.get(k - 1))) / 2;
        }
        return sum;
    }

    @Property(seed = "43", tries = 60)
    void lossesRiseWithTemperatureAndMoreLightSettlesHigher(
            @ForAll @DoubleRange(min = 0.08, max = 0.5) double width,
            @ForAll @DoubleRange(min = 0.05, max = 1) double fill,
            @ForAll @DoubleRange(min = -30, max = 60) double air,
            @ForAll @DoubleRange(min = 0, max = 20) double wind,
            @ForAll @DoubleRange(min = 0, max = 1500) double watts,
            @ForAll boolean lidOn) {
        PotModel pot = pot(width, fill, air, wind, 300, lidOn);
        AbsorbedLight light = new AbsorbedLight(0.8, 0.1, 0.05, 0.05).times(watts);
        double before = Double.NEGATIVE_INFINITY;
        for (double t = -40; t < pot.boilingCelsius(); t += 5) {
            double now = pot.losses().at(t, light).total();
            assertTrue(now > before, "losses fall at " + t + " °C");
            before = now;
        }
        double settled = SteadyState.celsius(pot, light);
        assertTrue(SteadyState.celsius(pot, light.times(1.2)) >= settled, "more light, cooler pan");
        boolean boils = settled == pot.boilingCelsius();
        assertTrue(boils || Math.abs(pot.surplusWatts(settled, light)) < 1e-4, "unbalanced at " + settled);
    }

    @Property(seed = "44", tries = 60)
    void lidNeverCostsTime(
            @ForAll @DoubleRange(min = 0.1, max = 0.4) double width,
            @ForAll @DoubleRange(min = 0.1, max = 0.9) double fill,
            @ForAll @DoubleRange(min = 0, max = 5) double wind,
            @ForAll @DoubleRange(min = 50, max = 3000) double watts) {
        AbsorbedLight light = AbsorbedLight.onUnderside(watts);
        PotModel covered = pot(width, fill, 20, wind, 0, true);
        PotModel open = pot(width, fill, 20, wind, 0, false);
        double goal = covered.boilingCelsius();
        double with = WarmingTime.seconds(covered, light, 10, goal).orElse(Double.POSITIVE_INFINITY);
        double without = WarmingTime.seconds(open, light, 10, goal).orElse(Double.POSITIVE_INFINITY);
        assertTrue(with <= without * 1.002, with + " s with, " + without + " s without");
    }
}
