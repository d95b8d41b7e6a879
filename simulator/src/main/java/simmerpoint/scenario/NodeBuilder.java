package simmerpoint.scenario;

import org.yaml.snakeyaml.events.CollectionStartEvent;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.events.MappingStartEvent;
import org.yaml.snakeyaml.events.NodeEvent;
import org.yaml.snakeyaml.events.ScalarEvent;
import org.yaml.snakeyaml.parser.ParserImpl;
import simmerpoint.units.InputText;

/** Builds nodes from the parser's events and refuses what no scenario needs. */
final class NodeBuilder {
    private static final int DEEPEST = 8;

    private final ParserImpl parser;
    private final Problems problems;
    private int depth;

    NodeBuilder(ParserImpl parser, Problems problems) {
        this.parser = parser;
        this.problems = problems;
    }

    /** The node that begins with the next event; {@code path} is the key it stands under. */
    Node node(String path) throws ScenarioException {
        Event event = parser.getEvent();
        int line = YamlText.line(event);
        refuseReferences(event, path, line);
        if (event instanceof ScalarEvent scalar) {
            return new Node.Scalar(scalar.getValue(), line, scalar.isPlain());
        }
        if (++depth > DEEPEST) {
            throw problems.refuse(line, "", "sections lie more than " + DEEPEST + " deep; no key is that deep");
        }
        Node node =
                event instanceof MappingStartEvent mapping ? section(path, line, mapping.isFlow()) : list(path, line);
        depth--;
        return node;
    }

    private void refuseReferences(Event event, String path, int line) throws ScenarioException {
        if (event.is(Event.ID.Alias)) {
            throw problems.refuse(line, path, "YAML aliases (*name) are not used in a scenario; write the value out");
        }
        if (event instanceof NodeEvent node && node.getAnchor() != null) {
            throw problems.refuse(line, path, "YAML anchors (&name) are not used in a scenario; remove the anchor");
        }
        String tag = event instanceof ScalarEvent scalar
                ? scalar.getTag()
                : event instanceof CollectionStartEvent collection ? collection.getTag() : null;
        if (tag != null) {
            throw problems.refuse(line, path, "YAML tags (!name) are not used in a scenario; remove the tag");
        }
    }

    private Node list(String path, int line) throws ScenarioException {
        while (!parser.peekEvent().is(Event.ID.SequenceEnd)) {
            node(path);
        }
        parser.getEvent();
        return new Node.Listing(line);
    }

    private Node.Section section(String path, int line, boolean flow) throws ScenarioException {
        Node.Section section = Node.Section.empty(line);
        String before = null;
        while (!parser.peekEvent().is(Event.ID.MappingEnd)) {
            Event event = parser.peekEvent();
            int keyLine = YamlText.line(event);
            if (!(node(path) instanceof Node.Scalar key)) {
                throw problems.refuse(keyLine, path, "a key is a plain word");
            }
            String keyPath = path.isEmpty() ? key.text() : path + "." + key.text();
            Node value = node(shownPath(keyPath));
            if (flow && isDecimalComma(key, value, section, before)) {
                refuseComma(section, before, path, key.text(), keyLine);
            } else {
                put(section, key.text(), shownPath(keyPath), new Node.Entry(keyLine, value));
                before = key.text();
            }
        }
        parser.getEvent();
        return section;
    }

    private static String shownPath(String path) {
        return InputText.shown(path);
    }

    /** Whether {@code {disc: 1,5 m}} was typed, which YAML takes for {@code disc: 1} and a key {@code 5 m}. */
    private static boolean isDecimalComma(Node.Scalar key, Node value, Node.Section section, String before) {
        boolean digits = key.plain() && key.text().matches("[0-9].*");
        return digits
                && value instanceof Node.Scalar scalar
                && scalar.isNothing()
                && before != null
                && section.entries().get(before).node() instanceof Node.Scalar last
                && last.text().matches("[+\\-−]?[0-9]+");
    }

    private void refuseComma(Node.Section section, String before, String path, String rest, int line) {
        String whole = ((Node.Scalar) section.entries().remove(before).node()).text();
        String key = path.isEmpty() ? before : path + "." + before;
        problems.add(
                line,
                key,
                InputText.shown(whole + "," + rest) + " has a comma; decimals take a point; write "
                        + InputText.shown(whole + "." + rest));
        problems.spoilt(key);
    }

    private void put(Node.Section section, String name, String path, Node.Entry entry) {
        Node.Entry earlier = section.entries().putIfAbsent(name, entry);
        if (earlier != null) {
            problems.add(
                    entry.keyLine(),
                    path,
                    "this key is given twice, first in line " + earlier.keyLine() + "; keep one of them");
        }
    }
}
