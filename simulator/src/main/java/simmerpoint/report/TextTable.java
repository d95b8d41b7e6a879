package simmerpoint.report;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import simmerpoint.answer.Item;

/** A table as plain lines: columns side by side where they fit, names over several lines if need be, else row by row. */
final class TextTable {
    private static final String INDENT = "  ";
    private static final String BETWEEN = "  ";
    private static final String CLOSER = " ";

    /** Names broken into shorter lines are no table any more. */
    private static final int LEAST_NAME = 14;

    private TextTable() {}

    /** The lines of {@code table}, none longer than {@code width}. */
    static List<String> lines(Item.Table table, int width) {
        int[] widths = widths(table);
        for (String between : List.of(BETWEEN, CLOSER)) {
            if (IntStream.of(widths).sum() + (widths.length - 1) * between.length() + INDENT.length() <= width) {
                return columns(table, widths, between);
            }
        }
        int others = IntStream.of(widths).sum() - widths[0] + (widths.length - 1) * CLOSER.length() + INDENT.length();
        if (width - others < LEAST_NAME) {
            return blocks(table, width);
        }
        Item.Table wrapped = wrapped(table, width - others);
        return columns(wrapped, widths(wrapped), CLOSER);
    }

    private static int[] widths(Item.Table table) {
        return IntStream.range(0, table.heads().size()).map(table::widest).toArray();
    }

    /** The same with names and their head broken to so many columns, each further line a row of its own. */
    private static Item.Table wrapped(Item.Table table, int name) {
        List<String> heads = new ArrayList<>(table.heads());
        List<String> head = new ArrayList<>();
        for (String line : heads.get(0).split("\n")) {
            head.addAll(Wrapping.lines(line, "", "", name));
        }
        heads.set(0, String.join("\n", head));
        List<List<String>> rows = new ArrayList<>();
        for (List<String> row : table.rows()) {
            List<String> names = Wrapping.lines(row.get(0), "", "", name);
            for (int k = 0; k < names.size(); k++) {
                List<String> line = new ArrayList<>(k == 0 ? row : Collections.nCopies(row.size(), ""));
                line.set(0, names.get(k));
                rows.add(line);
            }
        }
        return new Item.Table(heads, rows);
    }

    private static List<String> columns(Item.Table table, int[] widths, String between) {
        List<String> out = new ArrayList<>();
        int headLines = table.heads().stream()
                .mapToInt(head -> head.split("\n").length)
                .max()
                .orElse(1);
        for (int line = 0; line < headLines; line++) {
            int at = line;
            out.add(row(table.heads().stream().map(head -> part(head, at)).toList(), widths, between));
        }
        table.rows().forEach(row -> out.add(row(row, widths, between)));
        return out;
    }

    private static String part(String head, int line) {
        String[] lines = head.split("\n");
        return line < lines.length ? lines[line] : "";
    }

    private static String row(List<String> cells, int[] widths, String between) {
        StringBuilder line = new StringBuilder(INDENT);
        for (int k = 0; k < cells.size(); k++) {
            String pad = " ".repeat(widths[k] - cells.get(k).length());
            line.append(k == 0 ? "" : between).append(pad).append(cells.get(k));
        }
        return line.toString().stripTrailing();
    }

    private static List<String> blocks(Item.Table table, int width) {
        List<String> out = new ArrayList<>();
        for (List<String> row : table.rows()) {
            StringBuilder text = new StringBuilder(row.get(0)).append(":");
            String next = " ";
            for (int k = 1; k < row.size(); k++) {
                if (!row.get(k).isEmpty()) {
                    text.append(next)
                            .append(table.heads().get(k).replace('\n', ' '))
                            .append(' ')
                            .append(row.get(k));
                    next = "; ";
                }
            }
            out.addAll(Wrapping.lines(text.toString(), INDENT, INDENT + INDENT, width));
        }
        return out;
    }
}
