package simmerpoint.study.likely;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.scenario.doubts.ScenarioDoubts;
import simmerpoint.study.trace.ImpossibleSetupException;
import simmerpoint.study.trace.LikelyResult;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.uncertainty.Quantiles;

/**
 * What is likely at many moments, from the draws of {@link LikelyStudy}: each cooker is traced under a few suns only. There its
 * pan takes up so much more or less, face by face and per watt of beam, than that of the cooker as given; between two of these suns the
 * difference runs straight with the sun's elevation. Under the suns that were traced it is what {@link LikelyStudy} finds.
 */
public final class LikelyMoments {
    private final List<TracedMoment> suns;
    private final CookerDraws draws;
    private final List<Optional<DrawnPan>> pans;

    private LikelyMoments(List<TracedMoment> suns, CookerDraws draws, List<Optional<DrawnPan>> pans) {
        this.suns = suns;
        this.draws = draws;
        this.pans = pans;
    }

    /**
     * Traces the cookers.
     *
     * @param read with a pan and a place
     * @param traced the cooker as given under each sun to trace, at least one
     * @param bits 2^bits cookers
     * @param options for rays, seed and threads
     * @param progress of the traces
     */
    public static LikelyMoments of(
            CheckedScenario read, List<TracedMoment> traced, int bits, TraceOptions options, Progress progress) {
        List<TracedMoment> suns = traced.stream()
                .sorted(Comparator.comparingDouble(TracedMoment::elevation))
                .toList();
        CookerDraws draws = CookerDraws.of(ScenarioDoubts.underItsSky(read), bits, options);
        return new LikelyMoments(suns, draws, draws.each(cooker -> DrawnPan.of(cooker, suns, options), progress));
    }

    /**
     * What is likely at a moment.
     *
     * @throws ImpossibleSetupException if none of the cookers can stand as asked
     */
    public LikelyMoment at(TracedMoment now) {
        int below = 0;
        while (below < suns.size() - 2 && suns.get(below + 1).elevation() <= now.elevation()) {
            below++;
        }
        double share = share(now.elevation(), below);
        int first = below;
        double[] power = each(pan -> pan.powerAt(now, first, share));
        if (power.length == 0) {
            throw DrawnOutcomes.noneStands();
        }
        return new LikelyMoment(
                new Quantiles(power).likelyRange(),
                new Quantiles(each(pan -> pan.simmerSpareAt(now, first, share))).likelyRange(),
                () -> result(now, first, share));
    }

    private double[] each(ToDoubleFunction<DrawnPan> figure) {
        return pans.parallelStream()
                .flatMap(Optional::stream)
                .mapToDouble(figure)
                .toArray();
    }

    private LikelyResult result(TracedMoment now, int below, double share) {
        List<Optional<DrawnOutcome>> outcomes = pans.parallelStream()
                .map(pan -> pan.map(p -> p.at(now, below, share)))
                .toList();
        return DrawnOutcomes.of(outcomes.stream().flatMap(Optional::stream).toList())
                .result(true, DoubtShares.of(draws, DrawnOutcomes.powers(outcomes)));
    }

    private double share(double elevation, int below) {
        double low = suns.get(below).elevation();
        double high = suns.get(Math.min(below + 1, suns.size() - 1)).elevation();
        return high > low ? Math.max(0, Math.min(1, (elevation - low) / (high - low))) : 0;
    }
}
