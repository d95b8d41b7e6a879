package simmerpoint.scenario.yaml;

import java.util.List;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.events.DocumentStartEvent;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.ReaderException;
import org.yaml.snakeyaml.reader.StreamReader;
import simmerpoint.scenario.Problems;
import simmerpoint.scenario.ScenarioException;

/**
 * Turns YAML text into {@link Node}s. Works on the parser's events, so that a value stays the text that was typed ({@code
 * no}, {@code 1e3}, {@code 0x1F}), and so that tags, anchors and aliases are refused before anything is made of them.
 */
public final class YamlText {
    private final Problems problems;
    private final String text;
    private final ParserImpl parser;

    private YamlText(String text, Problems problems) {
        this.text = text;
        this.problems = problems;
        this.parser = new ParserImpl(new StreamReader(text), new LoaderOptions());
    }

    /** Reads the text; throws if it is no YAML that a scenario may use. */
    public static Node.Section read(String text, Problems problems) throws ScenarioException {
        String bare = text.substring(mark(text).length());
        refuseTabs(bare, problems);
        try {
            return new YamlText(bare, problems).document();
        } catch (MarkedYAMLException e) {
            throw problems.refuse(line(e), "", YamlMessages.plain(e.getProblem(), e.getContext()));
        } catch (ReaderException e) {
            int line = 1
                    + (int) bare.codePoints()
                            .limit(e.getPosition())
                            .filter(c -> c == '\n')
                            .count();
            throw problems.refuse(line, "", "there is a character here that cannot be printed; remove it");
        } catch (YAMLException e) {
            throw problems.refuse(0, "", "this cannot be read as YAML");
        }
    }

    /** The mark that some editors put before the first letter; places are counted from behind it. */
    static String mark(String text) {
        return text.startsWith("\uFEFF") ? "\uFEFF" : "";
    }

    private static void refuseTabs(String text, Problems problems) throws ScenarioException {
        int line = 0;
        for (String row : text.split("\n", -1)) {
            line++;
            String indent = row.substring(0, row.length() - row.stripLeading().length());
            if (indent.contains("\t") && !row.isBlank() && !row.stripLeading().startsWith("#")) {
                throw problems.refuse(line, "", "the line begins with a tab; indent with spaces");
            }
        }
    }

    private Node.Section document() throws ScenarioException {
        parser.getEvent();
        Event start = parser.getEvent();
        if (start.is(Event.ID.StreamEnd)) {
            throw problems.refuse(0, "", "the file is empty; a scenario needs at least the section dish");
        }
        refuseTagDirectives((DocumentStartEvent) start);
        Node root = new NodeBuilder(text, parser, problems).node("");
        parser.getEvent();
        Event next = parser.getEvent();
        if (!next.is(Event.ID.StreamEnd)) {
            throw problems.refuse(line(next), "", "a second document begins here; a scenario file holds one scenario");
        }
        return section(root);
    }

    private void refuseTagDirectives(DocumentStartEvent start) throws ScenarioException {
        List<String> usual = List.of("!", "!!");
        if (start.getTags() != null && !usual.containsAll(start.getTags().keySet())) {
            throw problems.refuse(line(start), "", "YAML tags are not used in a scenario; remove %TAG");
        }
    }

    private Node.Section section(Node root) throws ScenarioException {
        if (root instanceof Node.Section section) {
            return section;
        }
        if (root instanceof Node.Scalar scalar && scalar.isNothing()) {
            throw problems.refuse(0, "", "the file is empty; a scenario needs at least the section dish");
        }
        throw problems.refuse(
                root.span().line(),
                "",
                "this is not a scenario; a scenario has keys and values, as in title: Tea kitchen");
    }

    /** Where the fault is; for what was begun and not ended, where it was begun. */
    private static int line(MarkedYAMLException e) {
        boolean begun = YamlMessages.isUnfinished(e.getProblem(), e.getContext()) && e.getContextMark() != null;
        Mark mark = begun ? e.getContextMark() : e.getProblemMark();
        return mark == null ? 0 : mark.getLine() + 1;
    }

    static int line(Event event) {
        return event.getStartMark().getLine() + 1;
    }
}
