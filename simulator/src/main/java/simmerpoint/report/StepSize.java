package simmerpoint.report;

import simmerpoint.study.Knob;

/** The step of a knob in its unit, without the dust of a conversion. */
final class StepSize {
    private static final double TIDY = 1e9;

    private StepSize() {}

    static double of(Knob knob) {
        return Math.round(knob.step() / knob.unit().si() * TIDY) / TIDY;
    }
}
