package simmerpoint.viewer.editing;

import javafx.application.Platform;
import javafx.geometry.Insets;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.VBox;
import simmerpoint.scenario.keys.Key;

/** A choice among the words a key allows, each with what is known of it. */
final class WordBox extends ComboBox<String> {
    private static final double LIST_WIDTH = 330;
    private static final int MOST_ROWS = 8;

    private final KeyModel model;
    private final ChoiceEdits choosing;
    private boolean following;

    WordBox(KeyModel model, ChoiceEdits choosing) {
        this.model = model;
        this.choosing = choosing;
        Key key = model.key();
        setId("key-" + key.path());
        getStyleClass().add("word-choice");
        getItems().setAll(key.words());
        setMaxWidth(Double.MAX_VALUE);
        setVisibleRowCount(Math.min(MOST_ROWS, key.words().size()));
        setCellFactory(list -> new Row(key));
        ErrorMark.follow(this, model);
        promptTextProperty().bind(model.stateProperty().map(KeyState::otherwise));
        model.onChange(KeyState::shown, this::follow);
        valueProperty().addListener((value, before, now) -> chosen(now));
        follow();
    }

    private void follow() {
        following = true;
        String shown = model.state().shown();
        String word = model.key().words().stream()
                .filter(w -> w.equalsIgnoreCase(shown))
                .findFirst()
                .orElse(shown.isEmpty() ? null : shown);
        setValue(word);
        following = false;
    }

    private void chosen(String word) {
        if (!following && word != null) {
            choosing.choose(model.key(), word);
            Platform.runLater(this::follow);
        }
    }

    /** A word and its figures; its source when pointed at. */
    private static final class Row extends ListCell<String> {
        private final Key key;
        private final Label word = new Label();
        private final Label figures = new Label();
        private final VBox box = new VBox(1, word, figures);

        Row(Key key) {
            this.key = key;
            word.getStyleClass().add("choice-word");
            figures.getStyleClass().add("choice-figures");
            figures.setWrapText(true);
            box.setMaxWidth(LIST_WIDTH);
            box.setPrefWidth(LIST_WIDTH);
            box.setPadding(new Insets(2, 0, 4, 0));
        }

        @Override
        protected void updateItem(String item, boolean empty) {
            super.updateItem(item, empty);
            setText(null);
            if (empty || item == null) {
                setGraphic(null);
                setTooltip(null);
                return;
            }
            CatalogueEntry known = CatalogueEntry.of(key, item).orElse(new CatalogueEntry("", ""));
            word.setText(item);
            figures.setText(known.figures());
            figures.setManaged(!known.figures().isEmpty());
            setTooltip(known.source().isEmpty() ? null : tip(known.source()));
            setGraphic(box);
            setAccessibleText(item + ". " + known.figures());
        }

        private static Tooltip tip(String source) {
            Tooltip tip = new Tooltip("Source: " + source);
            tip.setWrapText(true);
            tip.setMaxWidth(LIST_WIDTH);
            return tip;
        }
    }
}
