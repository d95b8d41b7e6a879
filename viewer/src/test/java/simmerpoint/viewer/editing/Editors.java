package simmerpoint.viewer.editing;

import java.nio.file.Path;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.Scene;
import javafx.stage.Stage;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.FxThread;
import simmerpoint.viewer.ScriptedAsks;
import simmerpoint.viewer.dialog.Dialogs;
import simmerpoint.viewer.document.ScenarioDocument;
import simmerpoint.viewer.theme.Theme;

/** Editors in windows for tests. */
final class Editors {
    private static final double DRAWER = 380;
    private static final double HEIGHT = 620;

    private Editors() {}

    /** An editor in a window as wide as the drawer. */
    record Shown(ScenarioDocument document, EditorPane pane, ObjectProperty<UnitSystem> units, Stage stage)
            implements AutoCloseable {
        @Override
        public void close() {
            FxThread.run(stage::close);
        }
    }

    static Shown show(ScenarioDocument document, UnitSystem system, Dialogs dialogs) {
        Shown shown = FxThread.get(() -> {
            ObjectProperty<UnitSystem> units = new SimpleObjectProperty<>(system);
            EditorPane pane = new EditorPane(document, units, dialogs);
            Stage stage = new Stage();
            Scene scene = new Scene(pane, DRAWER, HEIGHT);
            Theme.LIGHT.applyTo(scene);
            stage.setScene(scene);
            stage.show();
            return new Shown(document, pane, units, stage);
        });
        FxThread.settle();
        return shown;
    }

    static Shown show(ScenarioDocument document) {
        return show(document, UnitSystem.METRIC, answering(null));
    }

    /** Names always the same file; null is none. */
    static Dialogs answering(Path file) {
        ScriptedAsks asks = new ScriptedAsks();
        asks.file = Optional.ofNullable(file);
        return asks;
    }
}
