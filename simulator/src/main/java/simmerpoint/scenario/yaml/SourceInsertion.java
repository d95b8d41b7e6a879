package simmerpoint.scenario.yaml;

import java.util.List;
import simmerpoint.scenario.keys.Keys;
import simmerpoint.scenario.yaml.Node.Entry;
import simmerpoint.scenario.yaml.Node.Section;

/** Puts a new key into a section, behind the keys that come before it in the order of {@link Keys}. */
final class SourceInsertion {
    private static final String STEP = "  ";

    private final String text;
    private final TextLines lines;
    private final Section section;
    private final List<String> order;
    private final boolean outermost;

    /**
     * For one section.
     *
     * @param text the whole file
     * @param lines of it
     * @param path of the section; empty for the whole file
     * @param section into which the key is put
     */
    SourceInsertion(String text, TextLines lines, String path, Section section) {
        this.text = text;
        this.lines = lines;
        this.section = section;
        this.order = Keys.namesIn(path);
        this.outermost = path.isEmpty();
    }

    /** The text with sections and key of these names, each under the one before it. */
    String insert(List<String> names, String value) {
        Entry before = before(names.get(0));
        return section.flow() ? intoBrackets(before, inBrackets(names, value)) : asLines(before, names, value);
    }

    /** For instance {@code turn: {up: 1°}}. */
    static String inBrackets(List<String> names, String value) {
        String rest = names.size() == 1 ? value : "{" + inBrackets(names.subList(1, names.size()), value) + "}";
        return names.get(0) + ": " + rest;
    }

    /** The last entry that comes before that name in the order of the file; null if there is none. */
    private Entry before(String name) {
        int place = order.indexOf(name);
        return section.entries().values().stream()
                .filter(entry -> order.indexOf(entry.name()) < place)
                .reduce((a, b) -> order.indexOf(b.name()) >= order.indexOf(a.name()) ? b : a)
                .orElse(null);
    }

    private String intoBrackets(Entry before, String entry) {
        if (before != null) {
            return at(before.span().end(), ", " + entry);
        }
        return at(section.span().start() + 1, entry + (section.entries().isEmpty() ? "" : ", "));
    }

    private String asLines(Entry before, List<String> names, String value) {
        List<Entry> entries = List.copyOf(section.entries().values());
        int first = entries.get(0).span().start();
        int column = first - lines.begin(first);
        String rows = rows(" ".repeat(column), names, value);
        boolean apart = outermost && lines.hasEmpty();
        if (before == null) {
            return at(lines.begin(first), rows + lines.lineBreak() + (apart ? lines.lineBreak() : ""));
        }
        int begin = lines.next(before.span().end());
        boolean last = before.equals(entries.get(entries.size() - 1));
        int at = lines.behindComments(begin, last && column > 0 ? column : column + 1);
        String gap = apart ? lines.lineBreak() : "";
        boolean unended = at == text.length() && !lines.endsWithBreak();
        return unended ? at(at, lines.lineBreak() + gap + rows) : at(at, gap + rows + lines.lineBreak());
    }

    /** A section of the outermost level with its key on a line of its own, anything else on one line. */
    private String rows(String indent, List<String> names, String value) {
        if (!outermost || names.size() == 1) {
            return indent + inBrackets(names, value);
        }
        String inner = inBrackets(names.subList(1, names.size()), value);
        return indent + names.get(0) + ":" + lines.lineBreak() + indent + STEP + inner;
    }

    private String at(int offset, String inserted) {
        return text.substring(0, offset) + inserted + text.substring(offset);
    }
}
