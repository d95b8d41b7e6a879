package simmerpoint.study.budget;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import simmerpoint.scenario.Scenario;

/**
 * One figure of a scenario that can be made a step larger or smaller, to see how finely it must be kept.
 *
 * @param key short name for files
 * @param name in a builder's words
 * @param unit in which the step is one nice number
 * @param step SI, above 0
 * @param steps the scenario after one step each way that it can go; empty where the figure means nothing
 */
public record Parameter(
        String key, String name, Unit unit, double step, Function<Scenario, List<ParameterStep>> steps) {
    /** Units of steps. */
    public enum Unit {
        /** Thousandths of a radian. */
        MILLIRADIAN("mrad", 1e-3),
        /** Degrees. */
        DEGREE("deg", Math.PI / 180),
        /** Centimetres. */
        CENTIMETRE("cm", 0.01),
        /** Millimetres. */
        MILLIMETRE("mm", 0.001),
        /** Hundredths of all. */
        PERCENT("%", 0.01);

        private final String sign;
        private final double si;

        Unit(String sign, double si) {
            this.sign = sign;
            this.si = si;
        }

        /** How it is written in files. */
        public String sign() {
            return sign;
        }

        /** Its size in SI units. */
        public double si() {
            return si;
        }
    }

    /** Puts a figure into a scenario. */
    interface Setter {
        Scenario set(Scenario scenario, double value);
    }

    /** A figure that goes one unit up and down, as long as it stays between {@code low} and {@code high} (SI). */
    static Parameter number(
            String key,
            String name,
            Unit unit,
            double low,
            double high,
            ToDoubleFunction<Scenario> getter,
            Setter setter) {
        double step = unit.si();
        return new Parameter(key, name, unit, step, scenario -> {
            double now = getter.applyAsDouble(scenario);
            List<ParameterStep> steps = new ArrayList<>();
            if (now + step <= high) {
                steps.add(new ParameterStep(ParameterStep.MORE, setter.set(scenario, now + step)));
            }
            if (now - step >= low) {
                steps.add(new ParameterStep(ParameterStep.LESS, setter.set(scenario, now - step)));
            }
            return steps;
        });
    }

    /** The same, only for scenarios in which the figure means something. */
    Parameter onlyIf(Predicate<Scenario> meansSomething) {
        return new Parameter(key, name, unit, step, s -> meansSomething.test(s) ? steps.apply(s) : List.of());
    }
}
