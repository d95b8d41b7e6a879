package simmerpoint.viewer.editing;

import javafx.scene.control.Button;
import javafx.scene.control.Tooltip;
import simmerpoint.scenario.values.FileNames;
import simmerpoint.viewer.dialog.Dialogs;
import simmerpoint.viewer.dialog.FileKind;

/** A button that asks for the file a key names. */
final class FileButton extends Button {
    FileButton(KeyModel model, Dialogs dialogs) {
        super("Choose…");
        setId("pick-" + model.key().path());
        setAccessibleText("Choose the file: " + KeyLabels.spoken(model.key()));
        setTooltip(new Tooltip("Choose the file"));
        setMinWidth(USE_PREF_SIZE);
        setOnAction(e -> dialogs.fileToOpen(model.key().sentence(), kind(model))
                .ifPresent(file -> model.enter(FileNames.from(model.document().folder(), file))));
    }

    /** By the ending of the key's example. */
    private static FileKind kind(KeyModel model) {
        String example = model.key().example();
        String ending = example.substring(example.lastIndexOf('.') + 1);
        return new FileKind(ending.equals("obj") ? "Mesh" : "Table", ending);
    }
}
