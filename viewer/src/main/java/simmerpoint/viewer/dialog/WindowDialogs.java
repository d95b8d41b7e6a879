package simmerpoint.viewer.dialog;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.control.Alert;
import javafx.scene.control.ButtonBar;
import javafx.scene.control.ButtonType;
import javafx.stage.DirectoryChooser;
import javafx.stage.FileChooser;
import javafx.stage.Window;

/** Dialogs in front of the main window. */
public final class WindowDialogs implements Dialogs {
    private final Supplier<Window> owner;
    private File folder;

    /** In front of the window that {@code owner} names at that time. */
    public WindowDialogs(Supplier<Window> owner) {
        this.owner = owner;
    }

    @Override
    public Optional<Path> fileToOpen(String question, FileKind kind) {
        return remembered(chooser(question, kind).showOpenDialog(owner.get()));
    }

    @Override
    public List<Path> filesToOpen(String question, FileKind kind, Path first) {
        lookFirst(first);
        List<File> files = chooser(question, kind).showOpenMultipleDialog(owner.get());
        return files == null
                ? List.of()
                : files.stream().flatMap(file -> remembered(file).stream()).toList();
    }

    @Override
    public Optional<Path> folderToOpen(String question, Path first) {
        lookFirst(first);
        DirectoryChooser chooser = new DirectoryChooser();
        chooser.setTitle(question);
        if (isUsable()) {
            chooser.setInitialDirectory(folder);
        }
        return remembered(chooser.showDialog(owner.get()));
    }

    @Override
    public Optional<Path> fileToWrite(String question, FileKind kind, String proposedName) {
        FileChooser chooser = chooser(question, kind);
        chooser.setInitialFileName(proposedName);
        return remembered(chooser.showSaveDialog(owner.get())).map(file -> withExtension(file, kind));
    }

    /**
     * The file with its kind's extension where it was named without any, since a double click would not open it otherwise; not
     * if that would write over another file unasked.
     */
    static Path withExtension(Path file, FileKind kind) {
        String name = file.getFileName().toString();
        Path longer = file.resolveSibling(name + "." + kind.extension());
        return name.contains(".") || Files.exists(longer) ? file : longer;
    }

    private FileChooser chooser(String question, FileKind kind) {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(question);
        if (isUsable()) {
            chooser.setInitialDirectory(folder);
        }
        chooser.getExtensionFilters()
                .addAll(
                        new FileChooser.ExtensionFilter(kind.name(), "*." + kind.extension()),
                        new FileChooser.ExtensionFilter("All files", "*"));
        return chooser;
    }

    private void lookFirst(Path first) {
        if (folder == null) {
            folder = first.toAbsolutePath().toFile();
        }
    }

    private boolean isUsable() {
        return folder != null && folder.isDirectory();
    }

    private Optional<Path> remembered(File file) {
        if (file == null) {
            return Optional.empty();
        }
        folder = file.getParentFile();
        return Optional.of(file.toPath());
    }

    @Override
    public Optional<Integer> which(String heading, String text, List<String> answers) {
        Alert alert = new Alert(Alert.AlertType.NONE, text);
        alert.initOwner(owner.get());
        alert.setTitle("Simmerpoint");
        alert.setHeaderText(heading);
        List<ButtonType> buttons = new ArrayList<>();
        for (int k = 0; k < answers.size(); k++) {
            boolean last = k == answers.size() - 1;
            ButtonBar.ButtonData role = k == 0
                    ? ButtonBar.ButtonData.OK_DONE
                    : last ? ButtonBar.ButtonData.CANCEL_CLOSE : ButtonBar.ButtonData.NO;
            buttons.add(new ButtonType(answers.get(k), role));
        }
        alert.getButtonTypes().setAll(buttons);
        if (owner.get() != null) {
            alert.getDialogPane().getStylesheets().setAll(owner.get().getScene().getStylesheets());
        }
        return alert.showAndWait().map(buttons::indexOf).filter(k -> k >= 0);
    }
}
