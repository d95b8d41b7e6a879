package simmerpoint.scenario;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import simmerpoint.units.InputText;
import simmerpoint.units.QuantityException;

/** Walks the nodes of a file along {@link Keys} and finds unknown, misplaced, wrong and missing keys. */
final class KeyReader {
    private final Problems problems;
    private final Values values = new Values();

    private KeyReader(Problems problems) {
        this.problems = problems;
    }

    /**
     * Reads every key.
     *
     * @param overridden paths of keys whose value was not taken from the file; if one of them chooses a section's other
     *     keys, keys of the file that no longer belong are left out instead of refused
     */
    static Values read(Node.Section root, Set<String> overridden, Problems problems) {
        KeyReader reader = new KeyReader(problems);
        reader.section("", root);
        ChosenKeys.check(reader.values, overridden, problems);
        return reader.values;
    }

    private void section(String path, Node.Section section) {
        for (Map.Entry<String, Node.Entry> entry : section.entries().entrySet()) {
            String full = path.isEmpty() ? entry.getKey() : path + "." + entry.getKey();
            if (!Keys.namesIn(path).contains(entry.getKey())) {
                unknown(path, entry.getKey(), entry.getValue().keyLine());
            } else if (Keys.isSection(full)) {
                subsection(full, entry.getValue());
            } else {
                value(Keys.find(full).orElseThrow(), entry.getValue());
            }
        }
    }

    private void value(Key key, Node.Entry entry) {
        if (!(entry.node() instanceof Node.Scalar scalar)) {
            String found = entry.node() instanceof Node.Listing ? "a list" : "a section";
            problems.add(
                    entry.keyLine(),
                    key.path(),
                    found + " stands here, but one value is needed, for instance " + key.example());
            return;
        }
        if (scalar.isNothing()) {
            problems.add(entry.keyLine(), key.path(), "there is no value; write for instance " + key.example());
            return;
        }
        try {
            Object si = ValueReader.read(key, scalar.text());
            values.put(key, new Value(si, InputText.shown(scalar.text()), scalar.line(), true));
        } catch (QuantityException e) {
            problems.add(scalar.line(), key.path(), e.getMessage());
        }
    }

    private void subsection(String path, Node.Entry entry) {
        values.putSection(path, entry.keyLine());
        if (entry.node() instanceof Node.Section section) {
            section(path, section);
            return;
        }
        boolean nothing = entry.node() instanceof Node.Scalar scalar && scalar.isNothing();
        String found = nothing
                ? "there is nothing under it"
                : entry.node() instanceof Node.Scalar scalar
                        ? InputText.shown(scalar.text()) + " stands here, but a section is needed"
                        : "a list stands here, but a section is needed";
        problems.add(entry.keyLine(), path, found + "; its keys are " + names(path));
    }

    private void unknown(String section, String name, int line) {
        String path = InputText.shown(section.isEmpty() ? name : section + "." + name);
        Optional<String> elsewhere = elsewhere(name);
        Optional<String> near = elsewhere.isPresent() ? Optional.empty() : Nearest.of(name, Keys.namesIn(section));
        String advice = elsewhere
                .or(() -> near.map(n -> "did you mean " + n + "?"))
                .orElse("known " + (section.isEmpty() ? "at the top" : "in " + section) + " are " + names(section));
        problems.add(line, path, "this key is not known here; " + advice);
        near.ifPresent(n -> problems.spoilt(section.isEmpty() ? n : section + "." + n));
    }

    /** Where a key of exactly that name, or of that full path, does belong. */
    private static Optional<String> elsewhere(String name) {
        if (Keys.find(name).isPresent() && name.contains(".")) {
            return Optional.of("keys are indented under their section, here "
                    + Keys.find(name).get().section());
        }
        if (Keys.namesIn("").contains(name)) {
            return Optional.of("it belongs to the outermost level, not under another section");
        }
        String sections = Keys.all().stream()
                .filter(key -> key.name().equals(name))
                .map(Key::section)
                .distinct()
                .collect(Collectors.joining(" or "));
        return sections.isEmpty() ? Optional.empty() : Optional.of("it belongs under " + sections);
    }

    private static String names(String section) {
        return String.join(", ", Keys.namesIn(section));
    }
}
