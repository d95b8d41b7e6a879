package simmerpoint.study.build;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.stream.IntStream;
import simmerpoint.sampling.Estimate;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.paired.PairedStudy;
import simmerpoint.study.paired.PairedWatts;
import simmerpoint.study.trace.PartialProgress;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;

/**
 * How large errors may be until each alone costs a share of the watts. Small errors cost watts by the square of their size, which is used
 * to get from an error that was traced to the one that is asked for; what comes out is traced and corrected again.
 *
 * @param loss share of the watts
 * @param first size that is traced first, m
 * @param least smallest that is told, m
 * @param most largest that is looked at, m
 * @param rounds how often every error is traced
 */
record ToleranceSearch(double loss, double first, double least, double most, int rounds) {
    /** A cost below so many of its standard errors is not seen. */
    private static final double SEEN = 2;

    /**
     * Sizes of errors, m, in their order; {@link #most} where more would do. None for a cooker that brings nothing to lose.
     *
     * @param scenario without them
     * @param errors each makes the scenario with an error of a size, m
     */
    double[] find(Scenario scenario, List<DoubleFunction<Scenario>> errors, TraceOptions options, Progress progress) {
        double[] size = new double[errors.size()];
        Arrays.fill(size, first);
        for (int round = 0; round < rounds; round++) {
            Progress part = new PartialProgress(progress, (double) round / rounds, (round + 1.0) / rounds);
            double[] now = size.clone();
            List<Scenario> all = new ArrayList<>();
            all.add(scenario);
            IntStream.range(0, now.length).forEach(k -> all.add(errors.get(k).apply(now[k])));
            List<PairedWatts> watts = PairedStudy.watts(all, options, part);
            if (!(watts.get(0).useful().value() > 0)) {
                return new double[0];
            }
            for (int k = 0; k < size.length; k++) {
                size[k] = next(now[k], watts.get(0), watts.get(k + 1));
            }
        }
        return size;
    }

    private double next(double size, PairedWatts without, PairedWatts with) {
        Estimate gain = with.usefulBeyond(without);
        double wanted = loss * without.useful().value();
        double next = -gain.value() > SEEN * gain.standardError() ? size * Math.sqrt(wanted / -gain.value()) : most;
        return Math.max(least, Math.min(most, next));
    }
}
