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
import simmerpoint.scenario.ReadScenario;
import simmerpoint.scenario.ScenarioException;
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
 * Everything in the window, joined: the desk's scenario goes to the live answers, those go to the parts that show them,
 * and what is done to the parts goes back to the desk. Made and used on the FX thread.
 */
final class ViewerWindow implements AutoCloseable {
    private final ScenarioDocument desk;
    private final DisplaySettings look;
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
            ScenarioDocument desk,
            RecentFiles recent,
            DisplaySettings look,
            Dialogs asks,
            Arguments.Size size,
            TraceOptions asked) {
        this.desk = desk;
        this.look = look;
        live = new LiveResults(asked, Platform::runLater);
        editor = new EditorPane(desk, look.unitsProperty(), asks);
        files = new FileActions(desk, recent, asks, background, Platform::runLater, notice::tell, editor::flush);
        scene = new Scene(workbench, size.width(), size.height());
        AnswerStrip strip = new AnswerStrip(
                live.stateProperty(), live.studiesProperty(), editor.wrongCount(), look.unitsProperty());
        workbench.setHead(strip, notice);
        workbench.setEditor(editor);
        workbench.setWrongCount(editor.wrongCount());
        yard = new YardView(
                Bindings.createObjectBinding(() -> desk.readProperty().get().scenario(), desk.readProperty()),
                live.stateProperty(),
                look.unitsProperty(),
                look.themeProperty(),
                new DocumentEdits(desk),
                asked,
                Platform::runLater);
        workbench.setYard(yard);
        FileExport takeAway = new FileExport(asks, background, Platform::runLater, notice::tell);
        beside = new ComparisonModel(desk, live.stateProperty(), asked, Platform::runLater);
        pan(takeAway);
        Node menu = new ExportMenu(live, desk, look, takeAway, this::picture);
        workbench.setShelf(new StatusBar(desk, files, recent, look, menu));
        look.themeProperty().addListener((value, before, now) -> now.dress(scene));
        look.themeProperty().get().dress(scene);
        keys();
        desk.readProperty().addListener((value, before, now) -> show(now));
        show(desk.readProperty().get());
    }

    private void pan(FileExport takeAway) {
        PanPane pan = new PanPane(
                desk,
                live.stateProperty(),
                live.studiesProperty(),
                look.unitsProperty(),
                look.themeProperty(),
                takeAway);
        pan.setTools(new KeepButton(beside, live.stateProperty()));
        workbench.setPan(pan);
        ComparisonPane both = new ComparisonPane(beside, look.unitsProperty(), look.themeProperty(), takeAway);
        beside.stateProperty().addListener((value, before, now) -> {
            if (before.isKept() != now.isKept()) {
                workbench.setBeside(now.isKept() ? both : null);
            }
        });
    }

    private void show(ReadScenario read) {
        try {
            live.show(read.atOneMoment());
        } catch (ScenarioException e) {
            live.refuse(read.scenario(), e.getMessage());
        }
    }

    private void keys() {
        key(KeyCode.O, false, files::open);
        key(KeyCode.S, false, files::save);
        key(KeyCode.S, true, files::saveAs);
        key(KeyCode.Z, false, desk::undo);
        key(KeyCode.Z, true, desk::redo);
        key(KeyCode.Y, false, desk::redo);
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

    ScenarioDocument desk() {
        return desk;
    }

    DisplaySettings look() {
        return look;
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
