package simmerpoint.scenario;

import java.util.List;
import java.util.Set;
import simmerpoint.units.Dimension;

/** Makes the keys of one section; a null default means that the file must give the key. */
record KeyMaker(String section, Set<String> onlyFor) {
    static KeyMaker in(String section) {
        return new KeyMaker(section, Set.of());
    }

    KeyMaker onlyFor(String... words) {
        return new KeyMaker(section, Set.of(words));
    }

    Key quantity(Dimension dimension, String name, String defaultText, String example, Range range, String sentence) {
        Key.Kind kind = dimension == Dimension.COUNT ? Key.Kind.COUNT : Key.Kind.QUANTITY;
        return new Key(path(name), kind, dimension, example, range, List.of(), defaultText, onlyFor, sentence);
    }

    Key length(String name, String defaultText, String example, Range range, String sentence) {
        return quantity(Dimension.LENGTH, name, defaultText, example, range, sentence);
    }

    Key angle(String name, String defaultText, String example, Range range, String sentence) {
        return quantity(Dimension.ANGLE, name, defaultText, example, range, sentence);
    }

    Key share(String name, String defaultText, String example, Range range, String sentence) {
        return quantity(Dimension.SHARE, name, defaultText, example, range, sentence);
    }

    Key count(String name, String example, Range range, String sentence) {
        return quantity(Dimension.COUNT, name, null, example, range, sentence);
    }

    Key word(String name, String defaultText, List<String> words, String sentence) {
        String example = defaultText == null ? words.get(0) : defaultText;
        return new Key(path(name), Key.Kind.WORD, null, example, null, words, defaultText, onlyFor, sentence);
    }

    Key onOff(String name, String defaultText, String sentence) {
        return plain(Key.Kind.SWITCH, name, defaultText, defaultText, sentence);
    }

    /** A date, a time or a zone. */
    Key plain(Key.Kind kind, String name, String defaultText, String example, String sentence) {
        return new Key(path(name), kind, null, example, null, List.of(), defaultText, onlyFor, sentence);
    }

    /** A latitude or longitude. */
    Key onEarth(Key.Kind kind, String name, String example, Range range, String sentence) {
        return new Key(path(name), kind, Dimension.ANGLE, example, range, List.of(), null, onlyFor, sentence);
    }

    /** A word whose default is taken from elsewhere. */
    Key wordOrElse(String name, String defaultWords, String example, List<String> words, String sentence) {
        return new Key(path(name), Key.Kind.WORD, null, example, null, words, defaultWords, onlyFor, sentence);
    }

    Key text(String name, String defaultText, String example, String sentence) {
        return new Key(path(name), Key.Kind.TEXT, null, example, null, List.of(), defaultText, onlyFor, sentence);
    }

    Key file(String name, String example, String sentence) {
        return new Key(path(name), Key.Kind.FILE, null, example, null, List.of(), null, onlyFor, sentence);
    }

    private String path(String name) {
        return section.isEmpty() ? name : section + "." + name;
    }
}
