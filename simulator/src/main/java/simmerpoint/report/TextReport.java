package simmerpoint.report;

import java.util.ArrayList;
import java.util.List;
import simmerpoint.answer.Answer;
import simmerpoint.answer.Item;
import simmerpoint.answer.Section;
import simmerpoint.answer.words.FigureFormat;

/** An answer as plain lines of a given width: no colour, no control characters, readable in a narrow window. */
public final class TextReport {
    /** The narrowest width that is kept to, columns. */
    public static final int NARROWEST = 40;

    private static final int LABEL = 26;
    private static final int SHORT_LABEL = 14;
    private static final int LONGEST_BAR = 40;

    private final int width;
    private final boolean ascii;

    private TextReport(int width, boolean ascii) {
        if (!(width >= NARROWEST)) {
            throw new IllegalArgumentException("width " + width + " is below " + NARROWEST);
        }
        this.width = width;
        this.ascii = ascii;
    }

    /**
     * The lines of {@code answer}, none longer than {@code width} columns (at least {@link #NARROWEST}).
     *
     * @param answer what to write
     * @param width columns
     * @param ascii whether to do without any sign beyond ASCII (titles from the scenario lose theirs to "?")
     */
    public static List<String> lines(Answer answer, int width, boolean ascii) {
        TextReport report = new TextReport(width, ascii);
        if (ascii) {
            return lines(AsciiAnswer.of(answer), report);
        }
        return lines(answer, report);
    }

    private static List<String> lines(Answer answer, TextReport report) {
        List<String> out = new ArrayList<>();
        if (!answer.title().isEmpty()) {
            out.addAll(report.wrap(answer.title(), "", ""));
            out.add("");
        }
        for (Section section : answer.sections()) {
            report.section(section, out);
        }
        return out.stream().map(line -> line.replace(FigureFormat.NBSP, " ")).toList();
    }

    private void section(Section section, List<String> out) {
        if (!out.isEmpty() && !out.get(out.size() - 1).isEmpty()) {
            out.add("");
        }
        out.addAll(wrap(section.heading(), "", ""));
        int labelWidth = section.items().stream()
                .filter(Item.Figure.class::isInstance)
                .mapToInt(item -> ((Item.Figure) item).label().length())
                .max()
                .orElse(0);
        int figureWidth = widest(section, true);
        int shareWidth = widest(section, false);
        for (Item item : section.items()) {
            if (item instanceof Item.Sentence sentence) {
                out.addAll(wrap(sentence.text(), "  ", "  "));
            } else if (item instanceof Item.Caution caution) {
                out.addAll(wrap(caution.text(), "! ", "  "));
            } else if (item instanceof Item.Figure figure) {
                figure(figure, Math.min(LABEL, Math.max(SHORT_LABEL, labelWidth + 2)), out);
            } else if (item instanceof Item.Bar bar) {
                bar(bar, figureWidth, shareWidth, out);
            } else if (item instanceof Item.Table table) {
                out.addAll(TextTable.lines(table, width));
            }
        }
    }

    private static int widest(Section section, boolean figure) {
        return section.items().stream()
                .filter(Item.Bar.class::isInstance)
                .map(Item.Bar.class::cast)
                .mapToInt(bar -> (figure ? bar.figure() : bar.shareText()).length())
                .max()
                .orElse(0);
    }

    private void figure(Item.Figure figure, int labelWidth, List<String> out) {
        if (width < labelWidth + 22) {
            out.add("  " + figure.label());
            out.addAll(wrap(figure.value(), "    ", "    "));
            return;
        }
        String label = "  " + figure.label();
        String pad = " ".repeat(Math.max(1, labelWidth + 2 - label.length()));
        out.addAll(wrap(figure.value(), label + pad, " ".repeat(labelWidth + 2)));
    }

    private void bar(Item.Bar bar, int figureWidth, int shareWidth, List<String> out) {
        String label = "  " + "  ".repeat(bar.depth()) + bar.label();
        String numbers = right(bar.figure(), figureWidth) + "  " + right(bar.shareText(), shareWidth) + " ";
        int room = width - LABEL - 2 - numbers.length();
        if (room >= 5) {
            out.add((left(label, LABEL + 2) + numbers + drawn(bar.share(), Math.min(LONGEST_BAR, room)))
                    .stripTrailing());
            return;
        }
        out.add(label);
        String indent = "    " + "  ".repeat(bar.depth());
        room = Math.max(0, width - indent.length() - numbers.length());
        out.add((indent + numbers + drawn(bar.share(), Math.min(LONGEST_BAR, room))).stripTrailing());
    }

    /** A bar of block signs; anything above nothing shows at least a sliver. */
    private String drawn(double share, int columns) {
        if (!(share > 0) || columns <= 0) {
            return "";
        }
        int eighths = (int) Math.round(Math.min(1, share) * columns * 8);
        if (ascii) {
            return eighths < 4 ? "." : "#".repeat((eighths + 4) / 8);
        }
        if (eighths == 0) {
            return "\u258f";
        }
        String end = eighths % 8 == 0 ? "" : String.valueOf((char) (0x2590 - eighths % 8));
        return "\u2588".repeat(eighths / 8) + end;
    }

    private static String left(String text, int columns) {
        return text + " ".repeat(Math.max(0, columns - text.length()));
    }

    private static String right(String text, int columns) {
        return " ".repeat(Math.max(0, columns - text.length())) + text;
    }

    private List<String> wrap(String text, String first, String rest) {
        return Wrapping.lines(text, first, rest, width);
    }
}
