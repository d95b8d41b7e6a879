package simmerpoint.dish;

import java.util.List;

/**
 * A key of the scenario file that belongs to some cuts.
 *
 * @param name for instance sectors
 * @param type what its values look like
 * @param defaultText value where the file says nothing; null if the file must give it
 * @param example how it may be written
 * @param allowed which numbers are allowed, for instance "3 to 10000"; null if it is none
 * @param usual which numbers hand-built cookers have, in the same words; null if it is none
 * @param words words to choose from; empty if it is none
 * @param sentence what it means, for a builder
 */
public record CutParameter(
        String name,
        Type type,
        String defaultText,
        String example,
        String allowed,
        String usual,
        List<String> words,
        String sentence) {
    /** What values look like. */
    public enum Type {
        /** A whole number. */
        COUNT,
        /** A length with its unit. */
        LENGTH,
        /** One word out of a list. */
        WORD,
        /** The name of a file. */
        FILE
    }

    /** A whole number that the file must give. */
    public static CutParameter count(String name, String example, String allowed, String usual, String sentence) {
        return new CutParameter(name, Type.COUNT, null, example, allowed, usual, List.of(), sentence);
    }

    /** A length that the file must give. */
    public static CutParameter length(String name, String example, String allowed, String usual, String sentence) {
        return new CutParameter(name, Type.LENGTH, null, example, allowed, usual, List.of(), sentence);
    }

    /** One word out of a list; {@code defaultText} is null if the file must give it. */
    public static CutParameter word(String name, String defaultText, List<String> words, String sentence) {
        String example = defaultText == null ? words.get(0) : defaultText;
        return new CutParameter(name, Type.WORD, defaultText, example, null, null, List.copyOf(words), sentence);
    }

    /** The name of a file. */
    public static CutParameter file(String name, String example, String sentence) {
        return new CutParameter(name, Type.FILE, null, example, null, null, List.of(), sentence);
    }
}
