package simmerpoint.viewer.parts;

import java.util.List;
import javafx.geometry.HPos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import simmerpoint.answer.Item;
import simmerpoint.answer.Section;

/** Sections of an answer in the words of terminal and page: sentences, figures, bars of a ledger, tables. */
public final class AnswerView extends VBox {
    private static final double INDENT = 14;

    /** A label no longer than this is never broken into lines. */
    private static final int SHORT_LABEL = 28;

    /** The sections; their headings are shown if {@code headed}. */
    public AnswerView(List<Section> sections, boolean headed) {
        getStyleClass().add("answer-view");
        for (Section section : sections) {
            if (headed && !section.heading().isEmpty()) {
                getChildren().add(label(section.heading(), "section-heading"));
            }
            items(section.items());
        }
    }

    private static Label label(String words, String... styles) {
        Label label = new Label(words);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        label.getStyleClass().addAll(styles);
        return label;
    }

    /** Neighbouring figures become one grid, and so do neighbouring bars. */
    private void items(List<Item> items) {
        int k = 0;
        while (k < items.size()) {
            int end = k + 1;
            while (end < items.size()
                    && items.get(end).getClass() == items.get(k).getClass()) {
                end++;
            }
            getChildren().addAll(run(items.subList(k, end)));
            k = end;
        }
    }

    private static List<Node> run(List<Item> same) {
        if (same.get(0) instanceof Item.Figure) {
            return List.of(figures(same));
        }
        if (same.get(0) instanceof Item.Bar) {
            return List.of(bars(same));
        }
        return same.stream().map(AnswerView::node).toList();
    }

    private static Node node(Item item) {
        if (item instanceof Item.Sentence sentence) {
            return label(sentence.text(), "answer-sentence");
        }
        if (item instanceof Item.Caution caution) {
            return label("Caution: " + caution.text(), "answer-caution");
        }
        return table((Item.Table) item);
    }

    private static GridPane grid(String style) {
        GridPane grid = new GridPane();
        grid.getStyleClass().add(style);
        grid.setHgap(14);
        grid.setVgap(3);
        return grid;
    }

    private static ColumnConstraints column(boolean grows, HPos side) {
        ColumnConstraints column = new ColumnConstraints();
        column.setHgrow(grows ? Priority.ALWAYS : Priority.NEVER);
        column.setHalignment(side);
        return column;
    }

    private static Node figures(List<Item> items) {
        GridPane grid = grid("answer-figures");
        grid.getColumnConstraints().setAll(column(false, HPos.LEFT), column(true, HPos.LEFT));
        for (int k = 0; k < items.size(); k++) {
            Item.Figure figure = (Item.Figure) items.get(k);
            Label name = label(figure.label(), "quiet");
            if (figure.label().length() <= SHORT_LABEL) {
                name.setMinWidth(Region.USE_PREF_SIZE);
            }
            grid.addRow(k, name, label(figure.value(), "answer-value"));
        }
        return grid;
    }

    private static Node bars(List<Item> items) {
        GridPane grid = grid("answer-bars");
        grid.getColumnConstraints()
                .setAll(
                        column(true, HPos.LEFT),
                        column(true, HPos.LEFT),
                        column(false, HPos.RIGHT),
                        column(false, HPos.RIGHT));
        for (int k = 0; k < items.size(); k++) {
            Item.Bar bar = (Item.Bar) items.get(k);
            ProgressBar share = new ProgressBar(Math.max(0, Math.min(1, bar.share())));
            share.getStyleClass().add("share-bar");
            share.setMaxWidth(Double.MAX_VALUE);
            share.setAccessibleText(bar.label() + ": " + bar.shareText());
            Label name = label(bar.label());
            name.setPadding(new javafx.geometry.Insets(0, 0, 0, INDENT * bar.depth()));
            Label watts = label(bar.figure(), "answer-value");
            watts.setMinWidth(Region.USE_PREF_SIZE);
            Label part = label(bar.shareText(), "quiet");
            part.setMinWidth(Region.USE_PREF_SIZE);
            grid.addRow(k, name, share, watts, part);
        }
        return grid;
    }

    /** Whether a column holds phrases rather than figures. */
    private static boolean isOfWords(Item.Table table, int column) {
        return table.rows().stream()
                .map(row -> row.get(column))
                .anyMatch(cell -> !cell.isEmpty() && Character.isLetter(cell.charAt(0)) && cell.indexOf(' ') > 0);
    }

    private static Node table(Item.Table table) {
        GridPane grid = grid("answer-table");
        for (int c = 0; c < table.heads().size(); c++) {
            HPos side = c == 0 || isOfWords(table, c) ? HPos.LEFT : HPos.RIGHT;
            grid.getColumnConstraints().add(column(false, side));
            grid.add(label(table.heads().get(c), "table-head"), c, 0);
            for (int r = 0; r < table.rows().size(); r++) {
                Label cell = label(table.rows().get(r).get(c), c == 0 ? "table-name" : "table-cell");
                if (c > 0) {
                    cell.setMinWidth(Region.USE_PREF_SIZE);
                }
                grid.add(cell, c, r + 1);
            }
        }
        return grid;
    }
}
