package simmerpoint.viewer.app;

import java.util.ArrayList;
import java.util.List;
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
 * Shows a message until it is dismissed or replaced; messages of success disappear after a while.
 */
final class NotificationBar extends HBox {
    private static final Duration SUCCESS_TIME = Duration.seconds(8);

    private final Label sentence = new Label();
    private List<String> warned = List.of();
    private String warning = "";
    private final PauseTransition passing = new PauseTransition(SUCCESS_TIME);

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

    /** Whether it is a message of success. */
    private static boolean isSuccess(String text) {
        return text.startsWith("Saved: ") || text.startsWith("Written: ");
    }

    /** Shows {@code text}; nothing if it is empty. */
    void tell(String text) {
        sentence.setText(text);
        setAccessibleText(text);
        setVisible(!text.isEmpty());
        setManaged(!text.isEmpty());
        passing.stop();
        if (isSuccess(text)) {
            passing.playFromStart();
        }
    }

    /** Shows warnings that a change has brought, with those that are shown and still hold; they go when they hold no more. */
    void warn(List<String> before, List<String> now) {
        boolean shown = !warning.isEmpty() && sentence.getText().equals(warning);
        List<String> next = new ArrayList<>(shown ? warned : List.of());
        next.retainAll(now);
        now.stream().filter(each -> !before.contains(each)).forEach(next::add);
        warned = List.copyOf(next);
        warning = WarningWords.of(next);
        if (shown || !next.isEmpty()) {
            tell(warning);
        }
    }
}
