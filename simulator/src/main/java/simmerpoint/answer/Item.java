package simmerpoint.answer;

/** One thing said in an answer. Texts hold no-break spaces between figure and unit and no line breaks. */
public sealed interface Item {
    /**
     * Something said in full sentences.
     *
     * @param text one or more sentences
     */
    record Sentence(String text) implements Item {}

    /**
     * A warning that nobody should overlook.
     *
     * @param text one or more sentences
     */
    record Caution(String text) implements Item {}

    /**
     * A line of the ledger.
     *
     * @param depth how deep it is nested: a line's light is part of the line above with a smaller depth
     * @param label what light this is
     * @param figure watts with their error
     * @param share of the light on the outline, 0 to 1
     * @param shareText the same as text
     */
    record Bar(int depth, String label, String figure, double share, String shareText) implements Item {}

    /**
     * A figure with its name.
     *
     * @param label its name
     * @param value figure, error, unit
     */
    record Figure(String label, String value) implements Item {}
}
