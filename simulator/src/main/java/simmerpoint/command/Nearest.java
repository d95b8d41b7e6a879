package simmerpoint.command;

import java.util.Collection;
import java.util.Optional;

/** The word somebody may have meant. */
final class Nearest {
    private Nearest() {}

    /** The candidate that the fewest slips turn into {@code word}; empty if it takes more than one slip in three letters. */
    static Optional<String> to(String word, Collection<String> candidates) {
        String best = null;
        int fewest = Math.max(1, word.replace("-", "").length() / 3) + 1;
        for (String candidate : candidates) {
            int slips = slips(word, candidate);
            if (slips < fewest) {
                fewest = slips;
                best = candidate;
            }
        }
        return Optional.ofNullable(best);
    }

    /** Letters left out, put in, exchanged, or swapped with their neighbour: the reader of scenarios counts the same. */
    static int slips(String a, String b) {
        return simmerpoint.scenario.keys.NearestWord.distance(a, b);
    }
}
