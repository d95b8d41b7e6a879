package simmerpoint.viewer.comparison;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import javafx.geometry.Orientation;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.text.Text;

/**
 * Figures of two designs below each other, with their differences. Where there is too little width for four columns the name
 * and the difference stand over the two figures. A figure is never broken.
 */
final class Differences extends Region {
    private static final int NAME = 0;
    private static final int KEPT = 1;
    private static final int NOW = 2;
    private static final int DIFFERENCE = 3;
    private static final double GAP = 14;
    private static final double ROW_GAP = 3;
    private static final double OVER_GAP = 7;

    private final List<Label[]> rows = new ArrayList<>();
    private int figures;

    Differences() {
        setId("beside-table");
        show(List.of(), List.of());
    }

    /** Shows {@code measured} figures and below them, less strong, {@code keys}. */
    void show(List<PairFigures.Row> measured, List<PairFigures.Row> keys) {
        figures = measured.size();
        rows.clear();
        rows.add(new Label[] {cell("", "quiet"), cell("kept", "which"), cell("now", "which"), cell("", "quiet")});
        measured.forEach(figure -> rows.add(labels(figure, "figure")));
        keys.forEach(key -> rows.add(labels(key, "quiet")));
        getChildren().setAll(rows.stream().flatMap(Arrays::stream).toList());
        requestLayout();
    }

    private static Label[] labels(PairFigures.Row row, String style) {
        return new Label[] {
            cell(row.name(), "quiet"),
            cell(row.kept(), style),
            cell(row.now(), style),
            cell(row.difference(), "difference")
        };
    }

    private static Label cell(String text, String style) {
        Label cell = new Label(text);
        cell.setWrapText(true);
        cell.getStyleClass().add(style);
        return cell;
    }

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    @Override
    protected double computeMinWidth(double height) {
        return 0;
    }

    @Override
    protected double computePrefHeight(double width) {
        return lay(width < 0 ? Double.MAX_VALUE : width, false);
    }

    @Override
    protected void layoutChildren() {
        lay(getWidth(), true);
    }

    /** Lays all out, or only looks how high that would be. */
    private double lay(double width, boolean place) {
        double[] columns = columns(width);
        double y = 0;
        for (Label[] row : rows) {
            boolean heading = row == rows.get(0);
            y += columns.length == 0 ? over(row, y, width, heading, place) : beside(row, y, columns, place);
            y += columns.length == 0 && !heading ? OVER_GAP : ROW_GAP;
        }
        return Math.ceil(y);
    }

    /** Four widths that fit; none if four columns cannot stand beside each other. Figures come before the words of keys. */
    private double[] columns(double width) {
        double room = width - DIFFERENCE * GAP;
        double[] least = widest(rows, Differences::longestWord);
        if (DoubleStream.of(least).sum() > room) {
            return new double[0];
        }
        double[] whole = widest(rows, label -> Math.ceil(label.prefWidth(-1)) + 1);
        double[] unbroken = widest(rows.subList(0, figures + 1), label -> Math.ceil(label.prefWidth(-1)) + 1);
        for (int k = 0; k < unbroken.length; k++) {
            unbroken[k] = Math.max(unbroken[k], least[k]);
        }
        boolean enough = DoubleStream.of(unbroken).sum() <= room;
        return enough ? between(unbroken, whole, room) : between(least, unbroken, room);
    }

    private static double[] widest(List<Label[]> rows, ToDoubleFunction<Label> width) {
        double[] widest = new double[DIFFERENCE + 1];
        for (Label[] row : rows) {
            for (int k = 0; k < row.length; k++) {
                widest[k] = Math.max(widest[k], width.applyAsDouble(row[k]));
            }
        }
        return widest;
    }

    /** As near to the large widths as there is room. */
    private static double[] between(double[] small, double[] large, double room) {
        double needed = DoubleStream.of(small).sum();
        double wanted = DoubleStream.of(large).sum();
        double share = wanted <= room ? 1 : (room - needed) / (wanted - needed);
        double[] widths = new double[small.length];
        for (int k = 0; k < widths.length; k++) {
            widths[k] = small[k] + share * (large[k] - small[k]);
        }
        return widths;
    }

    private static double longestWord(Label label) {
        Text text = new Text();
        text.setFont(label.getFont());
        double longest = 0;
        for (String word : label.getText().split(" ")) {
            text.setText(word);
            longest = Math.max(longest, text.getLayoutBounds().getWidth());
        }
        return Math.ceil(longest) + 2;
    }

    private static double beside(Label[] row, double y, double[] columns, boolean place) {
        double high = 0;
        for (int k = 0; k < row.length; k++) {
            high = Math.max(high, row[k].prefHeight(columns[k]));
        }
        double x = 0;
        for (int k = 0; k < row.length && place; k++) {
            row[k].resizeRelocate(x, y, columns[k], high);
            x += columns[k] + GAP;
        }
        return high;
    }

    private static double over(Label[] row, double y, double width, boolean heading, boolean place) {
        double top = heading ? 0 : head(row, y, width, place);
        double half = (width - GAP) / 2;
        double high = Math.max(row[KEPT].prefHeight(half), row[NOW].prefHeight(half));
        if (place) {
            row[KEPT].resizeRelocate(0, y + top, half, high);
            row[NOW].resizeRelocate(half + GAP, y + top, half, high);
        }
        return top + high;
    }

    /** Name and difference in one line, or in two. */
    private static double head(Label[] row, double y, double width, boolean place) {
        double name = Math.min(width, Math.ceil(row[NAME].prefWidth(-1)) + 1);
        double rest = width - name - GAP;
        boolean oneLine = Math.ceil(row[DIFFERENCE].prefWidth(-1)) <= rest;
        double high = row[NAME].prefHeight(name);
        double low = row[DIFFERENCE].getText().isEmpty() || oneLine ? 0 : row[DIFFERENCE].prefHeight(width);
        if (place) {
            row[NAME].resizeRelocate(0, y, name, high);
            row[DIFFERENCE].resizeRelocate(
                    oneLine ? name + GAP : 0, oneLine ? y : y + high, oneLine ? rest : width, oneLine ? high : low);
        }
        return high + low;
    }
}
