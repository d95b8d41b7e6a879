package simmerpoint.tracing;

import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import simmerpoint.frozen.FrozenNumbers;
import simmerpoint.frozen.NumberDigest;
import simmerpoint.frozen.OddScenes;
import simmerpoint.sampling.ScrambledSobol;
import simmerpoint.scenario.Scenario;

/** Light cast on every odd scene is what it was, ray by ray; that it is right is held by {@code simmerpoint.truth}. */
class FrozenLightTest {
    private static final int BITS = 8;

    static Stream<Map.Entry<String, Scenario>> scenes() {
        return OddScenes.all().entrySet().stream();
    }

    @ParameterizedTest
    @MethodSource("scenes")
    void isAsItWas(Map.Entry<String, Scenario> scene) {
        Scenario s = scene.getValue();
        LightCaster caster = new LightCaster(s.built(), 3, s.sun(), s.setup(), s.aim());
        ScrambledSobol.Block block = new ScrambledSobol(caster.dimensions(), 3, 1).block(BITS, 0);
        LightCaster.BatchCaster batches = caster.new BatchCaster(new ScrambledSobol(caster.dimensions(), 3, 1), block);
        NumberDigest digest = new NumberDigest()
                .add("dimensions", caster.dimensions())
                .add("batches", batches.batches())
                .add("errorFree", caster.errorFree())
                .add("blocking", caster.blocking().possible());
        ReflectedDirections directions = new ReflectedDirections(batches.batchSize());
        for (long k = 0; k < batches.batches(); k++) {
            add(digest, k + ".", batches.cast(k), directions, caster.blocking());
        }
        FrozenNumbers.check("light-" + scene.getKey(), digest);
    }

    private static void add(
            NumberDigest digest, String batch, LightBatch light, ReflectedDirections directions, Blocking blocking) {
        digest.add(batch + "px", light.px).add(batch + "py", light.py).add(batch + "pz", light.pz);
        digest.add(batch + "sx", light.sx).add(batch + "sy", light.sy).add(batch + "sz", light.sz);
        digest.add(batch + "nx", light.nx).add(batch + "ny", light.ny).add(batch + "nz", light.nz);
        digest.add(batch + "cosine", light.cosine);
        digest.add(batch + "watts", light.watts).add(batch + "panel", light.panel);
        digest.add(batch + "errorSample", light.errorSample).add(batch + "choice", new float[] {light.choice});
        for (int line = 0; line < 2; line++) {
            LightBatch.Tilts tilts = light.tilts[line];
            digest.add(batch + "tilt" + line + "x", tilts.x());
            digest.add(batch + "tilt" + line + "y", tilts.y());
            digest.add(batch + "tilt" + line + "z", tilts.z());
        }
        directions.reflect(light, light.capacity);
        digest.add(batch + "dx", directions.dx).add(batch + "dy", directions.dy).add(batch + "dz", directions.dz);
        Blocking.Test test = blocking.test();
        int blocked = 0;
        for (int i = 0; i < light.capacity; i++) {
            boolean hit = light.panel[i] >= 0
                    && test.blocks(light, i, directions.dx[i], directions.dy[i], directions.dz[i], 1);
            blocked += hit ? 1 : 0;
        }
        digest.add(batch + "blocked", blocked);
    }
}
