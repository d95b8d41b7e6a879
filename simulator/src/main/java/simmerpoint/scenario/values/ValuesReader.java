package simmerpoint.scenario.values;

import java.util.Map;
import java.util.Optional;
import simmerpoint.scenario.Problems;
import simmerpoint.scenario.keys.Key;
import simmerpoint.scenario.keys.Keys;
import simmerpoint.scenario.keys.NearestWord;
import simmerpoint.scenario.keys.UnknownKeys;
import simmerpoint.scenario.yaml.Node;
import simmerpoint.units.InputText;

/** Walks the nodes of a file along {@link Keys} and finds unknown, misplaced and wrong keys. */
public final class ValuesReader {
    private final ValuesBuilder values;

    private ValuesReader(ValuesBuilder values) {
        this.values = values;
    }

    /** Reads every key; {@code problems} are those found in the text so far. */
    public static ScenarioValues read(ScenarioSource source, Node.Section root, Problems problems) {
        ValuesReader reader = new ValuesReader(new ValuesBuilder(source, problems));
        reader.section("", root);
        return reader.values.values();
    }

    private void section(String path, Node.Section section) {
        for (Map.Entry<String, Node.Entry> entry : section.entries().entrySet()) {
            String full = path.isEmpty() ? entry.getKey() : path + "." + entry.getKey();
            if (!Keys.namesIn(path).contains(entry.getKey())) {
                unknown(path, entry.getKey(), entry.getValue().span().line());
            } else if (Keys.isSection(full)) {
                subsection(full, entry.getValue());
            } else {
                value(Keys.get(full), entry.getValue());
            }
        }
    }

    private void value(Key key, Node.Entry entry) {
        if (!(entry.node() instanceof Node.Scalar scalar)) {
            String found = entry.node() instanceof Node.Listing ? "a list" : "a section";
            String why = found + " stands here, but one value is needed, for instance " + key.example();
            values.refuse(key, "", entry.span().line(), why);
        } else if (scalar.isNothing()) {
            String why = "there is no value; write for instance " + key.example();
            values.refuse(key, scalar.text(), entry.span().line(), why);
        } else {
            values.read(key, scalar.text(), scalar.span().line());
        }
    }

    private void subsection(String path, Node.Entry entry) {
        values.addSection(path, entry.span().line());
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
        values.problems().add(entry.span().line(), path, found + "; its keys are " + names(path));
    }

    private void unknown(String section, String name, int line) {
        String path = section.isEmpty() ? name : section + "." + name;
        Optional<String> elsewhere = UnknownKeys.elsewhere(name);
        Optional<String> near = elsewhere.isPresent() ? Optional.empty() : NearestWord.of(name, Keys.namesIn(section));
        String advice = elsewhere
                .or(() -> near.map(n -> "did you mean " + n + "?"))
                .orElse("known " + (section.isEmpty() ? "at the top" : "in " + section) + " are " + names(section));
        values.problems().add(line, InputText.shown(path), "this key is not known here; " + advice);
        near.ifPresent(n -> values.problems().spoilt(section.isEmpty() ? n : section + "." + n));
    }

    private static String names(String section) {
        return String.join(", ", Keys.namesIn(section));
    }
}
