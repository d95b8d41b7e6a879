package simmerpoint.scenario.keys;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/**
 * The word that somebody probably meant: the one with the fewest letters inserted, left out, changed or swapped with the
 * next (Damerau 1964, Communications of the ACM 7, 171; each stretch edited once), if that is at most a third of it.
 */
public final class NearestWord {
    private static final int LONGEST = 60;

    private NearestWord() {}

    /** That word among others, if one is near enough. */
    public static Optional<String> of(String word, Collection<String> words) {
        if (word.length() > LONGEST) {
            return Optional.empty();
        }
        String plain = plain(word);
        return words.stream()
                .min(Comparator.comparingInt(candidate -> distance(plain, plain(candidate))))
                .filter(best -> distance(plain, plain(best)) <= Math.max(1, (best.length() + 1) / 3));
    }

    private static String plain(String word) {
        return word.toLowerCase(Locale.ROOT).replace('_', '-').replace(' ', '-');
    }

    /** Letters to insert, leave out, change or swap with the next to turn {@code a} into {@code b}, each stretch edited once. */
    public static int distance(String a, String b) {
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                d[i][j] = i == 0 || j == 0 ? i + j : step(d, a, b, i, j);
            }
        }
        return d[a.length()][b.length()];
    }

    private static int step(int[][] d, String a, String b, int i, int j) {
        int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        int best = Math.min(d[i - 1][j - 1] + change, 1 + Math.min(d[i - 1][j], d[i][j - 1]));
        boolean swapped = i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
        return swapped ? Math.min(best, d[i - 2][j - 2] + 1) : best;
    }
}
