package simmerpoint.viewer.app;

import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import javafx.application.Platform;
import javafx.beans.binding.Bindings;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.viewer.answer.AnswerStrip;
import simmerpoint.viewer.comparison.ComparisonModel;
import simmerpoint.viewer.comparison.ComparisonPane;
import simmerpoint.viewer.comparison.KeepButton;
import simmerpoint.viewer.dialog.Dialogs;
import simmerpoint.viewer.dialog.FileExport;
import simmerpoint.viewer.document.RecentFiles;
import simmerpoint.viewer.document.ScenarioDocument;
import simmerpoint.viewer.editing.EditorPane;
import simmerpoint.viewer.live.LiveResults;
import simmerpoint.viewer.pan.PanPane;
import simmerpoint.viewer.yard.DocumentEdits;
import simmerpoint.viewer.yard.YardView;

/**
 * Connects the parts of the window: the document's scenario goes to the live results, these to the views, and changes from
 * the views back to the document. Used on the FX thread.
 */
final class ViewerWindow implements AutoCloseable {
    private final ScenarioDocument document;
    private final DisplaySettings settings;
    private final LiveResults live;
    private final ComparisonModel beside;
    private final ExecutorService background = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "files");
        thread.setDaemon(true);
        return thread;
    });
    private final NotificationBar notice = new NotificationBar();
    private final WindowLayout workbench = new WindowLayout();
    private final FileActions files;
    private final EditorPane editor;
    private final YardView yard;
    private final Scene scene;

    ViewerWindow(
            ScenarioDocument document,
            RecentFiles recent,
            DisplaySettings settings,
            Dialogs dialogs,
            Arguments.Size size,
            TraceOptions asked) {
        this.document = document;
        this.settings = settings;
        live = new LiveResults(asked, Platform::runLater);
        editor = new EditorPane(document, settings.unitsProperty(), dialogs);
        files = new FileActions(document, recent, dialogs, background, Platform::runLater, notice::tell, editor::flush);
        scene = new Scene(workbench, size.width(), size.height());
        AnswerStrip strip = new AnswerStrip(
                live.stateProperty(), live.studiesProperty(), editor.wrongCount(), settings.unitsProperty());
        workbench.setHead(strip, notice);
        workbench.setEditor(editor);
        workbench.setWrongCount(editor.wrongCount());
        yard = new YardView(
                Bindings.createObjectBinding(() -> document.readProperty().get().scenario(), document.readProperty()),
                live.stateProperty(),
                settings.unitsProperty(),
                settings.themeProperty(),
                new DocumentEdits(document),
                asked,
                Platform::runLater);
        workbench.setYard(yard);
        FileExport export = new FileExport(dialogs, background, Platform::runLater, notice::tell);
        beside = new ComparisonModel(document, live.stateProperty(), asked, Platform::runLater);
        pan(export);
        Node menu = new ExportMenu(live, document, settings, export, this::picture);
        workbench.setStatusBar(new StatusBar(document, files, recent, settings, menu));
        settings.themeProperty().addListener((value, before, now) -> now.applyTo(scene));
        settings.themeProperty().get().applyTo(scene);
        keys();
        document.readProperty().addListener((value, before, now) -> show(now));
        show(document.readProperty().get());
    }

    private void pan(FileExport export) {
        PanPane pan = new PanPane(
                document,
                live.stateProperty(),
                live.studiesProperty(),
                settings.unitsProperty(),
                settings.themeProperty(),
                export);
        pan.setTools(new KeepButton(beside, live.stateProperty()));
        workbench.setPan(pan);
        ComparisonPane both = new ComparisonPane(beside, settings.unitsProperty(), settings.themeProperty(), export);
        beside.stateProperty().addListener((value, before, now) -> {
            if (before.isKept() != now.isKept()) {
                workbench.setBeside(now.isKept() ? both : null);
            }
        });
    }

    private void show(CheckedScenario read) {
        try {
            read.atOneMoment();
            live.show(read);
        } catch (ScenarioException e) {
            live.refuse(read.scenario(), e.getMessage());
        }
    }

    private void keys() {
        key(KeyCode.O, false, files::open);
        key(KeyCode.S, false, files::save);
        key(KeyCode.S, true, files::saveAs);
        key(KeyCode.Z, false, document::undo);
        key(KeyCode.Z, true, document::redo);
        key(KeyCode.Y, false, document::redo);
        scene.getAccelerators()
                .put(
                        new KeyCodeCombination(KeyCode.F2),
                        () -> workbench
                                .drawerOpenProperty()
                                .set(!workbench.drawerOpenProperty().get()));
        scene.getAccelerators().put(new KeyCodeCombination(KeyCode.F6), () -> FocusCycle.next(scene, parts()));
    }

    private void key(KeyCode code, boolean shift, Runnable action) {
        scene.getAccelerators()
                .put(
                        shift
                                ? new KeyCodeCombination(code, KeyCombination.SHORTCUT_DOWN, KeyCombination.SHIFT_DOWN)
                                : new KeyCodeCombination(code, KeyCombination.SHORTCUT_DOWN),
                        action);
    }

    private List<String> parts() {
        return List.of("answer-strip", "yard-slot", "pan-slot", "beside-slot", "drawer-grip", "editor-slot", "shelf");
    }

    /** The window as it is seen now, as bytes of a PNG file; called away from the FX thread. */
    byte[] picture() {
        CompletableFuture<javafx.scene.image.WritableImage> image = new CompletableFuture<>();
        Platform.runLater(() -> image.complete(scene.snapshot(null)));
        return PngEncoder.png(image.join());
    }

    /** Shows a sentence across the top. */
    void tell(String sentence) {
        notice.tell(sentence);
    }

    Scene scene() {
        return scene;
    }

    ScenarioDocument document() {
        return document;
    }

    DisplaySettings settings() {
        return settings;
    }

    LiveResults live() {
        return live;
    }

    WindowLayout workbench() {
        return workbench;
    }

    FileActions files() {
        return files;
    }

    ComparisonModel beside() {
        return beside;
    }

    EditorPane editor() {
        return editor;
    }

    YardView yard() {
        return yard;
    }

    /** Stops all work behind the window. */
    @Override
    public void close() {
        yard.close();
        live.close();
        beside.close();
        background.shutdownNow();
    }
}
