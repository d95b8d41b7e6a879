package simmerpoint.scenario.keys;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What to say of keys that are not known. */
public final class UnknownKeys {
    private UnknownKeys() {}

    /** What to say of a path that is no key's; empty if it is one. */
    public static Optional<String> whyUnknown(String path) {
        if (Keys.find(path).isPresent()) {
            return Optional.empty();
        }
        String advice = Keys.isSection(path) && !path.isEmpty()
                ? "; it is a section, its keys are " + String.join(", ", Keys.namesIn(path))
                : nearPart(path).map(near -> "; did you mean " + near + "?").orElseGet(() -> known(path));
        return Optional.of("this key is not known" + advice);
    }

    /** The nearest key, but none if the path goes through a section that is like no section's name. */
    private static Optional<String> nearPart(String path) {
        String section = knownSection(path);
        String rest = section.isEmpty() ? path : path.substring(section.length() + 1);
        int dot = rest.indexOf('.');
        boolean like = section.isEmpty()
                || dot < 0
                || NearestWord.of(rest.substring(0, dot), Keys.namesIn(section)).isPresent();
        return like ? nearest(path) : Optional.empty();
    }

    private static String known(String path) {
        String section = knownSection(path);
        return section.isEmpty() ? "" : "; known in " + section + " are " + String.join(", ", Keys.namesIn(section));
    }

    /** The deepest section above a path; empty if there is none. */
    private static String knownSection(String path) {
        String section = path;
        do {
            section = section.substring(0, Math.max(0, section.lastIndexOf('.')));
        } while (!section.isEmpty() && !Keys.isSection(section));
        return section;
    }

    /** Those of a bare name, else the one whose full path is nearest, else those whose name ends it. */
    private static Optional<String> nearest(String path) {
        Optional<String> named = named(path.substring(path.lastIndexOf('.') + 1));
        return path.contains(".") ? Keys.nearest(path).or(() -> named) : named.or(() -> Keys.nearest(path));
    }

    private static Optional<String> named(String name) {
        return joined(name, Key::path);
    }

    /** Where a key of exactly that name, or of that full path, does belong. */
    public static Optional<String> elsewhere(String name) {
        if (Keys.find(name).isPresent() && name.contains(".")) {
            return Optional.of("keys are indented under their section, here "
                    + Keys.find(name).get().section());
        }
        if (Keys.namesIn("").contains(name)) {
            return Optional.of("it belongs to the outermost level, not under another section");
        }
        return joined(name, Key::section).map(sections -> "it belongs under " + sections);
    }

    /** What is said of every key of that name, with "or" between; empty if there is none. */
    private static Optional<String> joined(String name, Function<Key, String> said) {
        List<Key> named =
                Keys.all().stream().filter(key -> key.name().equals(name)).toList();
        List<Key> ofDish = named.stream()
                .filter(key -> ZoneKeys.zoneOf(key.path()).isEmpty())
                .toList();
        String all = (ofDish.isEmpty() ? named.stream().limit(1) : ofDish.stream())
                .map(said)
                .distinct()
                .collect(Collectors.joining(" or "));
        return all.isEmpty() ? Optional.empty() : Optional.of(all);
    }
}
