package simmerpoint.viewer.app;

import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/** A sentence on what just happened, until it is waved away or another takes its place. */
final class Notice extends HBox {
    private final Label sentence = new Label();

    Notice() {
        getStyleClass().add("notice");
        setId("notice");
        setAlignment(Pos.CENTER_LEFT);
        sentence.setId("notice-sentence");
        sentence.setWrapText(true);
        sentence.setMaxWidth(Double.MAX_VALUE);
        sentence.setMinWidth(0);
        HBox.setHgrow(sentence, Priority.ALWAYS);
        Button away = new Button("OK");
        away.setMinWidth(USE_PREF_SIZE);
        away.setAccessibleText("Wave this away");
        away.setTooltip(new Tooltip("Wave this away"));
        away.setOnAction(e -> tell(""));
        getChildren().addAll(sentence, away);
        setAccessibleRole(AccessibleRole.TEXT);
        tell("");
    }

    /** Shows {@code text}; nothing if it is empty. */
    void tell(String text) {
        sentence.setText(text);
        setAccessibleText(text);
        setVisible(!text.isEmpty());
        setManaged(!text.isEmpty());
    }
}
