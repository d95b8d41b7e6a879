package simmerpoint.viewer.editing;

import java.util.Optional;
import simmerpoint.scenario.keys.Key;
import simmerpoint.scenario.values.FileNames;
import simmerpoint.viewer.dialog.Dialogs;
import simmerpoint.viewer.dialog.FileKind;
import simmerpoint.viewer.document.ScenarioDocument;

/** Asks for the file that a key names. */
final class FileQuestion {
    private FileQuestion() {}

    /** The file as it is named in the scenario; empty if none was chosen. */
    static Optional<String> ask(Key key, ScenarioDocument document, Dialogs dialogs) {
        return dialogs.fileToOpen(key.sentence(), kind(key)).map(file -> FileNames.from(document.folder(), file));
    }

    /** By the ending of the key's example. */
    private static FileKind kind(Key key) {
        String example = key.example();
        String ending = example.substring(example.lastIndexOf('.') + 1);
        return new FileKind(ending.equals("obj") ? "Mesh" : "Table", ending);
    }
}
