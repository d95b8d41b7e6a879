package simmerpoint.trial.spot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;

class CardStudyTest {
    private static final TraceOptions OPTIONS = TraceOptions.defaults().withRays(131_072);
    private static final double[] DISTANCES = {0.72, 0.80, 0.90};

    /** Widths of another dish, traced with another seed, tell its figures within three of their standard deviations. */
    @Test
    void anotherDishIsToldByItsSpot() throws Exception {
        CheckedScenario read = ScenarioReader.read(Path.of("../scenarios/tea-kitchen.yaml"));
        CheckedScenario truth =
                read.with(java.util.Map.of("mirror.slope-error", "9 mrad", "dish.focal-length", "82 cm"));
        CardResult exact =
                CardStudy.run(truth, readings(new double[] {0.1, 0.1, 0.1}), OPTIONS.withSeed(5), Progress.NONE);
        double[] widths =
                exact.points().stream().mapToDouble(CardResult.Point::planned).toArray();
        CardResult found = CardStudy.run(read, readings(widths), OPTIONS, Progress.NONE);
        assertEquals(0.009, found.slopeError().value(), 3 * found.slopeError().standardError());
        assertEquals(0.82, found.focalLength().value(), 3 * found.focalLength().standardError());
        assertTrue(found.misfit() < 1, () -> found.toString());
        assertTrue(found.slopeError().value() > 0.006, () -> "" + found.slopeError());
    }

    private static List<CardReading> readings(double[] widths) {
        List<CardReading> readings = new ArrayList<>();
        for (int k = 0; k < widths.length; k++) {
            readings.add(new CardReading(k + 2, DISTANCES[k], widths[k], Optional.empty()));
        }
        return readings;
    }
}
