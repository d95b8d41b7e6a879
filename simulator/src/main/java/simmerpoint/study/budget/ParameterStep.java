package simmerpoint.study.budget;

import simmerpoint.scenario.Scenario;

/**
 * A scenario one step off in one parameter.
 *
 * @param way {@link #MORE} or {@link #LESS}; for an angle on the sky up, down, right, left or two of them, as "up right"
 * @param scenario after the step
 */
public record ParameterStep(String way, Scenario scenario) {
    /** The way of a step to a larger figure. */
    public static final String MORE = "more";

    /** The way of a step to a smaller figure. */
    public static final String LESS = "less";
}
