package simmerpoint.heat.balance;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import simmerpoint.heat.AbsorbedLight;
import simmerpoint.heat.ArgumentChecks;
import simmerpoint.heat.Surroundings;
import simmerpoint.heat.ThermalPan;
import simmerpoint.heat.losses.LossFactors;
import simmerpoint.heat.losses.LossModel;
import simmerpoint.heat.losses.PanLosses;
import simmerpoint.heat.plate.CookingOil;

/**
 * Oil for deep frying in an open pan: one temperature for oil and pan, which holds as long as hot oil rises by itself, and losses as those of a
 * pan of water, but that nothing evaporates.
 *
 * @param losses by temperature
 * @param panHeatCapacity of the empty pan, J/K
 * @param oilKilograms above 0
 * @param startCelsius at the start
 * @param absorbed light taken up
 */
public record DeepOil(
        LossModel losses, double panHeatCapacity, double oilKilograms, double startCelsius, AbsorbedLight absorbed) {
    private static final double STEP = 2;
    private static final double HOTTEST_CELSIUS = 600;
    private static final double ENOUGH_KELVIN = 0.01;

    /** Checks the amount. */
    public DeepOil {
        ArgumentChecks.positive("oil", oilKilograms, "kg");
    }

    /** A real pan in real weather, from the temperature of the air. */
    public static DeepOil of(ThermalPan vessel, double depthMetres, Surroundings around, AbsorbedLight absorbed) {
        return new DeepOil(
                PanLosses.ofOil(vessel, depthMetres, around, LossFactors.LIKELY),
                vessel.heatCapacity(),
                CookingOil.DENSITY * vessel.levelArea() * depthMetres,
                around.airCelsius(),
                absorbed);
    }

    /**
     * One point of the warming.
     *
     * @param seconds since the start
     * @param celsius of the oil
     */
    public record Point(double seconds, double celsius) {}

    /** Where it ends if nobody turns the dish away, °C, at most {@value #HOTTEST_CELSIUS}. */
    public double endCelsius() {
        double low = startCelsius;
        double high = HOTTEST_CELSIUS;
        while (high - low > ENOUGH_KELVIN) {
            double middle = (low + high) / 2;
            if (surplus(middle) > 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** Time until it has a temperature, s; empty if it never does. */
    public OptionalDouble secondsUntil(double celsius) {
        List<Point> points = curve(celsius);
        Point last = points.get(points.size() - 1);
        return last.celsius() >= celsius ? OptionalDouble.of(last.seconds()) : OptionalDouble.empty();
    }

    /** Warming up to a temperature, or until nearly nothing is left to warm it: ∫ C dT ÷ (light − losses), by Simpson's rule. */
    public List<Point> curve(double celsius) {
        List<Point> points = new ArrayList<>();
        points.add(new Point(0, startCelsius));
        double seconds = 0;
        for (double t = startCelsius; t < celsius; ) {
            double step = Math.min(STEP, celsius - t);
            if (!(surplus(t + step) > 0)) {
                break;
            }
            seconds += step / 6 * (perKelvin(t) + 4 * perKelvin(t + step / 2) + perKelvin(t + step));
            t = step < STEP ? celsius : t + step;
            points.add(new Point(seconds, t));
        }
        return points;
    }

    private double perKelvin(double celsius) {
        return (panHeatCapacity + oilKilograms * CookingOil.specificHeat(celsius)) / surplus(celsius);
    }

    private double surplus(double celsius) {
        return absorbed.total() - losses.at(celsius, absorbed).total();
    }
}
