package simmerpoint.report;

import simmerpoint.study.budget.Parameter;

/** The step of a parameter in its unit, without the dust of a conversion. */
final class StepSize {
    private static final double TIDY = 1e9;

    private StepSize() {}

    static double of(Parameter parameter) {
        return Math.round(parameter.step() / parameter.unit().si() * TIDY) / TIDY;
    }
}
