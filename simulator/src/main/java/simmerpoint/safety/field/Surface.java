package simmerpoint.safety.field;

import java.util.Optional;
import simmerpoint.geometry.Vec;

/**
 * A small surface in the yard.
 *
 * @param place where
 * @param facing which way its lit side looks, of length 1; empty for whichever way gets most
 */
public record Surface(Vec place, Optional<Vec> facing) {
    /** One that is turned whichever way gets most. */
    public static Surface worst(Vec place) {
        return new Surface(place, Optional.empty());
    }

    /** The same elsewhere. */
    public Surface moved(Vec by) {
        return new Surface(place.plus(by), facing);
    }
}
