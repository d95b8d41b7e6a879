package simmerpoint.viewer.theme;

import static org.junit.jupiter.api.Assertions.assertEquals;

import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.layout.StackPane;
import org.junit.jupiter.api.Test;
import simmerpoint.viewer.FxThread;

class ThemeTest {
    @Test
    void aThemeTakesThePlaceOfTheOther() {
        FxThread.run(() -> {
            Label label = new Label("word");
            StackPane root = new StackPane(label);
            Scene scene = new Scene(root, 60, 30);
            for (Theme theme : new Theme[] {Theme.LIGHT, Theme.DARK, Theme.DARK.other()}) {
                theme.applyTo(scene);
                var image = scene.snapshot(null);
                assertEquals(Shade.GROUND.in(theme), image.getPixelReader().getColor(1, 1));
                assertEquals(Shade.WORD.in(theme), label.getTextFill());
                assertEquals(2, scene.getStylesheets().size());
            }
        });
    }

    @Test
    void aPartAloneIsDressedToo() {
        FxThread.run(() -> {
            Label label = new Label("word");
            StackPane part = new StackPane(label);
            new Scene(part, 60, 30).snapshot(null);
            Theme.DARK.applyTo(part);
            part.applyCss();
            assertEquals(Shade.WORD.in(Theme.DARK), label.getTextFill());
        });
    }
}
