package simmerpoint.viewer.app;

import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.input.DragEvent;
import javafx.scene.input.TransferMode;
import simmerpoint.viewer.dialog.FileKind;

/** Files that are dropped on the window from outside: a scenario is opened, all others are taken as logs. */
final class DroppedFiles {
    private final Consumer<Path> scenario;
    private final Consumer<List<Path>> logs;

    private DroppedFiles(Consumer<Path> scenario, Consumer<List<Path>> logs) {
        this.scenario = scenario;
        this.logs = logs;
    }

    /** Files dropped anywhere on {@code node}; either may ask questions, so that the drop is over before it is called. */
    static void on(Node node, Consumer<Path> scenario, Consumer<List<Path>> logs) {
        DroppedFiles drop = new DroppedFiles(scenario, logs);
        node.setOnDragOver(DroppedFiles::over);
        node.setOnDragDropped(drop::dropped);
    }

    private static void over(DragEvent event) {
        if (event.getDragboard().hasFiles()) {
            event.acceptTransferModes(TransferMode.COPY);
            event.consume();
        }
    }

    private void dropped(DragEvent event) {
        List<Path> files =
                event.getDragboard().getFiles().stream().map(File::toPath).toList();
        event.setDropCompleted(!files.isEmpty());
        event.consume();
        Platform.runLater(() -> take(files));
    }

    private void take(List<Path> files) {
        if (files.size() == 1 && isScenario(files.get(0))) {
            scenario.accept(files.get(0));
        } else if (!files.isEmpty()) {
            logs.accept(files);
        }
    }

    private static boolean isScenario(Path file) {
        String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
        return name.endsWith("." + FileKind.SCENARIO.extension()) || name.endsWith(".yml");
    }
}
