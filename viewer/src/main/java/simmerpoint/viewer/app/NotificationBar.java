package simmerpoint.viewer.app;

import javafx.animation.PauseTransition;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.util.Duration;

/**
 * A sentence on what just happened, until it is waved away or another takes its place; that all went well is only told for
 * a while.
 */
final class NotificationBar extends HBox {
    private static final Duration WHILE = Duration.seconds(8);

    private final Label sentence = new Label();
    private final PauseTransition passing = new PauseTransition(WHILE);

    NotificationBar() {
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
        passing.setOnFinished(e -> tell(""));
        tell("");
    }

    /** Whether it only says that all went well. */
    private static boolean isGood(String text) {
        return text.startsWith("Saved: ") || text.startsWith("Written: ");
    }

    /** Shows {@code text}; nothing if it is empty. */
    void tell(String text) {
        sentence.setText(text);
        setAccessibleText(text);
        setVisible(!text.isEmpty());
        setManaged(!text.isEmpty());
        passing.stop();
        if (isGood(text)) {
            passing.playFromStart();
        }
    }
}
