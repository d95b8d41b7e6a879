package simmerpoint.heat.balance;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.math3.ode.sampling.StepHandler;
import org.apache.commons.math3.ode.sampling.StepInterpolator;
import simmerpoint.heat.AbsorbedLight;
import simmerpoint.heat.ArgumentChecks;
import simmerpoint.heat.PhysicalConstants;
import simmerpoint.heat.losses.Losses;

/**
 * Simulates one pot in light that changes with time: the heating equations below local boiling; boiling at constant
 * temperature, with all surplus heat turned into steam. For one run; not thread-safe.
 */
public final class HeatingSimulation {
    private static final double STANDING_KELVIN = 1e-9;
    private static final double COLDEST_CELSIUS = -42;

    private final PotModel pot;
    private final double pointSeconds;
    private final double[] y = new double[HeatingEquations.SIZE];
    private final double startContent;
    private final double dryKilograms;
    private final List<TemperatureHistory.Point> points = new ArrayList<>();
    private double now;
    private OptionalDouble boil = OptionalDouble.empty();
    private OptionalDouble dry = OptionalDouble.empty();

    private HeatingSimulation(PotModel pot, double startCelsius, double pointSeconds) {
        this.pot = pot;
        this.pointSeconds = pointSeconds;
        y[HeatingEquations.CELSIUS] = startCelsius;
        y[HeatingEquations.WATER] = pot.waterKilograms();
        startContent = pot.heatContent(startCelsius, pot.waterKilograms());
        dryKilograms = HeatingIntegrator.DRY_SHARE * pot.waterKilograms();
    }

    /**
     * The temperature history.
     *
     * @param pot pan and water
     * @param startCelsius temperature at the start, −42 °C to local boiling (freezing is neglected)
     * @param intervals the light, in order; at least one
     * @param pointSeconds time between points of the history, above 0
     */
    public static TemperatureHistory temperatureHistory(
            PotModel pot, double startCelsius, List<LightInterval> intervals, double pointSeconds) {
        ArgumentChecks.within("start temperature", startCelsius, COLDEST_CELSIUS, pot.boilingCelsius(), "°C");
        ArgumentChecks.positive("time between points", pointSeconds, "s");
        if (intervals.isEmpty()) {
            throw new IllegalArgumentException("a temperature history needs an interval of light");
        }
        HeatingSimulation heating = new HeatingSimulation(pot, startCelsius, pointSeconds);
        intervals.forEach(heating::simulate);
        return new TemperatureHistory(heating.points, heating.boil, heating.dry);
    }

    private void simulate(LightInterval interval) {
        double end = now + interval.seconds();
        if (dry.isEmpty() && !boilsNow(interval.absorbed())) {
            warm(interval.absorbed(), end);
        }
        if (dry.isEmpty() && now < end && boilsNow(interval.absorbed())) {
            boil(interval.absorbed(), end);
        }
    }

    private boolean boilsNow(AbsorbedLight absorbed) {
        return y[HeatingEquations.CELSIUS] >= pot.boilingCelsius() - STANDING_KELVIN
                && SteadyState.boils(pot, absorbed);
    }

    private void warm(AbsorbedLight absorbed, double end) {
        add(now, y, absorbed, 0);
        HeatingIntegrator integrator = new HeatingIntegrator();
        StopCondition dryness = new StopCondition(HeatingEquations.WATER, dryKilograms);
        integrator.stopAt(dryness);
        StopCondition boiling = new StopCondition(HeatingEquations.CELSIUS, pot.boilingCelsius());
        if (SteadyState.boils(pot, absorbed)) {
            integrator.stopAt(boiling);
        }
        integrator.watch(new Sampler(absorbed));
        now = integrator.run(new HeatingEquations(pot, absorbed), now, y, end);
        if (boiling.reached()) {
            y[HeatingEquations.CELSIUS] = pot.boilingCelsius();
        }
        if (dryness.reached()) {
            dry = OptionalDouble.of(now);
        }
        add(now, y, absorbed, 0);
    }

    /** Boiling in constant light: all quantities are linear in time. */
    private void boil(AbsorbedLight absorbed, double end) {
        if (boil.isEmpty()) {
            boil = OptionalDouble.of(now);
        }
        double surplus = SteadyState.boilingWatts(pot, absorbed);
        Losses losses = pot.losses().at(pot.boilingCelsius(), absorbed);
        double steam = losses.steamWatts() + surplus;
        double rate = PotModel.steamRate(steam, pot.boilingCelsius());
        double dryAfter = rate > 0 ? (y[HeatingEquations.WATER] - dryKilograms) / rate : Double.POSITIVE_INFINITY;
        double start = now;
        double stop = Math.min(end, start + Math.max(0, dryAfter));
        add(now, y, absorbed, surplus);
        for (int k = 1; now < stop; k++) {
            double next = Math.min(stop, start + k * pointSeconds);
            advance(absorbed, losses, steam, rate, next - now);
            now = next;
            add(now, y, absorbed, surplus);
        }
        if (stop < end) {
            dry = OptionalDouble.of(now);
        }
    }

    private void advance(AbsorbedLight absorbed, Losses losses, double steam, double rate, double seconds) {
        y[HeatingEquations.WATER] -= rate * seconds;
        y[HeatingEquations.LIGHT] += absorbed.total() * seconds;
        y[HeatingEquations.CONVECTION] += losses.convectionWatts() * seconds;
        y[HeatingEquations.RADIATION] += losses.radiationWatts() * seconds;
        y[HeatingEquations.STEAM] += steam * seconds;
        y[HeatingEquations.CARRIED] += rate * PhysicalConstants.WATER_SPECIFIC_HEAT * pot.boilingCelsius() * seconds;
    }

    private void add(double seconds, double[] state, AbsorbedLight absorbed, double boilingWatts) {
        double celsius = state[HeatingEquations.CELSIUS];
        double water = state[HeatingEquations.WATER];
        Losses losses = pot.losses().at(celsius, absorbed);
        EnergyBalance since = new EnergyBalance(
                state[HeatingEquations.LIGHT],
                state[HeatingEquations.CONVECTION],
                state[HeatingEquations.RADIATION],
                state[HeatingEquations.STEAM],
                state[HeatingEquations.CARRIED],
                pot.heatContent(celsius, water) - startContent);
        Losses shown = losses.withSteam(losses.steamWatts() + boilingWatts);
        points.add(new TemperatureHistory.Point(seconds, celsius, water, absorbed.total(), shown, since));
    }

    /** Adds points at equal intervals of time while the integrator steps over them. */
    private final class Sampler implements StepHandler {
        private final AbsorbedLight absorbed;
        private double next = now + pointSeconds;

        Sampler(AbsorbedLight absorbed) {
            this.absorbed = absorbed;
        }

        @Override
        public void init(double start, double[] state, double end) {}

        @Override
        public void handleStep(StepInterpolator interpolator, boolean last) {
            while (next < interpolator.getCurrentTime()) {
                interpolator.setInterpolatedTime(next);
                add(next, interpolator.getInterpolatedState(), absorbed, 0);
                next += pointSeconds;
            }
        }
    }
}
