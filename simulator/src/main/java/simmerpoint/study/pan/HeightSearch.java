package simmerpoint.study.pan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import simmerpoint.pan.Pan;
import simmerpoint.sampling.Estimate;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.paired.PairedStudy;
import simmerpoint.study.paired.PairedWatts;
import simmerpoint.study.trace.BetterHeight;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.ReplicateCaster;
import simmerpoint.study.trace.TraceOptions;

/**
 * Whether a pan would get clearly more somewhat lower or higher, from few rays that all heights share. The middle of a level pan's
 * underside is often best below the focus, where the wall takes what passes beside.
 */
public final class HeightSearch {
    /** So much more is worth telling who did not ask for it, as a share (this project's choice). */
    private static final double WORTH = 0.05;

    private static final double ERRORS = 3;
    private static final long FEW_RAYS = 1L << 12;
    private static final double STEP_BY_FOCAL_LENGTH = 1.0 / 40;
    private static final double STEP_BY_WALL = 1.0 / 8;
    private static final double ROUND = 0.005;
    private static final int LOWEST = -6;
    private static final int HIGHEST = 2;

    private HeightSearch() {}

    /**
     * The height at which it gets most, if that is clearly more than where it stands and within reach; empty for a bare disc.
     *
     * @throws java.util.concurrent.CancellationException if {@code progress} says stop
     */
    public static Optional<BetterHeight> of(Scenario scenario, TraceOptions options, Progress progress) {
        if (scenario.cooking().isEmpty()) {
            return Optional.empty();
        }
        double step = ROUND * Math.max(1, Math.round(step(scenario) / ROUND));
        TraceOptions few = options.withPrecision(0).withRays(Math.min(options.rays(), FEW_RAYS));
        List<PairedWatts> traced = PairedStudy.watts(heights(scenario, step), few, progress);
        PairedWatts here = traced.get(0);
        return traced.stream()
                .max(Comparator.comparingDouble(each -> each.useful().value()))
                .filter(best -> isWorthTelling(best, here))
                .map(best -> new BetterHeight(
                        raised(best.scenario()) - raised(scenario),
                        best.usefulBeyond(here).value() / here.useful().value()));
    }

    /** The spot's size goes with the focal length; how far down the wall takes what passes beside, with the pan's height. */
    private static double step(Scenario scenario) {
        double wall = scenario.target() instanceof Pan pan ? STEP_BY_WALL * pan.heightMetres() : 0;
        return Math.max(STEP_BY_FOCAL_LENGTH * scenario.dish().focalLengthMetres(), wall);
    }

    /** Where it stands, then the others. */
    private static List<Scenario> heights(Scenario scenario, double step) {
        List<Scenario> heights = new ArrayList<>(List.of(scenario));
        boolean inReach = scenario.heights().allows(scenario.panHeightMetres());
        for (int k = LOWEST; k <= HIGHEST; k++) {
            Scenario there = PanStudy.moved(scenario, MoveStudy.Move.RAISE, k * step);
            boolean allowed = !inReach || there.heights().allows(there.panHeightMetres());
            if (k != 0 && allowed && ReplicateCaster.hasRoom(there)) {
                heights.add(there);
            }
        }
        return heights;
    }

    private static boolean isWorthTelling(PairedWatts best, PairedWatts here) {
        Estimate gain = best.usefulBeyond(here);
        return here.useful().value() > 0
                && gain.value() > WORTH * here.useful().value()
                && gain.value() > ERRORS * gain.standardError();
    }

    private static double raised(Scenario scenario) {
        return MoveStudy.Move.RAISE.of(scenario.stand());
    }
}
