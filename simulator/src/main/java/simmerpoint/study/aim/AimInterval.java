package simmerpoint.study.aim;

import java.util.List;
import simmerpoint.sampling.Estimate;

/**
 * The time between two aimings: the dish stands still, the sun goes on.
 *
 * @param minutes how long
 * @param mean watts over that time
 * @param least watts at the worst of the traced moments
 * @param moments traced, evenly spaced from aiming to the end
 */
public record AimInterval(double minutes, Estimate mean, Estimate least, List<Moment> moments) {
    /** Keeps its own list. */
    public AimInterval {
        moments = List.copyOf(moments);
    }

    /**
     * One moment.
     *
     * @param minutes after the aiming
     * @param watts cooking power then; of a bare disc, caught
     */
    public record Moment(double minutes, Estimate watts) {}
}
