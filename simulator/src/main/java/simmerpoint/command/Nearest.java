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

    /**
     * Letters left out, put in, exchanged, or swapped with their neighbour (optimal string alignment distance: F. J.
     * Damerau, Communications of the ACM 7, 1964, with each letter edited once).
     */
    static int slips(String a, String b) {
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                d[i][j] = i == 0 || j == 0 ? i + j : cheapest(a, b, d, i, j);
            }
        }
        return d[a.length()][b.length()];
    }

    private static int cheapest(String a, String b, int[][] d, int i, int j) {
        boolean same = a.charAt(i - 1) == b.charAt(j - 1);
        int slips = Math.min(d[i - 1][j - 1] + (same ? 0 : 1), Math.min(d[i - 1][j], d[i][j - 1]) + 1);
        boolean swapped = i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
        return swapped ? Math.min(slips, d[i - 2][j - 2] + 1) : slips;
    }
}
