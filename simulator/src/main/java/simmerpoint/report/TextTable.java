package simmerpoint.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import simmerpoint.answer.Item;

/** A table as plain lines: columns side by side where they fit, else row by row. */
final class TextTable {
    private static final String INDENT = "  ";
    private static final String BETWEEN = "  ";
    private static final String CLOSER = " ";

    private TextTable() {}

    /** The lines of {@code table}, none longer than {@code width}. */
    static List<String> lines(Item.Table table, int width) {
        int[] widths =
                IntStream.range(0, table.heads().size()).map(table::widest).toArray();
        for (String between : List.of(BETWEEN, CLOSER)) {
            if (IntStream.of(widths).sum() + (widths.length - 1) * between.length() + INDENT.length() <= width) {
                return columns(table, widths, between);
            }
        }
        return blocks(table, width);
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
