package simmerpoint.heat;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.math3.ode.sampling.StepHandler;
import org.apache.commons.math3.ode.sampling.StepInterpolator;

/**
 * The course of one kettle through spells of light: the heating equations up to local boiling, there boiling as long as
 * there is a surplus (temperature stands, all of the surplus becomes steam), and back. For one run and one thread.
 */
public final class HeatingSimulation {
    private static final double STANDING_KELVIN = 1e-9;
    private static final double COLDEST_CELSIUS = -42;

    private final PotModel kettle;
    private final double pointSeconds;
    private final double[] y = new double[HeatingEquations.SIZE];
    private final double startContent;
    private final double dryKilograms;
    private final List<TemperaturePoint> points = new ArrayList<>();
    private double now;
    private OptionalDouble boil = OptionalDouble.empty();
    private OptionalDouble dry = OptionalDouble.empty();

    private HeatingSimulation(PotModel kettle, double startCelsius, double pointSeconds) {
        this.kettle = kettle;
        this.pointSeconds = pointSeconds;
        y[HeatingEquations.CELSIUS] = startCelsius;
        y[HeatingEquations.WATER] = kettle.waterKilograms();
        startContent = kettle.heatContent(startCelsius, kettle.waterKilograms());
        dryKilograms = HeatingIntegrator.DRY_SHARE * kettle.waterKilograms();
    }

    /**
     * The curve.
     *
     * @param kettle pan and water
     * @param startCelsius temperature at the start, −42 °C to local boiling (ice is not known here)
     * @param spells the light, one after the other; at least one
     * @param pointSeconds time between points of the curve, above 0
     */
    public static TemperatureHistory course(
            PotModel kettle, double startCelsius, List<LightInterval> spells, double pointSeconds) {
        ArgumentChecks.within("start temperature", startCelsius, COLDEST_CELSIUS, kettle.boilingCelsius(), "°C");
        ArgumentChecks.positive("time between points", pointSeconds, "s");
        if (spells.isEmpty()) {
            throw new IllegalArgumentException("a course needs a spell of light");
        }
        HeatingSimulation heating = new HeatingSimulation(kettle, startCelsius, pointSeconds);
        spells.forEach(heating::pass);
        return new TemperatureHistory(heating.points, heating.boil, heating.dry);
    }

    private void pass(LightInterval spell) {
        double end = now + spell.seconds();
        if (dry.isEmpty() && !boilsNow(spell.absorbed())) {
            warm(spell.absorbed(), end);
        }
        if (dry.isEmpty() && now < end && boilsNow(spell.absorbed())) {
            boil(spell.absorbed(), end);
        }
    }

    private boolean boilsNow(AbsorbedLight absorbed) {
        return y[HeatingEquations.CELSIUS] >= kettle.boilingCelsius() - STANDING_KELVIN
                && SteadyState.boils(kettle, absorbed);
    }

    private void warm(AbsorbedLight absorbed, double end) {
        add(now, y, absorbed, 0);
        HeatingIntegrator integrator = HeatingIntegrator.exact();
        StopCondition dryness = new StopCondition(HeatingEquations.WATER, dryKilograms);
        integrator.stopAt(dryness);
        StopCondition boiling = new StopCondition(HeatingEquations.CELSIUS, kettle.boilingCelsius());
        if (SteadyState.boils(kettle, absorbed)) {
            integrator.stopAt(boiling);
        }
        integrator.watch(new Sampler(absorbed));
        now = integrator.run(new HeatingEquations(kettle, absorbed), now, y, end);
        if (boiling.reached()) {
            y[HeatingEquations.CELSIUS] = kettle.boilingCelsius();
        }
        if (dryness.reached()) {
            dry = OptionalDouble.of(now);
        }
        add(now, y, absorbed, 0);
    }

    /** Boiling in unchanging light: everything runs in straight lines. */
    private void boil(AbsorbedLight absorbed, double end) {
        if (boil.isEmpty()) {
            boil = OptionalDouble.of(now);
        }
        double surplus = SteadyState.boilingWatts(kettle, absorbed);
        Losses losses = kettle.losses().at(kettle.boilingCelsius(), absorbed);
        double steam = losses.steamWatts() + surplus;
        double rate = PotModel.steamRate(steam, kettle.boilingCelsius());
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
        y[HeatingEquations.CARRIED] += rate * PhysicalConstants.WATER_SPECIFIC_HEAT * kettle.boilingCelsius() * seconds;
    }

    private void add(double seconds, double[] state, AbsorbedLight absorbed, double boilingWatts) {
        double celsius = state[HeatingEquations.CELSIUS];
        double water = state[HeatingEquations.WATER];
        Losses losses = kettle.losses().at(celsius, absorbed);
        EnergyBalance since = new EnergyBalance(
                state[HeatingEquations.LIGHT],
                state[HeatingEquations.CONVECTION],
                state[HeatingEquations.RADIATION],
                state[HeatingEquations.STEAM],
                state[HeatingEquations.CARRIED],
                kettle.heatContent(celsius, water) - startContent);
        Losses shown = losses.withSteam(losses.steamWatts() + boilingWatts);
        points.add(new TemperaturePoint(seconds, celsius, water, absorbed.total(), shown, since));
    }

    /** Adds points at even times while the integrator steps over them. */
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
