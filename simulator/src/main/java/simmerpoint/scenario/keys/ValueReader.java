package simmerpoint.scenario.keys;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import simmerpoint.units.Dimension;
import simmerpoint.units.GeographicAngleParser;
import simmerpoint.units.InputText;
import simmerpoint.units.PlusMinus;
import simmerpoint.units.QuantityException;
import simmerpoint.units.QuantityParser;

/** Turns what was typed into the value that its key asks for, or says what is wrong with it. */
public final class ValueReader {
    /** Letters of a word that say more than chance. */
    private static final int SHORTEST_PART = 4;

    private static final int LONGEST_TEXT = 200;
    private static final Set<String> ON = Set.of("on", "yes", "true");
    private static final Set<String> OFF = Set.of("off", "no", "false");

    private ValueReader() {}

    /** The value in SI units or radians, the word, the text. */
    public static Object read(Key key, String typed) throws QuantityException {
        return switch (key.kind()) {
            case QUANTITY -> quantity(key, typed);
            case COUNT -> (int) inRange(key, typed, QuantityParser.parseCount(typed, key.example()));
            case WORD -> word(key, InputText.normalised(typed));
            case SWITCH -> onOrOff(typed);
            case LATITUDE -> inRange(key, typed, GeographicAngleParser.latitude(typed, key.example()));
            case LONGITUDE -> inRange(key, typed, GeographicAngleParser.longitude(typed, key.example()));
            case DATE -> DateTimeParser.date(typed);
            case TIME -> DateTimeParser.time(typed);
            case ZONE -> TimeZoneParser.zone(typed);
            case TEXT -> line(typed, LONGEST_TEXT);
            case FILE -> line(typed, LONGEST_TEXT * 5);
        };
    }

    /** The standard deviation that a ± in what was typed means, SI units or radians; empty if there is none. */
    public static OptionalDouble deviation(Key key, String typed) throws QuantityException {
        if (key.kind() != Key.Kind.QUANTITY) {
            return OptionalDouble.empty();
        }
        return PlusMinus.split(typed).deviation(key.dimension(), quantity(key, typed));
    }

    private static double quantity(Key key, String typed) throws QuantityException {
        String value = PlusMinus.split(typed).value();
        return inRange(key, value, QuantityParser.parse(value, key.dimension(), key.example()));
    }

    private static double inRange(Key key, String typed, double value) throws QuantityException {
        if (key.range().contains(value)) {
            return value;
        }
        throw new QuantityException(InputText.shown(typed) + " is out of range; allowed is "
                + key.range().wordsLike(typed) + hint(key, typed, value));
    }

    private static String hint(Key key, String typed, double value) {
        if (key.dimension() == Dimension.SHARE && value > 1 && value <= 100 && !typed.contains("%")) {
            return "; did you mean " + InputText.shown(typed) + " %?";
        }
        if (key.path().equals("sun.elevation") && value <= 0) {
            return "; the sun must stand above the horizon";
        }
        if (key.path().equals("pan.water") && value == 0) {
            return "; no water: the pan heats something; leave the key out for the usual two fifths of the pan";
        }
        return "";
    }

    private static String word(Key key, String typed) throws QuantityException {
        Optional<String> exact =
                key.words().stream().filter(w -> w.equalsIgnoreCase(typed)).findFirst();
        if (exact.isPresent()) {
            return exact.get();
        }
        throw new QuantityException(InputText.shown(typed) + " is not known here; " + advice(key.words(), typed));
    }

    /** The word that was meant, or those that share a part with what was typed, or all of them. */
    private static String advice(List<String> words, String typed) {
        String part = typed.toLowerCase(Locale.ROOT);
        List<String> alike = part.isBlank()
                ? List.of()
                : words.stream().filter(w -> sharesPart(w, part)).toList();
        Optional<String> near = NearestWord.of(typed, words).filter(w -> alike.isEmpty() || alike.contains(w));
        Optional<String> meant = near.isEmpty() && alike.size() == 1 ? Optional.of(alike.get(0)) : near;
        return meant.map(word -> "did you mean " + word + "?")
                .orElseGet(() -> alike.isEmpty()
                        ? "allowed are " + String.join(", ", words)
                        : "nearest are " + String.join(", ", alike));
    }

    private static boolean sharesPart(String word, String typed) {
        return word.contains(typed)
                || Arrays.stream(word.split("[ -]")).anyMatch(w -> w.length() >= SHORTEST_PART && typed.contains(w));
    }

    private static Boolean onOrOff(String typed) throws QuantityException {
        String word = InputText.normalised(typed).toLowerCase(Locale.ROOT);
        if (!ON.contains(word) && !OFF.contains(word)) {
            throw new QuantityException(InputText.shown(typed) + " is neither on nor off; write on, off, yes or no");
        }
        return ON.contains(word);
    }

    private static String line(String typed, int longest) throws QuantityException {
        String text = InputText.normalised(typed);
        if (text.isEmpty()) {
            throw new QuantityException("there is nothing here; one line of text is needed");
        }
        if (text.length() > longest) {
            throw new QuantityException(InputText.shown(text) + " is longer than " + longest + " characters");
        }
        if (text.codePoints().anyMatch(c -> Character.getType(c) == Character.CONTROL)) {
            throw new QuantityException(InputText.shown(text) + " holds a character that cannot be printed; remove it");
        }
        return text;
    }
}
