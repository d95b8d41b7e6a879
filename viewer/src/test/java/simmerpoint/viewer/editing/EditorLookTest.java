package simmerpoint.viewer.editing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javafx.beans.property.SimpleObjectProperty;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextField;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.text.Text;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.FxThread;
import simmerpoint.viewer.document.ScenarioDocument;
import simmerpoint.viewer.theme.Theme;

/** Paints the whole editor as wide as the drawer and looks for cut words; keeps the pictures where -Dlook.folder says. */
@Tag("slow")
class EditorLookTest {
    private static final double WIDTH = 380;
    private static final double SCROLL_BAR = 14;
    private static final double HEIGHT = 7200;
    private static final int COLUMNS = 4;

    @ParameterizedTest
    @CsvSource({"LIGHT, METRIC", "LIGHT, INCH", "DARK, INCH"})
    void nothingIsCutOff(Theme theme, UnitSystem system) throws IOException {
        List<String> cut = new ArrayList<>();
        WritableImage image = FxThread.get(() -> {
            ScenarioDocument document = new ScenarioDocument();
            EditorPane pane = new EditorPane(document, new SimpleObjectProperty<>(system), Editors.answering(null));
            pane.groups().forEach(group -> group.setExpanded(true));
            Scene scene = new Scene(pane, WIDTH - SCROLL_BAR, HEIGHT);
            theme.applyTo(scene);
            document.change(Map.of("dish.hub", "wide", "pan.diameter", "9 in", "mirror.dust", "x", "stand.raise", "x"));
            document.change(Map.of("aim.jitter", "x", "sun.beam", "x", "heat-levels.hold", "x", "pan.height", "x"));
            document.change(Map.of("mirror.material", "household mirror", "sun.shape.kind", "circumsolar"));
            WritableImage painted = scene.snapshot(null);
            look(pane, cut);
            return painted;
        });
        keep(image, theme + "-" + system + ".png");
        assertEquals(List.of(), cut);
    }

    private static void look(Node node, List<String> cut) {
        if (!node.isVisible()) {
            return;
        }
        if (node instanceof Labeled labeled && labeled.lookup(".text") instanceof Text text) {
            boolean own = text.getParent() == labeled
                    && labeled.getText() != null
                    && !labeled.getText().isEmpty();
            if (own
                    && !text.getText()
                            .replace("\n", " ")
                            .equals(labeled.getText().replace("\n", " "))) {
                cut.add(labeled.getText() + " is shown as " + text.getText());
            }
        }
        if (node instanceof TextField field && field.lookup(".text") instanceof Text text) {
            double room = field.getWidth() - field.snappedLeftInset() - field.snappedRightInset();
            if (text.getLayoutBounds().getWidth() > room) {
                cut.add(field.getId() + " " + field.getText());
            }
        }
        Bounds bounds = node.localToScene(node.getBoundsInLocal());
        if (node instanceof Labeled && bounds.getMaxX() > WIDTH - SCROLL_BAR + 0.5) {
            cut.add(node + " reaches to " + bounds.getMaxX());
        }
        if (node instanceof Parent parent && !(node instanceof ComboBox<?> combo && combo.isShowing())) {
            parent.getChildrenUnmodifiable().forEach(child -> look(child, cut));
        }
    }

    private static void keep(WritableImage image, String name) throws IOException {
        String folder = System.getProperty("look.folder");
        if (folder == null) {
            return;
        }
        int w = (int) image.getWidth();
        int h = (int) image.getHeight() / COLUMNS;
        BufferedImage columns = new BufferedImage((w + 20) * COLUMNS, h, BufferedImage.TYPE_INT_ARGB);
        for (int k = 0; k < COLUMNS; k++) {
            int[] pixels = new int[w * h];
            image.getPixelReader().getPixels(0, k * h, w, h, PixelFormat.getIntArgbInstance(), pixels, 0, w);
            columns.setRGB(k * (w + 20), 0, w, h, pixels, 0, w);
        }
        ImageIO.write(
                columns,
                "png",
                Files.createDirectories(Path.of(folder)).resolve(name).toFile());
    }
}
