package simmerpoint.drawing.cooker;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.study.light.RayPath;

class LightPathsTest {
    private static final String DISH =
            "dish: {diameter: 1.2 m, focal-length: 0.8 m, hub: 6 cm, surface: {cut: smooth}}\n"
                    + "aim: {turn: {up: 0°}}\nplane: {disc: 20 cm}\n";

    /** Rays of a well-aimed sun meet at the focus: the law of reflection, and the property of the parabola. */
    @Test
    void raysMeetAtTheFocus() throws ScenarioException {
        Scenario scenario = ScenarioReader.parse("test", DISH, Path.of("")).scenario();
        List<RayPath> paths = new LightPaths(scenario).paths();
        assertEquals(4, paths.size());
        for (RayPath path : paths) {
            assertEquals(0, Math.hypot(path.towardsSun().x(), path.towardsSun().y()), 1e-9);
            assertEquals(0.8, path.end().z(), 0.01);
            assertEquals(0, path.end().x(), 0.01);
        }
    }
}
