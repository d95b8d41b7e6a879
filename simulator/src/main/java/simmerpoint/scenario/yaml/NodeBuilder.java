package simmerpoint.scenario.yaml;

import java.util.LinkedHashMap;
import java.util.Map;
import org.yaml.snakeyaml.DumperOptions;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.events.CollectionStartEvent;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.events.MappingStartEvent;
import org.yaml.snakeyaml.events.NodeEvent;
import org.yaml.snakeyaml.events.ScalarEvent;
import org.yaml.snakeyaml.parser.ParserImpl;
import simmerpoint.scenario.Problems;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.units.InputText;

/** Builds nodes from the parser's events and refuses what no scenario needs. */
final class NodeBuilder {
    private static final int DEEPEST = 8;

    private final String text;
    private final boolean plainOffsets;
    private final ParserImpl parser;
    private final Problems problems;
    private int depth;

    /** From the next event of {@code parser}, which reads {@code text}. */
    NodeBuilder(String text, ParserImpl parser, Problems problems) {
        this.text = text;
        this.plainOffsets = text.codePointCount(0, text.length()) == text.length();
        this.parser = parser;
        this.problems = problems;
    }

    /** The node that begins with the next event; {@code path} is the key it stands under. */
    Node node(String path) throws ScenarioException {
        Event event = parser.getEvent();
        int line = YamlText.line(event);
        refuseReferences(event, path, line);
        if (event instanceof ScalarEvent scalar) {
            return new Node.Scalar(scalar.getValue(), span(scalar), scalar.isPlain());
        }
        if (++depth > DEEPEST) {
            throw problems.refuse(line, "", "sections are nested more than " + DEEPEST + " deep; no key is that deep");
        }
        Node node = event instanceof MappingStartEvent mapping ? section(path, mapping) : list(path, event);
        depth--;
        return node;
    }

    private Node.Span span(ScalarEvent scalar) {
        int start = offset(scalar.getStartMark());
        int end = offset(scalar.getEndMark());
        boolean block = scalar.getScalarStyle() == DumperOptions.ScalarStyle.LITERAL
                || scalar.getScalarStyle() == DumperOptions.ScalarStyle.FOLDED;
        int stripped =
                block ? start + text.substring(start, end).stripTrailing().length() : end;
        return new Node.Span(YamlText.line(scalar), start, stripped);
    }

    /** From a bracket to {@code end}, its fellow; without brackets to {@code last}, behind what stands in it. */
    private Node.Span span(Event begin, Event end, int last) {
        boolean brackets = end.getEndMark().getIndex() > end.getStartMark().getIndex();
        return new Node.Span(
                YamlText.line(begin), offset(begin.getStartMark()), brackets ? offset(end.getEndMark()) : last);
    }

    /** The parser counts a character outside the basic plane as one. */
    private int offset(Mark mark) {
        return plainOffsets ? mark.getIndex() : text.offsetByCodePoints(0, mark.getIndex());
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

    private Node list(String path, Event begin) throws ScenarioException {
        int last = offset(begin.getStartMark());
        while (!parser.peekEvent().is(Event.ID.SequenceEnd)) {
            last = node(path).span().end();
        }
        return new Node.Listing(span(begin, parser.getEvent(), last));
    }

    private Node.Section section(String path, MappingStartEvent begin) throws ScenarioException {
        Map<String, Node.Entry> entries = new LinkedHashMap<>();
        int last = offset(begin.getStartMark());
        String before = null;
        while (!parser.peekEvent().is(Event.ID.MappingEnd)) {
            int keyLine = YamlText.line(parser.peekEvent());
            if (!(node(path) instanceof Node.Scalar key)) {
                throw problems.refuse(keyLine, path, "a key must be a plain word");
            }
            String keyPath = path.isEmpty() ? key.text() : path + "." + key.text();
            Node.Entry entry = entry(key, node(shownPath(keyPath)));
            last = entry.span().end();
            if (begin.isFlow() && isDecimalComma(key, entry.node(), entries.get(before))) {
                refuseComma(entries.remove(before), path, key.text(), keyLine);
            } else {
                put(entries, shownPath(keyPath), entry);
                before = key.text();
            }
        }
        return new Node.Section(span(begin, parser.getEvent(), last), begin.isFlow(), entries);
    }

    private Node.Entry entry(Node.Scalar key, Node value) {
        Node.Span span = value.span();
        boolean bare =
                span.isEmpty() && text.substring(key.span().end(), span.start()).isBlank();
        int end = bare ? key.span().end() : span.end();
        return new Node.Entry(
                key.text(), new Node.Span(key.span().line(), key.span().start(), end), value);
    }

    private static String shownPath(String path) {
        return InputText.shown(path);
    }

    /** Whether {@code {disc: 1,5 m}} was typed, which YAML takes for {@code disc: 1} and a key {@code 5 m}. */
    private static boolean isDecimalComma(Node.Scalar key, Node value, Node.Entry before) {
        boolean digits = key.plain() && key.text().matches("[0-9].*");
        return digits
                && value instanceof Node.Scalar scalar
                && scalar.isNothing()
                && before != null
                && before.node() instanceof Node.Scalar last
                && last.text().matches("[+\\-−]?[0-9]+");
    }

    private void refuseComma(Node.Entry before, String path, String rest, int line) {
        String whole = ((Node.Scalar) before.node()).text();
        String key = path.isEmpty() ? before.name() : path + "." + before.name();
        problems.add(
                line,
                key,
                InputText.shown(whole + "," + rest) + " has a comma; decimals take a point; write "
                        + InputText.shown(whole + "." + rest));
        problems.spoilt(key);
    }

    private void put(Map<String, Node.Entry> entries, String path, Node.Entry entry) {
        Node.Entry earlier = entries.putIfAbsent(entry.name(), entry);
        if (earlier != null) {
            problems.add(
                    entry.span().line(),
                    path,
                    "this key is given twice, first in line " + earlier.span().line() + "; keep one of them");
        }
    }
}
