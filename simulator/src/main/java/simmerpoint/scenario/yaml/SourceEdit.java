package simmerpoint.scenario.yaml;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import simmerpoint.scenario.Problems;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.keys.Key;
import simmerpoint.scenario.yaml.Node.Entry;
import simmerpoint.scenario.yaml.Node.Section;

/** Changes one key of a text and leaves the rest of it as it stands. */
final class SourceEdit {
    private final String text;
    private final Section root;
    private final TextLines lines;

    private SourceEdit(String text) throws ScenarioException {
        this.text = text;
        this.root = root(text);
        this.lines = new TextLines(text);
    }

    /** All that stands in the text. */
    static Section root(String text) throws ScenarioException {
        return YamlText.read(text, new Problems("the scenario"));
    }

    /** The text with the key given that value. */
    static String put(String text, Key key, String typed) throws ScenarioException {
        return new SourceEdit(text).put(key.path().split("\\."), YamlScalar.of(key, typed));
    }

    /** The text without the key or section of that path, and without a section that has nothing else in it. */
    static String remove(String text, String path) throws ScenarioException {
        return new SourceEdit(text).remove(path.split("\\."));
    }

    private String put(String[] names, String value) {
        Section section = root;
        int depth = 0;
        while (depth < names.length - 1 && inner(section, names[depth]).isPresent()) {
            section = inner(section, names[depth]).get();
            depth++;
        }
        Entry entry = section.entries().get(names[depth]);
        List<String> rest = Arrays.asList(names).subList(depth, names.length);
        if (entry == null) {
            String path = String.join(".", Arrays.asList(names).subList(0, depth));
            return new SourceInsertion(text, lines, path, section).insert(rest, value);
        }
        return replace(entry, rest, value);
    }

    private static Optional<Section> inner(Section section, String name) {
        return Optional.ofNullable(section.entries().get(name))
                .map(Entry::node)
                .filter(Section.class::isInstance)
                .map(Section.class::cast);
    }

    private String replace(Entry entry, List<String> rest, String value) {
        boolean typed =
                entry.node() instanceof Node.Scalar && !entry.node().span().isEmpty();
        if (typed && rest.size() == 1) {
            return splice(entry.node().span(), value);
        }
        return splice(entry.span(), SourceInsertion.inBrackets(rest, value));
    }

    /** Puts in a value; a comment behind it stays in its column if there is room. */
    private String splice(Node.Span span, String value) {
        int from = span.start();
        int to = span.end();
        int gap = to;
        while (gap < text.length() && text.charAt(gap) == ' ') {
            gap++;
        }
        boolean comment = gap > to && gap < text.length() && text.charAt(gap) == '#';
        if (!comment) {
            return text.substring(0, from) + value + text.substring(to);
        }
        int spaces = Math.max(1, gap - from - value.codePointCount(0, value.length()));
        return text.substring(0, from) + value + " ".repeat(spaces) + text.substring(gap);
    }

    private String remove(String[] names) {
        List<Section> around = new ArrayList<>(List.of(root));
        for (int i = 0; i < names.length - 1; i++) {
            Optional<Section> next = inner(around.get(i), names[i]);
            if (next.isEmpty()) {
                return text;
            }
            around.add(next.get());
        }
        int depth = names.length - 1;
        if (!around.get(depth).entries().containsKey(names[depth])) {
            return text;
        }
        while (depth > 0 && around.get(depth).entries().size() == 1) {
            depth--;
        }
        return cut(around.get(depth), around.get(depth).entries().get(names[depth]));
    }

    private String cut(Section section, Entry entry) {
        return section.flow() ? cutFromBrackets(List.copyOf(section.entries().values()), entry) : cutLines(entry);
    }

    private String cutFromBrackets(List<Entry> entries, Entry entry) {
        int at = entries.indexOf(entry);
        if (at + 1 < entries.size()) {
            return text.substring(0, entry.span().start())
                    + text.substring(entries.get(at + 1).span().start());
        }
        int from = at > 0 ? entries.get(at - 1).span().end() : entry.span().start();
        return text.substring(0, from) + text.substring(entry.span().end());
    }

    private String cutLines(Entry entry) {
        int from = lines.begin(entry.span().start());
        int to = lines.behindComments(
                lines.next(entry.span().end()), entry.span().start() - from + 1);
        if (to < text.length() || lines.endsWithBreak()) {
            return text.substring(0, from) + text.substring(to);
        }
        return text.substring(0, from).stripTrailing();
    }
}
