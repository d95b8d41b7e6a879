package simmerpoint.viewer;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import org.junit.jupiter.api.Test;

class LookingTest {
    @Test
    void wordsThatAreCutShortAreFound() {
        FxThread.run(() -> {
            Label narrow = new Label("Words that do not fit");
            narrow.setMaxWidth(60);
            HBox box = new HBox(narrow, new Label("fits"));
            new Scene(box, 300, 50).snapshot(null);
            assertEquals(List.of("Words that do not fit"), Looking.cut(box));
        });
    }

    /** A result may arrive between a pulse and the look: its words are there, their layout is not. */
    @Test
    void wordsThatWereChangedSinceTheLastPulseAreNotTakenForCut() {
        FxThread.run(() -> {
            Label label = new Label("One");
            HBox box = new HBox(label);
            new Scene(box, 300, 50).snapshot(null);
            label.setText("Another");
            assertEquals(List.of(), Looking.cut(box));
        });
    }
}
