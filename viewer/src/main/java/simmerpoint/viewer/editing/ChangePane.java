package simmerpoint.viewer.editing;

import java.util.Optional;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.dialog.Dialogs;
import simmerpoint.viewer.document.ScenarioDocument;

/** Where the design is changed: a few questions, and behind a button every detail. What is not seen is not made. */
public final class ChangePane extends BorderPane {
    private final ScenarioDocument document;
    private final ObservableValue<UnitSystem> units;
    private final Dialogs dialogs;
    private final Label heading = new Label();
    private final Button other = new Button();
    private Optional<QuestionsPane> questions = Optional.empty();
    private Optional<EditorPane> details = Optional.empty();
    private boolean every;

    /** For the scenario of a document. */
    public ChangePane(ScenarioDocument document, ObservableValue<UnitSystem> units, Dialogs dialogs) {
        this.document = document;
        this.units = units;
        this.dialogs = dialogs;
        setId("change");
        getStyleClass().add("change-pane");
        getStylesheets().add(ChangePane.class.getResource("editing.css").toExternalForm());
        heading.getStyleClass().add("change-heading");
        other.setId("every-detail");
        other.setMinWidth(Region.USE_PREF_SIZE);
        other.setTooltip(new Tooltip("Change between a few questions and every detail"));
        other.setOnAction(e -> show(!every));
        Region between = new Region();
        HBox.setHgrow(between, Priority.ALWAYS);
        HBox head = new HBox(8, heading, between, other);
        head.getStyleClass().add("change-head");
        setTop(head);
        // Made when it is first seen: it takes a while and is not needed for the first picture.
        sceneProperty().addListener((value, before, now) -> {
            if (now != null && getCenter() == null) {
                show(every);
            }
        });
    }

    private void show(boolean all) {
        every = all;
        heading.setText(all ? "Every detail" : "Your cooker");
        other.setText(all ? "A few questions" : "Every detail");
        setCenter(all ? details() : questions());
    }

    private QuestionsPane questions() {
        if (questions.isEmpty()) {
            questions = Optional.of(new QuestionsPane(document, units, dialogs));
        }
        return questions.get();
    }

    private EditorPane details() {
        if (details.isEmpty()) {
            details = Optional.of(new EditorPane(document, units, dialogs));
        }
        return details.get();
    }

    /** Commits pending input; before saving or closing. */
    public void flush() {
        ValueField.sendFocused(getScene());
    }

    /** Shows every detail, with that key open. */
    public void goTo(String path) {
        show(true);
        details().goTo(path);
    }

    /** How many things are wrong, for whoever tells it while this is put away. */
    public ObservableValue<Integer> wrongCount() {
        return document.stateProperty().map(state -> state.problems().size());
    }
}
