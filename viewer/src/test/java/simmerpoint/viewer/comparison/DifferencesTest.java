package simmerpoint.viewer.comparison;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.BoundingBox;
import javafx.geometry.Bounds;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import javafx.scene.text.Text;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import simmerpoint.viewer.FxThread;
import simmerpoint.viewer.theme.Theme;

/** The table of two designs in any width it can get. */
class DifferencesTest {
    private static final List<PairFigures.Row> FIGURES = List.of(
            row("into the water", "1,698.63 \u00b1 0.09 W", "615.77 \u00b1 0.12 W", "82.86 \u00b1 0.10 W", " less"),
            row(
                    "hottest spot",
                    "56.7 \u00b1 0.7 kW/m\u00b2",
                    "48.4 \u00b1 1.6 kW/m\u00b2",
                    "8.4 \u00b1 1.7 kW/m\u00b2",
                    " stronger"),
            new PairFigures.Row(
                    "boils in", "22 to 25 min", "never boils: settles at 83 \u00b0C (78 to 88 \u00b0C)", ""));
    private static final List<PairFigures.Row> KEYS = List.of(
            new PairFigures.Row("mirror.slope-error", "5 mrad", "6 mrad", ""),
            new PairFigures.Row("mirror.material", "polished aluminium sheet", "household mirror", ""));

    private static PairFigures.Row row(String name, String kept, String now, String difference, String way) {
        return new PairFigures.Row(name, whole(kept), whole(now), whole(difference) + way);
    }

    /** As figures come: not to be broken. */
    private static String whole(String figure) {
        return figure.replace(' ', '\u00a0');
    }

    @ParameterizedTest
    @ValueSource(ints = {256, 290, 340, 420, 470, 500, 540, 600, 700, 1200})
    void noFigureIsBrokenAndNothingStandsOnAnother(int width) {
        List<String> wrong = FxThread.get(() -> {
            Differences table = new Differences();
            table.show(FIGURES, KEYS);
            VBox pane = new VBox(table);
            pane.getStyleClass().add("beside-pane");
            pane.getStylesheets()
                    .add(ComparisonPane.class.getResource("comparison.css").toExternalForm());
            Scene scene = new Scene(pane, width + 20, 400);
            Theme.LIGHT.applyTo(scene);
            scene.snapshot(null);
            List<Label> labels = table.getChildrenUnmodifiable().stream()
                    .map(Label.class::cast)
                    .filter(label -> !label.getText().isEmpty() && label.getWidth() > 0)
                    .toList();
            List<String> found = new ArrayList<>();
            for (Label label : labels) {
                look(label, labels, width, found);
            }
            return found;
        });
        assertEquals(List.of(), wrong);
    }

    private static void look(Label label, List<Label> all, int width, List<String> found) {
        Bounds box = box(label);
        for (String word : label.getText().split(" ")) {
            Text text = new Text(word);
            text.setFont(label.getFont());
            if (text.getLayoutBounds().getWidth() > box.getWidth() + 0.5) {
                found.add("broken: " + word);
            }
        }
        if (box.getMinX() < 0 || box.getMaxX() > width + 0.5) {
            found.add("reaches out: " + label.getText());
        }
        all.stream()
                .filter(other -> other != label
                        && box(other)
                                .intersects(
                                        box.getMinX() + 1, box.getMinY() + 1, box.getWidth() - 2, box.getHeight() - 2))
                .forEach(other -> found.add(label.getText() + " on " + other.getText()));
    }

    /** Without the space at the end of a broken line, which reaches further. */
    private static Bounds box(Label label) {
        return new BoundingBox(label.getLayoutX(), label.getLayoutY(), label.getWidth(), label.getHeight());
    }
}
