package simmerpoint.study.budget;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import simmerpoint.sampling.Estimate;

/**
 * How watts change when one figure goes a step from where it is. Of a figure that can go both ways the change per step is
 * the central difference (more − less)/2, and what both ways have in common is the bend (more + less)/2, each with its
 * own standard error. Where a place or an angle is at its best the first vanishes and the bend is the loss.
 *
 * @param parameter which figure, and its step
 * @param steps the ways it could go: two, one (the figure is at its end), or eight directions on the sky
 * @param slope change of watts per step to more, if there are two ways
 * @param bend change of watts that a step brings either way, if there are two ways
 */
public record Sensitivity(Parameter parameter, List<Step> steps, Optional<Estimate> slope, Optional<Estimate> bend) {
    /**
     * One step.
     *
     * @param way see {@link ParameterStep}
     * @param change of the watts, W; below 0 for a loss
     */
    public record Step(String way, Estimate change) {}

    /** Keeps a copy of the list, which is not empty. */
    public Sensitivity {
        steps = List.copyOf(steps);
        if (steps.isEmpty()) {
            throw new IllegalArgumentException("a sensitivity needs a step");
        }
    }

    /** Whether the curve's bend rules over its slope within the step, as it does at the best place. */
    public boolean bends() {
        return slope.isPresent()
                && Math.abs(slope.get().value()) <= Math.abs(bend.orElseThrow().value());
    }

    /** The step that loses most. */
    public Step worst() {
        return steps.stream()
                .min(Comparator.comparingDouble(step -> step.change().value()))
                .orElseThrow();
    }

    /** The figure to tell: the bend where it rules, else the slope, else the worst step. */
    public Estimate telling() {
        return bends() ? bend.orElseThrow() : slope.orElseGet(() -> worst().change());
    }
}
