package simmerpoint.viewer.pan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javafx.scene.Scene;
import javafx.scene.image.WritableImage;
import org.junit.jupiter.api.Test;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.FxThread;
import simmerpoint.viewer.Looking;
import simmerpoint.viewer.ScriptedAsks;
import simmerpoint.viewer.app.PngEncoder;
import simmerpoint.viewer.theme.Theme;

/** The pane in the sizes it gets in the window; {@code -Dpan.keep=FOLDER} keeps the pictures. */
class PanLookTest {
    private static final int[][] SIZES = {{354, 540}, {660, 250}, {354, 310}, {690, 1030}, {984, 520}};

    private static PanPane pane(PanScenes scene) {
        return new PanPane(scene.work(new ScriptedAsks(), text -> {}), scene.control());
    }

    private static WritableImage shot(PanPane pane, Theme theme, int width, int height) {
        Scene scene = new Scene(pane, width, height);
        theme.applyTo(scene);
        scene.snapshot(null);
        return scene.snapshot(null);
    }

    @Test
    void nothingIsCutShortInAnySizeThemeAndUnits() throws Exception {
        for (int[] size : SIZES) {
            for (UnitSystem units : UnitSystem.values()) {
                Theme theme = units == UnitSystem.METRIC ? Theme.LIGHT : Theme.DARK;
                PanScenes scene = new PanScenes().answered();
                scene.units.set(units);
                scene.theme.set(theme);
                List<String> cut = FxThread.get(() -> {
                    PanPane pane = pane(scene);
                    WritableImage image = shot(pane, theme, size[0], size[1]);
                    keep("pan-" + size[0] + "x" + size[1] + "-" + theme.name(), image);
                    // What is scrolled out of sight is not cut.
                    return Looking.cut(pane).stream()
                            .filter(word -> !word.startsWith("outside"))
                            .toList();
                });
                assertEquals(List.of(), cut, size[0] + "x" + size[1] + " " + units);
            }
        }
    }

    @Test
    void saysToThoseWhoDoNotSeeWhatTheDrawingsShow() {
        PanScenes scene = new PanScenes().answered();
        FxThread.run(() -> {
            PanPane pane = pane(scene);
            shot(pane, Theme.LIGHT, 400, 600);
            assertTrue(pane.lookup("#pan-map").getAccessibleText().contains("kW/m\u00b2"));
            assertTrue(pane.lookup("#pull-curve").getAccessibleText().contains("At the focus: "));
            assertTrue(pane.lookup("#pan-wall").getAccessibleText().contains("colours"));
        });
    }

    private static void keep(String name, WritableImage image) throws Exception {
        String folder = System.getProperty("pan.keep", "");
        if (!folder.isEmpty()) {
            Files.write(Path.of(folder, name + ".png"), PngEncoder.png(image));
        }
    }
}
