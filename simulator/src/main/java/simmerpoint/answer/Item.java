package simmerpoint.answer;

import java.util.List;
import java.util.stream.Stream;

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
     * @param general whether it is one of those that every answer has: a page of several answers says them once
     */
    record Caution(String text, boolean general) implements Item {
        /** One that belongs to one answer. */
        public Caution(String text) {
            this(text, false);
        }
    }

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

    /**
     * Rows of short texts under headings.
     *
     * @param heads what the columns hold, with their unit
     * @param rows in order; each as long as {@code heads}, its first text names it
     */
    record Table(List<String> heads, List<List<String>> rows) implements Item {
        /** Copies both lists; refuses rows of another length. */
        public Table {
            heads = List.copyOf(heads);
            rows = rows.stream().map(List::copyOf).toList();
            for (List<String> row : rows) {
                if (row.size() != heads.size()) {
                    throw new IllegalArgumentException("a row of " + row.size() + " under " + heads.size() + " heads");
                }
            }
        }

        /** Columns of text that the widest cell or line of a head takes. */
        public int widest(int column) {
            return Stream.concat(
                            Stream.of(heads.get(column).split("\n")),
                            rows.stream().map(row -> row.get(column)))
                    .mapToInt(String::length)
                    .max()
                    .orElse(0);
        }
    }
}
