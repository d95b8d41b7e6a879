package simmerpoint.study.light;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Map;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceStudy;

class ReflectedLightTest {
    private static final TraceOptions OPTIONS =
            TraceOptions.defaults().withRays(1 << 14).withThreads(1);

    /** The same rays as the trace's: they differ by rounding. A grate keeps light off the mirrors as well. */
    @Test
    void wattsAddUpToThoseReflected() throws ScenarioException {
        for (Map<String, String> changes : java.util.List.of(
                Map.<String, String>of(), Map.of("stand.grate.ring", "30 cm", "stand.grate.width", "2 cm"))) {
            Scenario scenario = ScenarioReader.builtIn().with(changes).scenario();
            double watts = new ReflectedLight(scenario, OPTIONS)
                    .rays(Progress.NONE)
                    .mapToDouble(ReflectedRay::watts)
                    .sum();
            double traced = TraceStudy.run(scenario, OPTIONS, Progress.NONE)
                    .ledger()
                    .reflected()
                    .value();
            assertEquals(traced, watts, 1e-9 * traced);
        }
    }

    /** A perfect paraboloid sends every ray of a sun that is a point through its focus: the parabola's law, to single precision. */
    @Test
    void raysOfThePerfectDishMeetInTheFocus() throws ScenarioException {
        Scenario perfect = ScenarioReader.builtIn()
                .with(Map.of(
                        "dish.surface.cut", "smooth",
                        "mirror.panel-tilt", "0 mrad",
                        "mirror.slope-error", "0 mrad",
                        "mirror.beam-spread", "0 mrad",
                        "mirror.wide-share", "0",
                        "sun.shape.half-angle", "1e-6 mrad",
                        "aim.turn.up", "0°"))
                .scenario();
        new ReflectedLight(perfect, OPTIONS).rays(Progress.NONE).forEach(ray -> {
            double way = (0.8 - ray.point().z()) / ray.direction().z();
            assertEquals(0, ray.point().plus(ray.direction().times(way)).x(), 1e-6);
            assertEquals(0, ray.point().plus(ray.direction().times(way)).y(), 1e-6);
            assertEquals(1, ray.direction().length(), 1e-7);
        });
    }

    @Test
    void itCanBeStopped() throws ScenarioException {
        ReflectedLight light = new ReflectedLight(ScenarioReader.builtIn().scenario(), OPTIONS);
        assertThrows(
                CancellationException.class,
                () -> light.rays((done, detail) -> done < 0.5).count());
    }
}
