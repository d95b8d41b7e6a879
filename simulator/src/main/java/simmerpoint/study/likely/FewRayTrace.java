package simmerpoint.study.likely;

import java.util.List;
import java.util.Optional;
import simmerpoint.heat.AbsorbedLight;
import simmerpoint.heat.HeatLevel;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.doubts.DrawnCooker;
import simmerpoint.study.trace.PanIrradiation;
import simmerpoint.study.trace.ReplicateCaster;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.target.CaughtByFace;
import simmerpoint.target.LightCatcher;
import simmerpoint.target.TargetScene;

/** Traces one drawn cooker with a few thousand rays of one replicate, and works out its heat. */
final class FewRayTrace {
    /** Rays of each cooker: their noise, about a hundredth of the watts, is small beside the doubts. */
    static final int BITS = 10;

    private FewRayTrace() {}

    /** What {@code cooker} does. */
    static DrawnOutcome of(DrawnCooker cooker, TraceOptions options) {
        CaughtByFace faces = faces(cooker, BITS, options);
        return cooker.scenario()
                .cooking()
                .map(kitchen -> DrawnHeat.of(cooker).in(absorbed(faces, cooker)))
                .orElseGet(() -> DrawnOutcome.ofDisc(faces.underside()));
    }

    /** Watts that {@code cooker} has beyond what {@code level} takes; without a level, or of a bare disc, its power. */
    static double watts(DrawnCooker cooker, Optional<HeatLevel> level, TraceOptions options) {
        CaughtByFace faces = faces(cooker, BITS, options);
        if (cooker.scenario().cooking().isEmpty()) {
            return faces.underside();
        }
        DrawnHeat heat = DrawnHeat.of(cooker);
        AbsorbedLight absorbed = absorbed(faces, cooker);
        return level.map(of -> heat.spare(of, absorbed)).orElseGet(() -> heat.power(absorbed));
    }

    /** What the pan of {@code cooker} takes up. */
    static AbsorbedLight absorbed(DrawnCooker cooker, TraceOptions options) {
        return absorbed(cooker, BITS, options);
    }

    /** The same with 2^{@code bits} rays. */
    static AbsorbedLight absorbed(DrawnCooker cooker, int bits, TraceOptions options) {
        return absorbed(faces(cooker, bits, options), cooker);
    }

    private static AbsorbedLight absorbed(CaughtByFace faces, DrawnCooker cooker) {
        Scenario scenario = cooker.scenario();
        return PanIrradiation.absorbed(faces, scenario, scenario.cooking().orElseThrow());
    }

    private static CaughtByFace faces(DrawnCooker cooker, int bits, TraceOptions options) {
        Scenario scenario = cooker.scenario();
        ReplicateCaster casting = new ReplicateCaster(scenario, options, cooker.buildSeed(options.seed()));
        TargetScene plan = TargetScene.forWatts(scenario.target(), casting.setup(), scenario.sun(), scenario.built());
        TargetScene.Replicate replicate = plan.new Replicate();
        LightCatcher catcher = replicate.catcher(casting.caster(), ReplicateCaster.batchSize(bits));
        casting.castOne(cooker.draw() % ReplicateCaster.REPLICATES, bits, catcher::catchLight);
        return plan.statistics(List.of(replicate)).caughtByFace();
    }
}
