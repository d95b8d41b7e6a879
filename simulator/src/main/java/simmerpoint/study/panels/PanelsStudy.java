package simmerpoint.study.panels;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import simmerpoint.dish.PanelOutline;
import simmerpoint.geometry.Rotation;
import simmerpoint.geometry.Vec;
import simmerpoint.scenario.Scenario;
import simmerpoint.setup.Setup;
import simmerpoint.study.light.PanelStudy;
import simmerpoint.study.light.PanelWatts;
import simmerpoint.study.trace.PartialProgress;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.ReplicateCaster;
import simmerpoint.study.trace.TraceOptions;

/**
 * Watts of each panel, and how it must be turned: so that the middle of its light crosses the plane of underside or disc where the
 * middle of the light of all panels does. How the dish is aimed and where the pan stands are left as they are. What that brings is
 * traced with the same rays.
 */
public final class PanelsStudy {
    /** Rays for the middle of all light. */
    private static final int ROUGH_BITS = 8;

    /** Fewest rays of a panel, on the average. */
    private static final long RAYS_PER_PANEL = 256;

    /** Above that the options count alone. */
    private static final long MOST_RAYS = 1L << 22;

    private final Scenario scenario;
    private final TraceOptions options;
    private final ReplicateCaster casting;

    private PanelsStudy(Scenario scenario, TraceOptions options) {
        this.scenario = scenario;
        casting = new ReplicateCaster(scenario, options);
        long wanted = Math.min(MOST_RAYS, RAYS_PER_PANEL * casting.surface().panels());
        this.options = options.withRays(Math.max(options.rays(), wanted)).withPrecision(0);
    }

    /**
     * Traces {@code scenario} as it is and with its panels turned.
     *
     * @throws simmerpoint.study.trace.ImpossibleSetupException if the things named cannot stand as asked
     * @throws java.util.concurrent.CancellationException if {@code progress} says stop
     */
    public static PanelsResult run(Scenario scenario, TraceOptions options, Progress progress) {
        return new PanelsStudy(scenario, options).run(progress);
    }

    private PanelsResult run(Progress progress) {
        Vec middle = aims(ROUGH_BITS, Vec.ZERO, Progress.NONE).landing();
        int bits = ReplicateCaster.bitsFor(options.rays());
        PanelAims aims = aims(bits, middle, new PartialProgress(progress, 0, 0.2));
        PanelWatts now = PanelStudy.run(scenario, options, new PartialProgress(progress, 0.2, 0.6));
        double[] turns = new double[3 * now.panels()];
        Rotation toDish = casting.setup().dishInTarget().rotation().inverse();
        for (int k = 0; k < now.panels(); k++) {
            if (aims.isLit(k)) {
                put(turns, 3 * k, toDish.apply(aims.normal(k).cross(aims.change(k))));
            }
        }
        PanelWatts turned = PanelStudy.run(
                scenario, scenario.built().turned(turns), options, new PartialProgress(progress, 0.6, 1));
        return new PanelsResult(
                scenario,
                now,
                figures(aims, now, turned),
                OnePanelLight.brightest(scenario, now.panels(), options),
                options.seed(),
                (long) ReplicateCaster.REPLICATES << bits);
    }

    private PanelAims aims(int bits, Vec aimedAt, Progress progress) {
        int panels = casting.surface().panels();
        PanelAims[] sums = IntStream.range(0, ReplicateCaster.REPLICATES)
                .mapToObj(r -> new PanelAims(panels, aimedAt))
                .toArray(PanelAims[]::new);
        casting.castAll(bits, progress, (r, light) -> sums[r].add(light));
        PanelAims all = new PanelAims(panels, aimedAt);
        for (PanelAims one : sums) {
            all.add(one);
        }
        return all;
    }

    private static void put(double[] turns, int at, Vec turn) {
        turns[at] = turn.x();
        turns[at + 1] = turn.y();
        turns[at + 2] = turn.z();
    }

    private List<PanelFigures> figures(PanelAims aims, PanelWatts now, PanelWatts turned) {
        Setup setup = casting.setup();
        Rotation toDish = setup.dishInTarget().rotation().inverse();
        List<PanelFigures> all = new ArrayList<>();
        for (PanelOutline outline : scenario.dish().outlines()) {
            int k = outline.panel();
            if (k < now.panels() && aims.isLit(k)) {
                Vec middle = setup.dishInTarget().fromParent(aims.point(k));
                PanelTurn turn =
                        PanelTurn.of(middle, toDish.apply(aims.normal(k)), toDish.apply(aims.change(k)), outline);
                all.add(new PanelFigures(
                        k + 1,
                        middle,
                        now.incident(k),
                        now.reflected(k),
                        now.caught(k),
                        now.share(k),
                        aims.landing(k),
                        turn,
                        turned.caught(k)));
            }
        }
        return all;
    }
}
