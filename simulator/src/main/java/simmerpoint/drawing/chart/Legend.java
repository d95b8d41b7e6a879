package simmerpoint.drawing.chart;

import java.util.ArrayList;
import java.util.List;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.Canvas;
import simmerpoint.drawing.Drawing;
import simmerpoint.drawing.Style;
import simmerpoint.drawing.Text;
import simmerpoint.drawing.TextMetrics;

/** Samples with what they mean, side by side, in as many lines as they need. */
public final class Legend implements Drawing {
    private static final double LINE = 20;
    private static final double BASE = 15;
    private static final double LINE_WIDTH = 26;
    private static final double SWATCH = 10;
    private static final double AFTER = 6;
    private static final double LEAST_GAP = 7;
    private static final double MOST_GAP = 30;

    private final List<Entry> entries = new ArrayList<>();

    /** A sample of that width and its words. */
    private record Entry(double sample, Sample drawn, String words) {
        double width(TextMetrics metrics) {
            return sample + AFTER + metrics.width(words, Text.SIZE, false);
        }
    }

    /** Draws something from {@code x} to the right, the words' baseline at {@code y}. */
    @FunctionalInterface
    public interface Sample {
        /** Draws it. */
        void draw(Canvas canvas, double x, double y);
    }

    /** A sample of a line. */
    public Legend line(Style style, String words) {
        return with(LINE_WIDTH, (canvas, x, y) -> canvas.line(style, x, y - 4, x + LINE_WIDTH, y - 4), words);
    }

    /** A sample of a colour. */
    public Legend swatch(Style style, String words) {
        return with(
                SWATCH,
                (canvas, x, y) -> {
                    Box box = new Box(x, y - SWATCH + 1, SWATCH, SWATCH);
                    canvas.draw(style, box);
                    canvas.draw(Style.SWATCH, box);
                },
                words);
    }

    /** A sample of another kind, so many units wide. */
    public Legend with(double width, Sample sample, String words) {
        entries.add(new Entry(width, sample, words));
        return this;
    }

    private List<List<Entry>> rows(double width, TextMetrics metrics) {
        List<List<Entry>> rows = new ArrayList<>();
        List<Entry> row = new ArrayList<>();
        double used = 0;
        for (Entry entry : entries) {
            double wide = entry.width(metrics);
            if (!row.isEmpty() && used + LEAST_GAP + wide > width) {
                rows.add(row);
                row = new ArrayList<>();
                used = 0;
            }
            used += wide + (row.isEmpty() ? 0 : LEAST_GAP);
            row.add(entry);
        }
        rows.add(row);
        return rows;
    }

    @Override
    public double height(double width, TextMetrics metrics) {
        return LINE * rows(width, metrics).size() + 2;
    }

    @Override
    public void draw(Canvas canvas, Box box) {
        TextMetrics metrics = canvas.metrics();
        double y = box.y() + BASE;
        for (List<Entry> row : rows(box.width(), metrics)) {
            double wide = row.stream().mapToDouble(e -> e.width(metrics)).sum();
            double gap = Math.max(LEAST_GAP, Math.min(MOST_GAP, (box.width() - wide) / Math.max(1, row.size() - 1)));
            double x = box.x();
            for (Entry entry : row) {
                entry.drawn().draw(canvas, x, y);
                double from = x + entry.sample() + AFTER;
                canvas.write(Text.at(from, y, entry.words()).within(box.right() - from));
                x += entry.width(metrics) + gap;
            }
            y += LINE;
        }
    }
}
