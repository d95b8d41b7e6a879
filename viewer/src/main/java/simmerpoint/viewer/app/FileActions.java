package simmerpoint.viewer.app;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import simmerpoint.report.OutputException;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.viewer.dialog.Dialogs;
import simmerpoint.viewer.dialog.FileKind;
import simmerpoint.viewer.document.OpenedFile;
import simmerpoint.viewer.document.RecentFiles;
import simmerpoint.viewer.document.ScenarioDocument;

/** Opening and saving, with all questions that go with it. Called on the FX thread; files are read away from it. */
final class FileActions {
    private final ScenarioDocument desk;
    private final RecentFiles recent;
    private final Dialogs asks;
    private final Executor background;
    private final Executor fx;
    private final Consumer<String> tell;
    private final Runnable flush;

    /** {@code flush} sends to the desk whatever is being typed at that moment. */
    FileActions(
            ScenarioDocument desk,
            RecentFiles recent,
            Dialogs asks,
            Executor background,
            Executor fx,
            Consumer<String> tell,
            Runnable flush) {
        this.desk = desk;
        this.recent = recent;
        this.asks = asks;
        this.background = background;
        this.fx = fx;
        this.tell = tell;
        this.flush = flush;
    }

    /** Asks for a file and opens it. */
    void open() {
        if (mayLeave()) {
            asks.fileToOpen("Open a scenario", FileKind.SCENARIO).ifPresent(this::read);
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
            desk.openExample();
            tell.accept("");
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
        desk.lay(opened);
        recent.add(file);
        tell.accept(String.join(" ", opened.read().warnings()));
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
        return guarded(() -> switch (desk.save()) {
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
        String proposed = desk.fileProperty()
                .get()
                .map(file -> file.getFileName().toString())
                .orElse("my-cooker." + FileKind.SCENARIO.extension());
        Optional<Path> file = asks.fileToWrite("Save the scenario", FileKind.SCENARIO, proposed);
        if (file.isEmpty()) {
            return false;
        }
        desk.saveAs(file.get());
        return saved();
    }

    private boolean askAboutChange() throws OutputException {
        Optional<Integer> answer = asks.which(
                "The file has changed",
                "Another program has changed " + desk.fileProperty().get().orElseThrow()
                        + " since it was opened or saved here. Saving over it loses what was changed there.",
                List.of("Save as another file", "Save over it", "Do not save"));
        if (answer.equals(Optional.of(0))) {
            return askAndSave();
        }
        if (answer.equals(Optional.of(1))) {
            desk.saveOver();
            return saved();
        }
        return false;
    }

    private boolean saved() {
        Path file = desk.fileProperty().get().orElseThrow();
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

    /** Whether what lies on the desk may go: nothing would be lost, or it was saved just now, or it is given up. */
    boolean mayLeave() {
        flush.run();
        Optional<String> loss = desk.unsaved();
        if (loss.isEmpty()) {
            return true;
        }
        Optional<Integer> answer =
                asks.which("Save the changes first?", loss.get(), List.of("Save", "Do not save", "Go back"));
        if (answer.equals(Optional.of(0))) {
            return save();
        }
        return answer.equals(Optional.of(1));
    }
}
