package simmerpoint.viewer.app;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import simmerpoint.report.OutputException;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.viewer.dialog.Dialogs;
import simmerpoint.viewer.dialog.FileKind;
import simmerpoint.viewer.document.ConfigFolder;
import simmerpoint.viewer.document.OpenedFile;
import simmerpoint.viewer.document.RecentFiles;
import simmerpoint.viewer.document.ScenarioDocument;
import simmerpoint.viewer.document.ShippedScenarios;
import simmerpoint.viewer.understand.LogsResult;

/** Opening and saving, with all questions that go with it. Called on the FX thread; files are read away from it. */
final class FileActions {
    private final ScenarioDocument document;
    private final RecentFiles recent;
    private final Dialogs dialogs;
    private final Executor background;
    private final Executor fx;
    private final Consumer<String> tell;
    private final Runnable flush;

    /** {@code flush} commits pending input. */
    FileActions(
            ScenarioDocument document,
            RecentFiles recent,
            Dialogs dialogs,
            Executor background,
            Executor fx,
            Consumer<String> tell,
            Runnable flush) {
        this.document = document;
        this.recent = recent;
        this.dialogs = dialogs;
        this.background = background;
        this.fx = fx;
        this.tell = tell;
        this.flush = flush;
    }

    /** Asks for a file and opens it. */
    void open() {
        if (mayLeave()) {
            dialogs.fileToOpen("Open a scenario", FileKind.SCENARIO).ifPresent(this::read);
        }
    }

    /** Opens a file. */
    void open(Path file) {
        if (mayLeave()) {
            read(file);
        }
    }

    /** Opens the example built into the program. */
    void openExample() {
        if (mayLeave()) {
            document.openExample();
            tell.accept("");
        }
    }

    /** Opens a usual cooker of one's own to begin with. */
    void openNew() {
        if (mayLeave()) {
            document.lay(ShippedScenarios.fresh());
            tell.accept("");
        }
    }

    /** Opens a scenario that comes with the program. */
    void openShipped(String name) {
        if (mayLeave()) {
            background.execute(() -> {
                try {
                    OpenedFile opened =
                            ShippedScenarios.open(name, ConfigFolder.usual().resolve("examples"));
                    fx.execute(() -> {
                        document.lay(opened);
                        tell.accept(WarningWords.of(opened.read().warnings()));
                    });
                } catch (ScenarioException | IOException e) {
                    fx.execute(() -> tell.accept("Not opened. " + e.getMessage()));
                }
            });
        }
    }

    /** Opens a cooker as its logs show it: a scenario without a file, changed from the planned one in a step that can be undone. */
    void openBuilt(LogsResult.Built built) {
        if (mayLeave()) {
            document.lay(new OpenedFile(Optional.empty(), built.planned()));
            document.change(built.changes());
            tell.accept(
                    "This is the cooker as its logs show it. Save it under a name of its own; undo brings the planned one back.");
        }
    }

    private void read(Path file) {
        background.execute(() -> {
            try {
                OpenedFile opened = OpenedFile.read(file);
                fx.execute(() -> lay(file, opened));
            } catch (ScenarioException e) {
                fx.execute(() -> refuse(file, e));
            }
        });
    }

    private void lay(Path file, OpenedFile opened) {
        document.lay(opened);
        recent.add(file);
        tell.accept(WarningWords.of(opened.read().warnings()));
    }

    private void refuse(Path file, ScenarioException e) {
        recent.remove(file);
        tell.accept(notOpened(e));
    }

    /** That a file was not opened, and why. */
    static String notOpened(ScenarioException e) {
        int more = e.problems().size() - 1;
        String rest = more == 0 ? "" : " (and " + more + (more == 1 ? " problem more)" : " problems more)");
        return "Not opened. " + e.getMessage() + rest;
    }

    /** Saves where the scenario came from, asking where that is not known or has changed; whether it is saved. */
    boolean save() {
        return guarded(() -> switch (document.save()) {
            case DONE -> saved();
            case NEEDS_NAME -> askAndSave();
            case CHANGED_OUTSIDE -> askAboutChange();
        });
    }

    /** Asks for a file and saves there; whether it is saved. */
    boolean saveAs() {
        return guarded(this::askAndSave);
    }

    private boolean askAndSave() throws OutputException {
        String proposed = document.fileProperty()
                .get()
                .map(file -> file.getFileName().toString())
                .orElse("my-cooker." + FileKind.SCENARIO.extension());
        Optional<Path> file = dialogs.fileToWrite("Save the scenario", FileKind.SCENARIO, proposed);
        if (file.isEmpty()) {
            return false;
        }
        document.saveAs(file.get());
        return saved();
    }

    private boolean askAboutChange() throws OutputException {
        Optional<Integer> answer = dialogs.which(
                "The file has changed",
                "Another program has changed " + document.fileProperty().get().orElseThrow()
                        + " since it was opened or saved here. Saving over it loses what was changed there.",
                List.of("Save as another file", "Save over it", "Do not save"));
        if (answer.equals(Optional.of(0))) {
            return askAndSave();
        }
        if (answer.equals(Optional.of(1))) {
            document.saveOver();
            return saved();
        }
        return false;
    }

    private boolean saved() {
        Path file = document.fileProperty().get().orElseThrow();
        recent.add(file);
        tell.accept("Saved: " + file);
        return true;
    }

    /** Something that saves, or cannot. */
    private interface Saver {
        boolean save() throws OutputException;
    }

    private boolean guarded(Saver saver) {
        flush.run();
        try {
            return saver.save();
        } catch (OutputException e) {
            tell.accept(e.getMessage());
            return false;
        }
    }

    /** Whether the document may be closed: it has no changes, was saved, or the user discards the changes. */
    boolean mayLeave() {
        flush.run();
        Optional<String> loss = document.unsaved();
        if (loss.isEmpty()) {
            return true;
        }
        Optional<Integer> answer =
                dialogs.which("Save the changes first?", loss.get(), List.of("Save", "Do not save", "Go back"));
        if (answer.equals(Optional.of(0))) {
            return save();
        }
        return answer.equals(Optional.of(1));
    }
}
