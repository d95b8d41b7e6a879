package simmerpoint.viewer.editing;

import javafx.scene.control.Button;
import javafx.scene.control.Tooltip;
import simmerpoint.viewer.dialog.Dialogs;

/** A button that asks for the file a key names. */
final class FileButton extends Button {
    FileButton(KeyModel model, Dialogs dialogs) {
        super("Choose…");
        setId("pick-" + model.key().path());
        setAccessibleText("Choose the file: " + KeyLabels.spoken(model.key()));
        setTooltip(new Tooltip("Choose the file"));
        setMinWidth(USE_PREF_SIZE);
        setOnAction(
                e -> FileQuestion.ask(model.key(), model.document(), dialogs).ifPresent(model::enter));
    }
}
