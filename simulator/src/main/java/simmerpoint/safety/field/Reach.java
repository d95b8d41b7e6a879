package simmerpoint.safety.field;

import java.util.Map;
import java.util.Optional;
import simmerpoint.safety.risk.Hazard;
import simmerpoint.sampling.Estimate;

/**
 * How far from the focus light is still as strong as a hazard asks, m; nothing where it never is.
 *
 * @param hazard which one
 * @param ways the farthest place of each way
 * @param level the farthest place measured level from under the focus, in any direction and at any height
 * @param height the highest place, above the ground
 */
public record Reach(Hazard hazard, Map<Way, Estimate> ways, Optional<Estimate> level, Optional<Estimate> height) {
    /** Keeps a copy of the map. */
    public Reach {
        ways = Map.copyOf(ways);
    }

    /** The farthest of one way. */
    public Optional<Estimate> of(Way way) {
        return Optional.ofNullable(ways.get(way));
    }
}
