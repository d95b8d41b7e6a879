package simmerpoint.scenario;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.yaml.snakeyaml.DumperOptions;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.events.MappingStartEvent;
import org.yaml.snakeyaml.events.ScalarEvent;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.StreamReader;

/** Where in a text everything stands, in characters from its beginning; for text that {@link YamlText} has read. */
final class SourceTree {
    private final String text;
    private final boolean plainOffsets;
    private final ParserImpl parser;

    /** A piece of text. */
    sealed interface Part {
        /** First character. */
        int start();

        /** Behind the last character that is not space. */
        int end();
    }

    /**
     * One value.
     *
     * @param start first character, a quotation mark if there is one
     * @param end behind the last character
     * @param text as typed, without quotes
     */
    record Scalar(int start, int end, String text) implements Part {}

    /**
     * A list, which no key takes.
     *
     * @param start first character
     * @param end behind the last character
     */
    record Listing(int start, int end) implements Part {}

    /**
     * Keys and what stands under them.
     *
     * @param start first character
     * @param end behind the last character of its last value, or behind its bracket
     * @param flow whether it stands in brackets
     * @param entries in the order of the text
     */
    record Section(int start, int end, boolean flow, List<Entry> entries) implements Part {
        Optional<Entry> entry(String name) {
            return entries.stream().filter(entry -> entry.name.equals(name)).findFirst();
        }
    }

    /**
     * One key of a section.
     *
     * @param name of the key
     * @param start first character of the key
     * @param end behind its value; behind the key, if it has none
     * @param value what stands under it
     */
    record Entry(String name, int start, int end, Part value) {}

    private SourceTree(String text) {
        this.text = text;
        this.plainOffsets = text.codePointCount(0, text.length()) == text.length();
        this.parser = new ParserImpl(new StreamReader(text), new LoaderOptions());
    }

    /** The whole file. */
    static Section read(String text) {
        SourceTree tree = new SourceTree(text);
        tree.parser.getEvent();
        tree.parser.getEvent();
        return (Section) tree.part();
    }

    private Part part() {
        Event event = parser.getEvent();
        if (event instanceof ScalarEvent scalar) {
            return scalar(scalar);
        }
        boolean flow = event.getEndMark().getIndex() > event.getStartMark().getIndex();
        return event instanceof MappingStartEvent ? section(start(event), flow) : list(start(event), flow);
    }

    private Scalar scalar(ScalarEvent event) {
        int start = start(event);
        int end = end(event);
        boolean block = event.getScalarStyle() == DumperOptions.ScalarStyle.LITERAL
                || event.getScalarStyle() == DumperOptions.ScalarStyle.FOLDED;
        int stripped =
                block ? start + text.substring(start, end).stripTrailing().length() : end;
        return new Scalar(start, stripped, event.getValue());
    }

    private Listing list(int start, boolean flow) {
        int last = start;
        while (!parser.peekEvent().is(Event.ID.SequenceEnd)) {
            last = part().end();
        }
        Event end = parser.getEvent();
        return new Listing(start, flow ? end(end) : last);
    }

    private Section section(int start, boolean flow) {
        List<Entry> entries = new ArrayList<>();
        while (!parser.peekEvent().is(Event.ID.MappingEnd)) {
            Scalar key = (Scalar) part();
            Part value = part();
            boolean nothing = value.end() == value.start();
            boolean beside = nothing && text.substring(key.end, value.start()).isBlank();
            entries.add(new Entry(key.text, key.start, beside ? key.end : value.end(), value));
        }
        Event end = parser.getEvent();
        int last = entries.isEmpty() ? start : entries.get(entries.size() - 1).end();
        return new Section(start, flow ? end(end) : last, flow, entries);
    }

    private int start(Event event) {
        return offset(event.getStartMark().getIndex());
    }

    private int end(Event event) {
        return offset(event.getEndMark().getIndex());
    }

    /** The parser counts a character outside the basic plane as one. */
    private int offset(int codePoints) {
        return plainOffsets ? codePoints : text.offsetByCodePoints(0, codePoints);
    }

    /** Every value by full path; a list as "[]", a section without keys as "{}". */
    static Map<String, String> values(Section root) {
        Map<String, String> values = new LinkedHashMap<>();
        collect("", root, values);
        return values;
    }

    private static void collect(String path, Section section, Map<String, String> values) {
        for (Entry entry : section.entries) {
            String full = path.isEmpty() ? entry.name : path + "." + entry.name;
            if (entry.value instanceof Section inner && !inner.entries.isEmpty()) {
                collect(full, inner, values);
            } else {
                values.put(full, shown(entry.value));
            }
        }
    }

    private static String shown(Part part) {
        if (part instanceof Scalar scalar) {
            return scalar.text;
        }
        return part instanceof Listing ? "[]" : "{}";
    }
}
