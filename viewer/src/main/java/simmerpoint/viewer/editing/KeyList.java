package simmerpoint.viewer.editing;

import java.util.List;
import javafx.beans.value.ObservableValue;
import javafx.scene.layout.VBox;
import simmerpoint.scenario.keys.Keys;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.dialog.Dialogs;
import simmerpoint.viewer.document.ScenarioDocument;

/** A few keys to be changed, one below the other, each as in the drawer. */
public final class KeyList extends VBox {
    /** Of those keys, by full path. */
    public KeyList(ScenarioDocument document, ObservableValue<UnitSystem> units, Dialogs dialogs, List<String> paths) {
        super(8);
        getStyleClass().addAll("editor", "key-list");
        getStylesheets().add(KeyList.class.getResource("editing.css").toExternalForm());
        ChoiceEdits choosing = new ChoiceEdits(document, dialogs);
        for (String path : paths) {
            KeyModel model = new KeyModel(Keys.find(path).orElseThrow(), document, units);
            getChildren().add(new KeyRow(model, choosing, dialogs, units));
        }
    }

    /** Without explanations, which are then read by pointing at a key, and without sliders. */
    public KeyList brief() {
        getChildren().forEach(row -> ((KeyRow) row).setBrief());
        return this;
    }
}
