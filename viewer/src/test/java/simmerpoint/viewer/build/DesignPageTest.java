package simmerpoint.viewer.build;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.ScrollPane;
import org.junit.jupiter.api.Test;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.study.design.DesignGoal;
import simmerpoint.study.design.DesignLimits;
import simmerpoint.study.design.DesignResult;
import simmerpoint.study.design.DesignStudy;
import simmerpoint.study.design.DishCandidate;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.FxThread;
import simmerpoint.viewer.Looking;
import simmerpoint.viewer.app.PngEncoder;
import simmerpoint.viewer.theme.Theme;

/** A search within narrow limits, so that it is quick; {@code -Dviews.keep=FOLDER} keeps a picture. */
class DesignPageTest {
    private static DesignResult found() throws Exception {
        CheckedScenario read = ScenarioReader.builtIn();
        DesignLimits usual = DesignLimits.around(read.scenario());
        DesignLimits narrow = new DesignLimits(
                usual.cuts(),
                new DesignLimits.Span(80, 130),
                new DesignLimits.Span(70, 80),
                new DesignLimits.Span(12, 13),
                new DesignLimits.Span(3, 4),
                usual.mostPanels(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
        return DesignStudy.run(
                read,
                new DesignGoal(300, Optional.empty()),
                narrow,
                TraceOptions.defaults().withRays(1 << 11),
                Progress.NONE);
    }

    @Test
    void whatIsFoundCanBeTaken() throws Exception {
        DesignResult result = found();
        assertTrue(result.fewestPanels().isPresent());
        List<DishCandidate> taken = new ArrayList<>();
        for (UnitSystem units : UnitSystem.values()) {
            List<String> cut = FxThread.get(() -> {
                Node page = DesignPage.of(result, units, Theme.LIGHT, taken::add);
                ScrollPane room = new ScrollPane(page);
                room.setFitToWidth(true);
                Scene scene = new Scene(room, 940, 430);
                Theme.LIGHT.applyTo(scene);
                scene.snapshot(null);
                keep(scene, units);
                ((Button) page.lookup("#design-take-fewest")).fire();
                return Looking.cut(room);
            });
            assertEquals(List.of(), cut, units.toString());
        }
        assertEquals(result.fewestPanels().get().candidate(), taken.get(0));
    }

    private static void keep(Scene scene, UnitSystem units) throws Exception {
        String folder = System.getProperty("views.keep", "");
        if (!folder.isEmpty()) {
            scene.getRoot().resize(940, 1400);
            Files.write(Path.of(folder, "design-" + units + ".png"), PngEncoder.png(scene.snapshot(null)));
        }
    }
}
