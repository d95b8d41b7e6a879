package simmerpoint.viewer.dialog;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Region;
import javafx.scene.robot.Robot;
import javafx.stage.Stage;
import javafx.stage.Window;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import simmerpoint.viewer.FxThread;
import simmerpoint.viewer.Looking;
import simmerpoint.viewer.theme.Theme;

class WindowDialogsTest {
    /** The return key takes the first answer, the escape key the last, which waves the question away. */
    @ParameterizedTest
    @CsvSource({"ENTER, 0", "ESCAPE, 2"})
    void keysAnswer(KeyCode key, int expected) {
        Stage stage = FxThread.get(() -> {
            Stage s = new Stage();
            s.setScene(new Scene(new Region(), 400, 300));
            Theme.DARK.applyTo(s.getScene());
            s.show();
            return s;
        });
        AtomicReference<Optional<Integer>> answer = new AtomicReference<>();
        Dialogs dialogs = new WindowDialogs(() -> stage);
        Platform.runLater(() -> answer.set(
                dialogs.which("Save first?", "There are changes.", List.of("Save", "Do not save", "Go back"))));
        FxThread.until("the question is seen", () -> question(stage).isPresent());
        FxThread.settle();
        assertEquals(
                List.of(),
                FxThread.get(() ->
                        Looking.cut(question(stage).orElseThrow().getScene().getRoot())));
        FxThread.run(() -> new Robot().keyType(key));
        FxThread.until("the question is answered", () -> answer.get() != null);
        FxThread.run(stage::close);
        assertEquals(Optional.of(expected), answer.get());
    }

    private static Optional<Window> question(Stage stage) {
        return Window.getWindows().stream()
                .filter(w -> w instanceof Stage s && s.getOwner() == stage)
                .findFirst();
    }

    @Test
    void aFileNamedWithoutAnEndingGetsIt(@TempDir Path folder) throws IOException {
        assertEquals(folder.resolve("sheet.html"), WindowDialogs.withExtension(folder.resolve("sheet"), FileKind.PAGE));
        assertEquals(
                folder.resolve("sheet.txt"), WindowDialogs.withExtension(folder.resolve("sheet.txt"), FileKind.PAGE));
        Files.createFile(folder.resolve("map.png"));
        assertEquals(
                folder.resolve("map"),
                WindowDialogs.withExtension(folder.resolve("map"), FileKind.PICTURE),
                "nobody was asked whether that file may be written over");
    }
}
