package simmerpoint.scenario.yaml;

import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.events.ScalarEvent;
import org.yaml.snakeyaml.nodes.NodeId;
import org.yaml.snakeyaml.nodes.Tag;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.StreamReader;
import org.yaml.snakeyaml.resolver.Resolver;
import simmerpoint.scenario.keys.Key;

/** Writes one value so that it is read back as it is: plain where that can be, else in quotes. */
final class YamlScalar {
    private YamlScalar() {}

    /**
     * The value as YAML.
     *
     * @param key whose value it is
     * @param typed the value
     */
    static String of(Key key, String typed) {
        if (!isPrintable(typed)) {
            return escaped(typed);
        }
        boolean plain = isPlain(typed) && (!isFreeText(key) || isText(typed));
        return plain ? typed : "'" + typed.replace("'", "''") + "'";
    }

    /** Numbers, days and words of choice stand plainly as in any scenario; text that looks like one of them is quoted. */
    private static boolean isFreeText(Key key) {
        return key.kind() != Key.Kind.SWITCH
                && key.dimension() == null
                && key.kind() != Key.Kind.DATE
                && key.kind() != Key.Kind.TIME;
    }

    private static boolean isText(String typed) {
        return new Resolver().resolve(NodeId.scalar, typed, true).equals(Tag.STR);
    }

    private static boolean isPrintable(String typed) {
        return typed.codePoints().allMatch(YamlScalar::isPrintable);
    }

    private static boolean isPrintable(int c) {
        int type = Character.getType(c);
        return type != Character.CONTROL
                && type != Character.FORMAT
                && type != Character.SURROGATE
                && type != Character.LINE_SEPARATOR
                && type != Character.PARAGRAPH_SEPARATOR
                && type != Character.UNASSIGNED
                && StreamReader.isPrintable(c);
    }

    /** Whether it is read back without quotes, in brackets as well as outside. */
    private static boolean isPlain(String typed) {
        boolean nothing = typed.isEmpty() || typed.equals("~") || typed.equalsIgnoreCase("null");
        return !nothing && isRead("k: " + typed + " # c", typed) && isRead("{k: " + typed + ", l: m}", typed);
    }

    private static boolean isRead(String text, String wanted) {
        try {
            ParserImpl parser = new ParserImpl(new StreamReader(text), new LoaderOptions());
            for (int i = 0; i < 4; i++) {
                parser.getEvent();
            }
            Event event = parser.getEvent();
            boolean same = event instanceof ScalarEvent scalar
                    && scalar.isPlain()
                    && scalar.getTag() == null
                    && scalar.getAnchor() == null
                    && scalar.getValue().equals(wanted);
            while (same && !parser.getEvent().is(Event.ID.StreamEnd)) {
                same = true;
            }
            return same;
        } catch (YAMLException e) {
            return false;
        }
    }

    private static String escaped(String typed) {
        StringBuilder escaped = new StringBuilder("\"");
        typed.codePoints().forEach(c -> {
            if (c == '"' || c == '\\') {
                escaped.append('\\').append((char) c);
            } else if (isPrintable(c)) {
                escaped.appendCodePoint(c);
            } else {
                escaped.append(c > 0xffff ? String.format("\\U%08x", c) : String.format("\\u%04x", c));
            }
        });
        return escaped.append('"').toString();
    }
}
