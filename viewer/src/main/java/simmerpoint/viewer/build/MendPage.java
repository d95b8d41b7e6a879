package simmerpoint.viewer.build;

import javafx.geometry.HPos;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The list of what is worth mending, as rows with bars. */
final class MendPage {
    private MendPage() {}

    static Node of(MendList list) {
        Label first = words(list.first(), "mend-first");
        first.setId("mend-first");
        GridPane grid = rows(list.rows());
        grid.setId("mend-rows");
        Label bought = words("Only another film or mirror changes these, and none is perfect", "section-heading");
        boolean any = !list.bought().isEmpty();
        bought.setVisible(any);
        Label note = words(
                "Each figure is what mending that alone brings to this cooker. What nobody can mend, such as the shadow of the pan, "
                        + "is left out.",
                "quiet");
        VBox page = new VBox(10, first, grid, bought, rows(list.bought()), note);
        page.getStyleClass().add("answer-view");
        return page;
    }

    private static GridPane rows(java.util.List<MendList.Row> rows) {
        GridPane grid = new GridPane();
        grid.getStyleClass().add("mend-rows");
        grid.setHgap(16);
        grid.setVgap(10);
        grid.getColumnConstraints().setAll(column(34, HPos.LEFT), column(22, HPos.LEFT), column(44, HPos.LEFT));
        int k = 0;
        for (MendList.Row row : rows) {
            ProgressBar bar = new ProgressBar(row.share());
            bar.getStyleClass().add("share-bar");
            bar.setMaxWidth(Double.MAX_VALUE);
            bar.setAccessibleText(row.name() + ": " + row.watts());
            VBox gain = new VBox(2, words("+ " + row.watts(), "answer-value"), bar);
            grid.addRow(k++, words(row.name(), "mend-name"), gain, words(row.advice(), "quiet"));
        }
        return grid;
    }

    private static ColumnConstraints column(double percent, HPos side) {
        ColumnConstraints column = new ColumnConstraints();
        column.setPercentWidth(percent);
        column.setHgrow(Priority.ALWAYS);
        column.setHalignment(side);
        return column;
    }

    private static Label words(String text, String style) {
        Label label = new Label(text);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        label.getStyleClass().add(style);
        GridPane.setValignment(label, VPos.TOP);
        return label;
    }
}
