package simmerpoint.quantities;

/** Text from outside made fit to be shown. */
public final class OneLine {
    private OneLine() {}

    /**
     * {@code text} on one line: control characters (which could steer a terminal), invisible characters that reorder
     * text, and line breaks become single spaces.
     */
    public static String of(String text) {
        return harmless(text).strip().replaceAll(" {2,}", " ");
    }

    /** The same with every space kept: each such character becomes one. */
    public static String harmless(String text) {
        StringBuilder out = new StringBuilder();
        text.codePoints().map(OneLine::visible).forEach(out::appendCodePoint);
        return out.toString();
    }

    private static int visible(int codePoint) {
        return switch (Character.getType(codePoint)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.SURROGATE,
                    Character.UNASSIGNED,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR -> ' ';
            default -> codePoint;
        };
    }
}
