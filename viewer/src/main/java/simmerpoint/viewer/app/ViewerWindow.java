package simmerpoint.viewer.app;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import javafx.application.Platform;
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
import simmerpoint.viewer.dialog.Dialogs;
import simmerpoint.viewer.dialog.FileExport;
import simmerpoint.viewer.document.RecentFiles;
import simmerpoint.viewer.document.ScenarioDocument;
import simmerpoint.viewer.editing.ChangePane;
import simmerpoint.viewer.live.LiveResults;
import simmerpoint.viewer.live.PanelResults;
import simmerpoint.viewer.theme.Shade;
import simmerpoint.viewer.theme.Theme;
import simmerpoint.viewer.theme.Zoom;
import simmerpoint.viewer.workspace.Workspace;
import simmerpoint.viewer.yard.YardView;

/**
 * Connects the parts of the window: the document's scenario goes to the live results, these to the views, and changes from
 * the views back to the document. Used on the FX thread.
 */
final class ViewerWindow implements AutoCloseable {
    private final ScenarioDocument document;
    private final DisplaySettings settings;
    private final LiveResults live;
    private final PanelResults panels;
    private final ComparisonModel beside;
    private final NotificationBar notice = new NotificationBar();
    private final UncaughtFailures failures = new UncaughtFailures(Platform::runLater, notice::tell);
    private final ExecutorService background = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "files");
        thread.setDaemon(true);
        thread.setUncaughtExceptionHandler(failures);
        return thread;
    });
    private final ViewSwitch views = new ViewSwitch();
    private final WindowLayout workbench = new WindowLayout();
    private final FileActions files;
    private final ChangePane editor;
    private final Views all;
    private final Scene scene;

    ViewerWindow(
            ScenarioDocument document,
            RecentFiles recent,
            DisplaySettings settings,
            Dialogs dialogs,
            Arguments.Size size,
            TraceOptions asked) {
        Thread.currentThread().setUncaughtExceptionHandler(failures);
        this.document = document;
        this.settings = settings;
        live = new LiveResults(asked, Platform::runLater);
        panels = new PanelResults(Workspace.scenarioOf(document), asked, Platform::runLater);
        editor = new ChangePane(document, settings.unitsProperty(), dialogs);
        files = new FileActions(document, recent, dialogs, background, Platform::runLater, notice::tell, editor::flush);
        scene = new Scene(workbench, size.width(), size.height());
        Zoom.applyTo(scene);
        workbench.setHead(
                views,
                new AnswerStrip(
                        live.stateProperty(), live.studiesProperty(), editor.wrongCount(), settings.unitsProperty()));
        workbench.setNotice(notice);
        workbench.setEditor(editor);
        workbench.setWrongCount(editor.wrongCount());
        FileExport export = new FileExport(dialogs, background, Platform::runLater, notice::tell);
        beside = new ComparisonModel(document, live.stateProperty(), asked, Platform::runLater);
        all = new Views(
                Workspace.of(
                        document,
                        live,
                        panels,
                        settings.unitsProperty(),
                        settings.themeProperty(),
                        export,
                        dialogs,
                        asked,
                        Platform::runLater,
                        notice::tell),
                beside,
                files::openBuilt);
        DroppedFiles.on(workbench, files::open, this::takeLogs);
        views.viewProperty().addListener((value, before, now) -> workbench.setView(all.of(now)));
        workbench.setView(all.of(views.viewProperty().get()));
        Node menu = new ExportMenu(live, document, settings, export, this::picture);
        workbench.setStatusBar(new StatusBar(document, files, recent, settings, menu));
        settings.themeProperty().addListener((value, before, now) -> dress(now));
        dress(settings.themeProperty().get());
        keys();
        document.readProperty().addListener((value, before, now) -> {
            show(now);
            warn(before, now);
        });
    }

    /** Begins to trace; until then the window shows what it can without light. */
    void begin() {
        show(document.readProperty().get());
    }

    private void dress(Theme theme) {
        scene.setFill(Shade.SHEET.in(theme));
        theme.applyTo(scene);
    }

    /** Says what a check finds odd as soon as it is so, and no longer than that. */
    private void warn(CheckedScenario before, CheckedScenario now) {
        if (!now.warnings().equals(before.warnings())) {
            notice.warn(before.warnings(), now.warnings());
        }
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
        key(KeyCode.N, false, files::openNew);
        key(KeyCode.O, false, files::open);
        key(KeyCode.S, false, files::save);
        key(KeyCode.S, true, files::saveAs);
        key(KeyCode.Z, false, document::undo);
        key(KeyCode.Z, true, document::redo);
        key(KeyCode.Y, false, document::redo);
        key(KeyCode.DIGIT1, false, () -> see(View.COOK));
        key(KeyCode.DIGIT2, false, () -> see(View.BUILD));
        key(KeyCode.DIGIT3, false, () -> see(View.UNDERSTAND));
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
        return List.of("view-switch", "answer-strip", "view-place", "drawer-grip", "editor-slot", "shelf");
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

    ChangePane editor() {
        return editor;
    }

    YardView yard() {
        return all.yard();
    }

    /** Shows what logs of the built cooker say. */
    void takeLogs(List<Path> logs) {
        see(View.UNDERSTAND);
        all.understand().takeLogs(logs);
    }

    /** Shows a view. */
    void see(View view) {
        views.viewProperty().set(view);
    }

    /** The views. */
    Views views() {
        return all;
    }

    /** Stops all work behind the window. */
    @Override
    public void close() {
        all.close();
        panels.close();
        live.close();
        beside.close();
        background.shutdownNow();
    }
}
