package simmerpoint.target;

import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import simmerpoint.frozen.FrozenNumbers;
import simmerpoint.frozen.NumberDigest;
import simmerpoint.frozen.OddScenes;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.light.PanelStudy;
import simmerpoint.study.light.PanelWatts;
import simmerpoint.study.light.StoredLight;
import simmerpoint.study.pan.MoveStudy;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.ReplicateCaster;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.study.trace.TraceStudy;

/** What every odd scene's target catches is what it was, in all figures and maps; {@code simmerpoint.truth} holds that it is right. */
class FrozenCatchTest {
    private static final TraceOptions FEW =
            TraceOptions.defaults().withRays(2048).withThreads(1);
    private static final int POSITIONS = 7;

    static Stream<Map.Entry<String, Scenario>> scenes() {
        return OddScenes.all().entrySet().stream();
    }

    @ParameterizedTest
    @MethodSource("scenes")
    void isAsItWas(Map.Entry<String, Scenario> scene) {
        Scenario s = scene.getValue();
        NumberDigest digest = add(new NumberDigest(), "trace", TraceStudy.run(s, FEW, Progress.NONE));
        if (!new ReplicateCaster(s, FEW).caster().blocking().possible()) {
            add(digest, "stored", StoredLight.cast(s, FEW, Progress.NONE).catchFor(s, Progress.NONE));
            for (MoveStudy.Move move : MoveStudy.Move.values()) {
                digest.add("move." + move, MoveStudy.run(s, move, -0.02, 0.03, POSITIONS, FEW, Progress.NONE));
            }
        }
        panels(digest, PanelStudy.run(s, FEW, Progress.NONE));
        FrozenNumbers.check("catch-" + scene.getKey(), digest);
    }

    private static NumberDigest add(NumberDigest digest, String name, TraceResult result) {
        return digest.add(name + ".outline", result.outlineArea())
                .add(name + ".aperture", result.apertureArea())
                .add(name + ".panels", result.panels())
                .add(name + ".ledger", result.ledger())
                .add(name + ".spot", result.spot())
                .add(name + ".maps", result.maps())
                .add(name + ".faces", result.faces())
                .add(name + ".useful", result.useful());
    }

    private static void panels(NumberDigest digest, PanelWatts watts) {
        double[] incident = new double[watts.panels()];
        double[] reflected = new double[watts.panels()];
        double[] caught = new double[watts.panels()];
        for (int k = 0; k < watts.panels(); k++) {
            incident[k] = watts.incident(k);
            reflected[k] = watts.reflected(k);
            caught[k] = watts.caught(k);
        }
        digest.add("panels.incident", incident)
                .add("panels.reflected", reflected)
                .add("panels.caught", caught);
    }
}
