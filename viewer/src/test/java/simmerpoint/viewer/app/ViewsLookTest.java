package simmerpoint.viewer.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.FxThread;
import simmerpoint.viewer.Looking;
import simmerpoint.viewer.ScriptedAsks;
import simmerpoint.viewer.document.RecentFiles;
import simmerpoint.viewer.document.ScenarioDocument;
import simmerpoint.viewer.theme.Theme;

/** Every view and question in the smallest and a large window, in both units and colours; {@code -Dviews.keep=FOLDER} keeps pictures. */
@Tag("slow")
class ViewsLookTest {
    private static final Map<View, List<String>> QUESTIONS = Map.of(
            View.COOK,
            List.of(""),
            View.BUILD,
            List.of("cut", "mend", "search", "compare", "cost"),
            View.UNDERSTAND,
            List.of("spot", "panels", "ledger", "doubt", "aim", "burns", "trial"));

    private static final List<Path> LOGS = Stream.of("monday.csv", "monday-cooling.csv", "tuesday-pan-out.csv")
            .map(name -> Path.of("..", "scenarios", "garden-logs", name))
            .toList();

    private ViewerWindow window;

    private void open(int width, int height, UnitSystem units, Theme theme) {
        window = FxThread.get(() -> new ViewerWindow(
                new ScenarioDocument(),
                RecentFiles.forgotten(),
                new DisplaySettings(units, theme),
                new ScriptedAsks(),
                new Arguments.Size(width, height),
                TraceOptions.defaults().withRays(1 << 13)));
        FxThread.run(window::begin);
        FxThread.until("the answer has settled", () -> {
            var state = window.live().stateProperty().get();
            return state != null && state.settled();
        });
        FxThread.until(
                "the studies are done",
                () -> window.live()
                        .studiesProperty()
                        .get()
                        .shows(window.document().readProperty().get().scenario()));
    }

    @AfterEach
    void close() {
        FxThread.run(window::close);
    }

    @ParameterizedTest
    @CsvSource({
        "1024, 700, METRIC, LIGHT",
        "1024, 700, INCH, DARK",
        "1920, 1200, INCH, LIGHT",
        "1920, 1200, METRIC, DARK"
    })
    void noWordIsCutInAnyView(int width, int height, UnitSystem units, Theme theme) throws Exception {
        open(width, height, units, theme);
        for (View view : View.values()) {
            for (String question : QUESTIONS.get(view)) {
                see(view, question);
                String name = view.word() + "-" + question + "-" + width + "-" + units + "-" + theme;
                keep(name);
                assertEquals(List.of(), FxThread.get(() -> cut()), name);
            }
        }
        FxThread.run(() -> {
            window.see(View.COOK);
            window.workbench().drawerOpenProperty().set(true);
        });
        settle();
        keep("drawer-" + width + "-" + units + "-" + theme);
        assertEquals(List.of(), FxThread.get(() -> cut()), "with the drawer open");
    }

    private void see(View view, String question) {
        FxThread.run(() -> {
            window.see(view);
            if (!question.isEmpty()) {
                window.views().choose(view, question);
            }
            if (question.equals("trial")) {
                window.takeLogs(LOGS);
            }
        });
        settle();
        FxThread.until(
                "nothing is being worked on any more",
                () -> window.scene().getRoot().lookupAll(".progress-bar.thin").stream()
                        .noneMatch(Looking::seen));
        settle();
    }

    private void settle() {
        FxThread.run(() -> window.scene().snapshot(null));
        FxThread.run(() -> window.scene().snapshot(null));
    }

    /** What is scrolled out of sight below is not cut. */
    private List<String> cut() {
        return Looking.cut(window.workbench());
    }

    private void keep(String name) throws Exception {
        String folder = System.getProperty("views.keep", "");
        if (!folder.isEmpty()) {
            var image = FxThread.get(() -> window.scene().snapshot(null));
            Files.write(Path.of(folder, name + ".png"), PngEncoder.png(image));
        }
    }

    /** In the smallest window nothing has to be scrolled sideways. */
    @Test
    void nothingReachesBeyondTheRightEdge() {
        open(1024, 700, UnitSystem.METRIC, Theme.LIGHT);
        for (View view : View.values()) {
            for (String question : QUESTIONS.get(view)) {
                see(view, question);
                List<String> wide = FxThread.get(() -> Looking.all(window.workbench()).stream()
                        .filter(node -> node instanceof ScrollPane && Looking.seen(node))
                        .map(ScrollPane.class::cast)
                        .filter(pane -> pane.getContent() != null
                                && pane.getContent().getBoundsInLocal().getWidth()
                                        > pane.getViewportBounds().getWidth() + 2)
                        .map(Node::getId)
                        .toList());
                assertEquals(List.of(), wide, view + " " + question);
            }
        }
    }

    @Test
    void lettersAndHandlesGrowWithTheWindow() {
        open(1920, 1200, UnitSystem.METRIC, Theme.LIGHT);
        settle();
        double large =
                FxThread.get(() -> ((javafx.scene.control.Label) window.scene().lookup("#answer-water"))
                        .getFont()
                        .getSize());
        double handle = FxThread.get(
                () -> window.scene().lookup("#yard-raise").getBoundsInParent().getWidth());
        FxThread.run(window::close);
        open(1024, 700, UnitSystem.METRIC, Theme.LIGHT);
        settle();
        double small =
                FxThread.get(() -> ((javafx.scene.control.Label) window.scene().lookup("#answer-water"))
                        .getFont()
                        .getSize());
        double little = FxThread.get(
                () -> window.scene().lookup("#yard-raise").getBoundsInParent().getWidth());
        assertTrue(large > 1.3 * small, small + " to " + large);
        assertTrue(handle > 1.3 * little, little + " to " + handle);
    }
}
