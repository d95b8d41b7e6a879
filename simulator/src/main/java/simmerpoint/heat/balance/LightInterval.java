package simmerpoint.heat.balance;

import simmerpoint.heat.AbsorbedLight;
import simmerpoint.heat.ArgumentChecks;

/**
 * An interval of constant light.
 *
 * @param seconds duration, above 0
 * @param absorbed absorbed light
 */
public record LightInterval(double seconds, AbsorbedLight absorbed) {
    /** Checks the time. */
    public LightInterval {
        ArgumentChecks.positive("interval", seconds, "s");
    }
}
