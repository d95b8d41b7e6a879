package simmerpoint.command;

import java.util.Collection;
import java.util.Optional;

/** Suggests the closest known word for a misspelt one. */
final class ArgumentSuggestion {
    private ArgumentSuggestion() {}

    /** The candidate with the least edit distance to {@code word}; empty above one edit in three letters. */
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

    /** Edit distance, the same as that of the scenario reader. */
    static int slips(String a, String b) {
        return simmerpoint.scenario.keys.NearestWord.distance(a, b);
    }
}
