package simmerpoint.truth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import simmerpoint.dish.mirror.Mirror;
import simmerpoint.safety.field.FieldStudy;
import simmerpoint.safety.field.Reach;
import simmerpoint.safety.field.ReachSearch;
import simmerpoint.safety.field.Way;
import simmerpoint.safety.field.YardBoxes;
import simmerpoint.safety.field.YardLight;
import simmerpoint.safety.risk.Hazard;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;

/** How far the light of a perfect dish reaches, against the closed form of collimated light. */
class ReachTest {
    /** Passed by chance once in 6,000 times. */
    private static final double ERRORS = 5;

    private static final double BEAM = 800;

    private static YardLight light(Scene scene, boolean pan) {
        return FieldStudy.run(
                        scene.scenario(),
                        TraceOptions.defaults().withRays(1 << 19).withThreads(2),
                        YardBoxes.of(scene.scenario()),
                        List.of(pan),
                        Progress.NONE)
                .get(0);
    }

    private static Scene perfect(double f) {
        return Scene.of(Scene.smooth(1.2, f, 0), Scene.disc(0.05))
                .with(Mirror.plain(0.85, 0))
                .beam(BEAM)
                .elevation(Math.toRadians(75));
    }

    /**
     * r = f √(ρ·DNI/q)/cos²(ψ/2) from the focus, ψ the angle from the axis (from the paraboloid's geometry; to 1 %), q what the mirrors
     * must add to the sun's own light. A bundle about the axis holds ψ up to 8°, one of the rim up to the rim angle.
     */
    @Test
    void lightOfAPerfectDishReachesAsFarAsTheClosedFormSaysAndFartherToTheRim() {
        Scene scene = perfect(0.8);
        double rim = 2 * Math.atan(1.2 / (4 * 0.8));
        List<Reach> reaches = ReachSearch.of(light(scene, false));
        for (Hazard hazard : new Hazard[] {Hazard.PAIN, Hazard.SMOULDER, Hazard.TINDER}) {
            double onAxis = 0.8 * Math.sqrt(0.85 * BEAM / (hazard.wattsPerSquareMetre() - BEAM));
            Reach reach = reaches.stream()
                    .filter(r -> r.hazard() == hazard)
                    .findFirst()
                    .orElseThrow();
            within(onAxis, onAxis / Math.pow(Math.cos(Math.toRadians(4)), 2), reach.of(Way.AXIS));
            double inside = rim / 2 - Math.toRadians(1.5);
            within(onAxis / Math.pow(Math.cos(inside), 2), onAxis / Math.pow(Math.cos(rim / 2), 2), reach.of(Way.RIM));
            assertTrue(reach.of(Way.RIM).orElseThrow().value()
                    > reach.of(Way.AXIS).orElseThrow().value());
        }
    }

    /** At the very edge of the light, within 3° of the rim, cells are lit in part. Noise lengthens the farthest of a bundle, by up to 3 %. */
    private static void within(double low, double high, Optional<Estimate> found) {
        Estimate reach = found.orElseThrow();
        String what = reach + " for " + low + " to " + high;
        assertTrue(reach.value() > 0.99 * low - ERRORS * reach.standardError(), what);
        assertTrue(reach.value() < 1.03 * high + ERRORS * reach.standardError(), what);
    }

    /** A pan that takes all the light leaves none behind it. */
    @Test
    void behindAPanThatTakesAllLightThereIsNone() {
        List<Reach> reaches = ReachSearch.of(light(perfect(0.8).with(Scene.pan(0.12, 0.1)), true));
        assertEquals(Optional.empty(), reaches.get(0).of(Way.AXIS));
        assertTrue(reaches.get(0).of(Way.DISH).isPresent());
    }
}
