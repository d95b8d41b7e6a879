package simmerpoint.scenario.keys;

import java.util.List;
import java.util.Set;
import simmerpoint.units.Dimension;

/**
 * Everything there is to say about one key of the scenario file.
 *
 * @param path full name, for instance dish.surface.sectors
 * @param kind what its value looks like
 * @param dimension of a number; null for words, text and files
 * @param example how the value may be written
 * @param range which numbers are allowed; null for words, text and files
 * @param usual which numbers hand-built cookers have, far fewer than are allowed; null where that is not known
 * @param words which words are allowed; empty for anything else
 * @param defaultText value where the file says nothing, as it would be written; null if there is none; for a figure that
 *     depends on others, words that say so, see {@link #defaultIsValue}
 * @param onlyFor the words of the section's choosing key ({@code cut}, {@code kind}) to which it belongs; empty = always
 * @param sentence what it means, for a builder
 */
public record Key(
        String path,
        Kind kind,
        Dimension dimension,
        String example,
        KeyRange range,
        KeyRange usual,
        List<String> words,
        String defaultText,
        Set<String> onlyFor,
        String sentence) {
    /** Default of a figure that comes with the mirror's material. */
    public static final String FROM_MATERIAL = "as the material";

    /** Default of the face of a pan. */
    public static final String FROM_FINISH = "as finish";

    /** Default of an underside's sheet. */
    public static final String FROM_REST = "as the rest";

    /** Default of the opening of a pan. */
    public static final String FROM_WIDTH = "as wide as the pan";

    /** Default of the width of a rim with straight sides. */
    public static final String FROM_DIAMETER = "as far apart as the diameter allows";

    /** Default of what a zone has as the whole dish. */
    public static final String FROM_DISH = "as the dish";

    /** Default of the pan's mass. */
    public static final String FROM_SIZE = "a usual one of that size and material";

    /** Default of the water. */
    public static final String FROM_HEIGHT = "to two fifths of the pan's height";

    /** Default of the altitude of the air. */
    public static final String FROM_PLACE = "as the place, or 0 m";

    /** Default of a turbidity. */
    public static final String FROM_SETTING = "by the setting and the month";

    /** Default of the beam. */
    public static final String FROM_SUN = "usual for the sun's height; 850 W/m² at 50°";

    private static final Set<String> IN_WORDS = Set.of(
            FROM_MATERIAL,
            FROM_FINISH,
            FROM_REST,
            FROM_WIDTH,
            FROM_DISH,
            FROM_DIAMETER,
            FROM_SIZE,
            FROM_HEIGHT,
            FROM_PLACE,
            FROM_SETTING,
            FROM_SUN);

    /** What a value looks like. */
    public enum Kind {
        /** A number with its unit. */
        QUANTITY,
        /** A whole number. */
        COUNT,
        /** One word out of a list. */
        WORD,
        /** on or off, yes or no, true or false. */
        SWITCH,
        /** One line of free text. */
        TEXT,
        /** Degrees north, or south if negative or marked S. */
        LATITUDE,
        /** Degrees east, or west if negative or marked W. */
        LONGITUDE,
        /** A day, year first. */
        DATE,
        /** A time of day. */
        TIME,
        /** The rules of a clock: a name or hours from UTC. */
        ZONE,
        /** The name of another file, relative to the scenario's folder. */
        FILE
    }

    /** Name within its section, for instance sectors. */
    public String name() {
        return path.substring(path.lastIndexOf('.') + 1);
    }

    /** Path of its section, for instance dish.surface; empty at the top. */
    public String section() {
        return sectionOf(path);
    }

    /** Path of the section around a key or section; empty at the top. */
    public static String sectionOf(String path) {
        int dot = path.lastIndexOf('.');
        return dot < 0 ? "" : path.substring(0, dot);
    }

    /** Whether it means something beside that word of its section's choosing key. */
    public boolean isFor(String word) {
        return onlyFor.isEmpty() || onlyFor.contains(word);
    }

    /** Whether the default is one value that could be written, and not words for what is taken from elsewhere. */
    public boolean defaultIsValue() {
        return defaultText != null && !defaultText.isEmpty() && !IN_WORDS.contains(defaultText);
    }

    /** Whether the file must give it (where it belongs at all). */
    public boolean required() {
        return defaultText == null;
    }

    /** Which values are allowed, for messages and help. */
    public String allowed() {
        return switch (kind) {
            case QUANTITY, COUNT, LATITUDE, LONGITUDE -> range.words();
            case WORD -> String.join(", ", words);
            case SWITCH -> "on, off, yes, no";
            case TEXT -> "one line of text";
            case DATE -> "a day from 1900-01-01 to 2199-12-31";
            case TIME -> "00:00 to 23:59";
            case ZONE -> "a name such as Europe/Berlin, or hours from UTC such as UTC+1";
            case FILE -> "the name of a file";
        };
    }
}
