package simmerpoint.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import simmerpoint.heat.AbsorbedLight;
import simmerpoint.heat.balance.HeatingSimulation;
import simmerpoint.heat.balance.LightInterval;
import simmerpoint.heat.balance.TemperatureHistory;
import simmerpoint.heat.losses.LossFactors;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.study.likely.LitPan;
import simmerpoint.study.likely.LitPans;
import simmerpoint.study.trace.TraceOptions;

/**
 * A log as it would be written beside a cooker whose every figure is known: heated by the equations of {@code heat.balance}, minute by
 * minute, in light that comes and goes, and read off a thermometer with an error of its own.
 */
final class SimulatedLog {
    /** A thermometer of ±0.5 K. */
    static final double READING_DEVIATION = 0.25;

    private final LitPan pan;
    private final double beam;
    private final SplittableRandom chance;
    private DoubleUnaryOperator light = t -> 1;
    private double minutes = 60;
    private boolean mixedSteps;
    private double error = READING_DEVIATION;
    private boolean beamColumn = true;
    private boolean sunless;

    private SimulatedLog(LitPan pan, double beam, long seed) {
        this.pan = pan;
        this.beam = beam;
        chance = new SplittableRandom(seed);
    }

    /** Of a true cooker under its own sun. */
    static SimulatedLog of(Scenario truth, long seed) {
        TraceOptions options = TraceOptions.defaults().withThreads(1);
        return new SimulatedLog(
                LitPans.given(truth, options).orElseThrow(), truth.sun().beamWattsPerSquareMetre(), seed);
    }

    /** Of a pan in known light. */
    static SimulatedLog of(LitPan pan, double beam, long seed) {
        return new SimulatedLog(pan, beam, seed);
    }

    static CheckedScenario with(CheckedScenario read, String... typed) throws ScenarioException {
        java.util.Map<String, String> set = new java.util.LinkedHashMap<>();
        for (int k = 0; k < typed.length; k += 2) {
            set.put(typed[k], typed[k + 1]);
        }
        return read.with(set);
    }

    /** Light as a share of the beam, by minutes. */
    SimulatedLog light(DoubleUnaryOperator share) {
        light = share;
        return this;
    }

    SimulatedLog minutes(double length) {
        minutes = length;
        return this;
    }

    /** Rows one to four minutes apart instead of one. */
    SimulatedLog mixedSteps() {
        mixedSteps = true;
        return this;
    }

    SimulatedLog exact() {
        error = 0;
        return this;
    }

    SimulatedLog withoutLight() {
        beamColumn = false;
        return this;
    }

    SimulatedLog sunless() {
        sunless = true;
        return this;
    }

    /** The file. */
    String csv(String... comments) {
        StringBuilder out = new StringBuilder();
        for (String comment : comments) {
            out.append("# ").append(comment).append('\n');
        }
        if (sunless) {
            out.append("# sun: none\n");
        }
        boolean metered = beamColumn && !sunless;
        out.append("time_min,water_C,air_C,")
                .append(metered ? "irradiance_W_m2,beam_W_m2," : "")
                .append("wind_m_s\n");
        TemperatureHistory history = history();
        double air = pan.kitchen().around().airCelsius();
        double wind = pan.kitchen().around().windMetresPerSecond();
        for (double t = 0; t <= minutes; t += mixedSteps ? 1 + chance.nextInt(4) : 1) {
            double water = history.celsiusAt(60 * t) + error * gauss();
            double now = beam * light.applyAsDouble(t);
            out.append(String.format(Locale.ROOT, "%.0f,%.1f,%.1f", t, water, air + 0.4 * error * gauss()));
            if (metered) {
                out.append(String.format(Locale.ROOT, ",%.0f,%.0f", now + 0.13 * beam, now));
            }
            out.append(String.format(Locale.ROOT, ",%.1f%n", Math.max(0, wind + 0.8 * error * gauss())));
        }
        return out.toString();
    }

    private TemperatureHistory history() {
        List<LightInterval> intervals = new ArrayList<>();
        for (int k = 0; k < minutes; k++) {
            double share = sunless ? 0 : light.applyAsDouble(k + 0.5);
            AbsorbedLight absorbed = pan.absorbed();
            intervals.add(new LightInterval(60, share == 0 ? AbsorbedLight.NOTHING : absorbed.times(share)));
        }
        return HeatingSimulation.temperatureHistory(
                pan.kitchen().cooking().pot(pan.losses()),
                pan.kitchen().contents().startCelsius(),
                intervals,
                20);
    }

    /** The true cooking power, W. */
    double watts() {
        return pan.kitchen().cooking().cookingPowerWatts(pan.absorbed(), pan.losses());
    }

    /** The true loss per kelvin at a temperature above the air, W/K. */
    double lossPerKelvin(double aboveAir) {
        double celsius = pan.kitchen().around().airCelsius() + aboveAir;
        return pan.kitchen()
                        .cooking()
                        .pot(LossFactors.LIKELY)
                        .losses()
                        .at(celsius, AbsorbedLight.NOTHING)
                        .total()
                / aboveAir;
    }

    private double gauss() {
        return Math.sqrt(-2 * Math.log(1 - chance.nextDouble())) * Math.cos(2 * Math.PI * chance.nextDouble());
    }
}
