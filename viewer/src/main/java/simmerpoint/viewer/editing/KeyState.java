package simmerpoint.viewer.editing;

import java.util.Optional;
import simmerpoint.units.TypedQuantity;

/**
 * What is shown of one key.
 *
 * @param shown what stands there, in the units asked for; empty if its default holds
 * @param otherwise what holds where nothing is given
 * @param inTheFile as it stands in the file, where it is shown in other units; else empty
 * @param wrong what is wrong with it; empty if nothing
 * @param whyNot why the key has no meaning now; empty if it has
 * @param given whether something stands there, right or wrong
 * @param quantity the number that holds, in the unit in which it is shown; empty where something wrong stands
 */
record KeyState(
        String shown,
        String otherwise,
        String inTheFile,
        String wrong,
        String whyNot,
        boolean given,
        Optional<TypedQuantity> quantity) {
    boolean isWrong() {
        return !wrong.isEmpty();
    }

    boolean applies() {
        return whyNot.isEmpty();
    }
}
