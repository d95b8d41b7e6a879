package simmerpoint.study.build;

import java.util.List;
import java.util.Optional;
import simmerpoint.dish.Curve;
import simmerpoint.dish.cut.MeasuredRibs;
import simmerpoint.sampling.Estimate;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.paired.PairedStudy;
import simmerpoint.study.paired.PairedWatts;
import simmerpoint.study.trace.ImpossibleSetupException;
import simmerpoint.study.trace.PartialProgress;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;

/**
 * What a cooker does that is built as the scenario says.
 *
 * @param watts cooking power; of a bare disc, caught, W
 * @param ribs what its ribs cost, if they were measured
 * @param tolerances how far the ribs of the plan may be off at the distances asked for; none for a dish without ribs
 * @param shape how far the whole dish may be off, if that was looked for
 * @param parabolaGain what ribs cut to the parabola would bring more, if they are cut to another curve, W
 */
public record BuildTrace(
        Estimate watts,
        Optional<RibsAsBuilt> ribs,
        List<DepthTolerance> tolerances,
        List<ShapeTolerance> shape,
        Optional<Estimate> parabolaGain) {
    private static final double DEPTHS = 0.6;

    /** Rays where none are asked for: prices and tolerances need no more. */
    public static final long USUAL_RAYS = 1L << 14;

    /** Keeps copies of the lists. */
    public BuildTrace {
        tolerances = List.copyOf(tolerances);
        shape = List.copyOf(shape);
    }

    /**
     * Traces it.
     *
     * @param radii distances from the axis at which tolerances are asked for, m
     * @throws ImpossibleSetupException if the things named cannot stand as asked
     * @throws java.util.concurrent.CancellationException if {@code progress} says stop
     */
    public static BuildTrace run(Scenario scenario, double[] radii, TraceOptions options, Progress progress) {
        BuildTrace depths = run(scenario, Optional.empty(), radii, options, new PartialProgress(progress, 0, DEPTHS));
        return new BuildTrace(
                depths.watts,
                depths.ribs,
                depths.tolerances,
                ShapeTolerances.of(scenario, options, new PartialProgress(progress, DEPTHS, 1)),
                depths.parabolaGain);
    }

    /**
     * The same where its watts are known already, and nothing is asked about the whole dish.
     *
     * @throws ImpossibleSetupException if the things named cannot stand as asked
     * @throws java.util.concurrent.CancellationException if {@code progress} says stop
     */
    public static BuildTrace run(
            Scenario scenario, Optional<Estimate> known, double[] radii, TraceOptions options, Progress progress) {
        TraceOptions equal = options.withPrecision(0);
        Scenario planned = scenario.withDish(MeasuredRibs.mended(scenario.dish()));
        Optional<RibsAsBuilt> ribs = scenario.dish().cut() instanceof MeasuredRibs measured
                ? Optional.of(RibsAsBuilt.of(scenario, measured, equal, progress))
                : Optional.empty();
        Estimate watts = ribs.map(RibsAsBuilt::built)
                .or(() -> known)
                .orElseGet(() -> PairedStudy.watts(List.of(scenario), equal, progress)
                        .get(0)
                        .useful());
        return new BuildTrace(
                watts,
                ribs,
                DepthTolerances.of(planned, radii, equal, progress),
                List.of(),
                parabolaGain(scenario, equal, progress));
    }

    private static Optional<Estimate> parabolaGain(Scenario scenario, TraceOptions options, Progress progress) {
        if (scenario.dish().cut().curve() == Curve.PARABOLA) {
            return Optional.empty();
        }
        List<PairedWatts> watts = PairedStudy.watts(
                List.of(scenario, scenario.withDish(scenario.dish().onParabola())), options, progress);
        return Optional.of(watts.get(1).usefulBeyond(watts.get(0)));
    }
}
