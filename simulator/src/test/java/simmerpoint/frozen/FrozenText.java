package simmerpoint.frozen;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Holds texts against each other, number by number where they are not equal: {@link Math#sin} and its like may differ in
 * the last bit from one processor to another.
 */
final class FrozenText {
    private static final Pattern NUMBER = Pattern.compile("[0-9]+(?:\\.[0-9]+)?(?:[eE][-+]?[0-9]+)?");
    private static final double TOLERANCE = 1e-9;
    private static final double NOTHING = 1e-12;
    private static final int SHOWN_BEFORE = 40;
    private static final int SHOWN = 160;

    private FrozenText() {}

    /** The first line that differs, with what it was and is; empty if none does. */
    static Optional<String> difference(String before, String now) {
        if (before.equals(now)) {
            return Optional.empty();
        }
        String[] old = before.split("\n", -1);
        String[] current = now.split("\n", -1);
        for (int k = 0; k < Math.max(old.length, current.length); k++) {
            String was = k < old.length ? old[k] : "(no such line)";
            String is = k < current.length ? current[k] : "(no such line)";
            if (!same(was, is)) {
                return Optional.of("line " + (k + 1) + "\n  was: " + shown(was, is) + "\n  is:  " + shown(is, was));
            }
        }
        return Optional.empty();
    }

    private static boolean same(String was, String is) {
        if (was.equals(is)) {
            return true;
        }
        Matcher a = NUMBER.matcher(was);
        Matcher b = NUMBER.matcher(is);
        int endA = 0;
        int endB = 0;
        while (a.find()) {
            boolean found = b.find();
            if (!found || !was.substring(endA, a.start()).equals(is.substring(endB, b.start()))) {
                return false;
            }
            if (!close(Double.parseDouble(a.group()), Double.parseDouble(b.group()))) {
                return false;
            }
            endA = a.end();
            endB = b.end();
        }
        return was.substring(endA).equals(is.substring(endB));
    }

    private static boolean close(double a, double b) {
        return Math.abs(a - b) <= TOLERANCE * Math.max(a, b) + NOTHING;
    }

    /** A long line around the place where it begins to differ. */
    private static String shown(String line, String other) {
        int at = 0;
        while (at < Math.min(line.length(), other.length()) && line.charAt(at) == other.charAt(at)) {
            at++;
        }
        int from = line.length() <= SHOWN ? 0 : Math.max(0, at - SHOWN_BEFORE);
        int to = Math.min(line.length(), from + SHOWN);
        return (from > 0 ? "…" : "") + line.substring(from, to) + (to < line.length() ? "…" : "");
    }
}
