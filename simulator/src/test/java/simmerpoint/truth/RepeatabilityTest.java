package simmerpoint.truth;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.mirror.Mirror;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.target.FluxMap;

/** The same scene and seed give the same bits, whatever the number of threads. */
class RepeatabilityTest {
    private static final TraceOptions OPTIONS = TraceOptions.defaults().withRays(1L << 16);

    private static final Mirror MIRROR = new Mirror("own figures", 0.85, 0.02, 5e-3, 1e-3, 0.05, 0.02, 0.03, 4e-3);

    private static List<Scene> scenes() {
        return List.of(
                        Scene.rings(1.2, 0.8, 0.06, 24, 6),
                        Scene.strips(1.2, 0.8, 0.06, 24),
                        Scene.smooth(1.2, 0.8, 0.06))
                .stream()
                .map(RepeatabilityTest::underAPan)
                .toList();
    }

    private static Scene underAPan(DishPlan dish) {
        return Scene.of(dish, Scene.pan(0.12, 0.11)).with(MIRROR).elevation(0.6).drift(0.01, 0.003);
    }

    @Test
    void sameBitsOnAnyNumberOfThreads() {
        for (Scene scene : scenes()) {
            TraceResult one = scene.trace(OPTIONS.withThreads(1));
            same(one, scene.trace(OPTIONS.withThreads(1)));
            same(one, scene.trace(OPTIONS.withThreads(2)));
            same(one, scene.trace(OPTIONS.withThreads(5)));
        }
    }

    @Test
    void anotherSeedGivesOtherNoise() {
        Scene scene = scenes().get(0);
        double a = scene.trace(OPTIONS.withSeed(1)).ledger().caught().value();
        double b = scene.trace(OPTIONS.withSeed(2)).ledger().caught().value();
        assertNotEquals(a, b);
    }

    private static void same(TraceResult a, TraceResult b) {
        assertEquals(a.ledger(), b.ledger());
        assertEquals(a.spot(), b.spot());
        assertEquals(a.replicates(), b.replicates());
        same(a.maps().crossing(), b.maps().crossing());
        same(a.maps().caught(), b.maps().caught());
        same(a.maps().wall(), b.maps().wall());
        same(a.maps().lid(), b.maps().lid());
    }

    private static void same(Optional<FluxMap> a, Optional<FluxMap> b) {
        assertEquals(a.isPresent(), b.isPresent());
        if (a.isPresent()) {
            same(a.orElseThrow(), b.orElseThrow());
        }
    }

    private static void same(FluxMap a, FluxMap b) {
        assertEquals(a.firstMin(), b.firstMin());
        assertEquals(a.cellWidth(), b.cellWidth());
        assertArrayEquals(a.flux(), b.flux());
        assertArrayEquals(a.standardError(), b.standardError());
    }
}
