package simmerpoint.scenario.yaml;

/** The lines of a text, whichever way they are ended. */
final class TextLines {
    private final String text;

    TextLines(String text) {
        this.text = text;
    }

    /** How the text ends its lines. */
    String lineBreak() {
        int lf = text.indexOf('\n');
        if (lf < 0) {
            return text.indexOf('\r') < 0 ? "\n" : "\r";
        }
        return lf > 0 && text.charAt(lf - 1) == '\r' ? "\r\n" : "\n";
    }

    /** Whether the last line is ended. */
    boolean endsWithBreak() {
        return !text.isEmpty() && isBreak(text.charAt(text.length() - 1));
    }

    /** Whether the text has an empty line. */
    boolean hasEmpty() {
        return text.contains("\n\n") || text.contains("\r\n\r\n") || text.contains("\r\r");
    }

    /** Where the line begins in which that character stands. */
    int begin(int at) {
        int begin = at;
        while (begin > 0 && !isBreak(text.charAt(begin - 1))) {
            begin--;
        }
        return begin;
    }

    /** Where the next line begins, or the text ends. */
    int next(int at) {
        int next = at;
        while (next < text.length() && !isBreak(text.charAt(next))) {
            next++;
        }
        boolean two = text.startsWith("\r\n", next);
        return Math.min(text.length(), next + (two ? 2 : 1));
    }

    /** From the beginning of a line, where the first line begins that is no comment of so many spaces or more. */
    int behindComments(int begin, int indent) {
        int at = begin;
        while (at < text.length()) {
            int hash = at;
            while (hash < text.length() && text.charAt(hash) == ' ') {
                hash++;
            }
            if (hash == text.length() || text.charAt(hash) != '#' || hash - at < indent) {
                return at;
            }
            at = next(at);
        }
        return at;
    }

    private static boolean isBreak(char c) {
        return c == '\n' || c == '\r';
    }
}
