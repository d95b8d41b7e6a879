package simmerpoint.study.build;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import simmerpoint.sampling.Estimate;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.paired.PairedStudy;
import simmerpoint.study.paired.PairedWatts;
import simmerpoint.study.trace.PartialProgress;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;

/**
 * How large errors may be until each alone costs a share of the watts. Small errors cost watts by the square of their size, which is used
 * to get from an error that was traced to the one that is asked for; what comes out is traced and corrected again, between a smaller and a
 * larger one by a straight line: some errors help at first.
 *
 * @param loss share of the watts
 * @param first size that is traced first, m
 * @param least smallest that is told, m
 * @param most largest that is looked at, m
 * @param rounds how often every error is traced
 */
record ErrorSizeSearch(double loss, double first, double least, double most, int rounds) {
    /** A cost below so many of its standard errors is not seen. */
    private static final double SEEN = 2;

    /**
     * Sizes of errors, m, in their order; {@link #most} where more would do. None for a cooker that brings nothing to lose.
     *
     * @param scenario without them
     * @param errors each makes the scenario with an error of a size, m
     */
    List<Double> find(
            Scenario scenario, List<DoubleFunction<Scenario>> errors, TraceOptions options, Progress progress) {
        List<Bracket> brackets = errors.stream().map(error -> new Bracket()).toList();
        for (int round = 0; round < rounds; round++) {
            Progress part = new PartialProgress(progress, (double) round / rounds, (round + 1.0) / rounds);
            List<Scenario> all = new ArrayList<>();
            all.add(scenario);
            for (int k = 0; k < errors.size(); k++) {
                all.add(errors.get(k).apply(brackets.get(k).size));
            }
            List<PairedWatts> watts = PairedStudy.watts(all, options, part);
            Estimate useful = watts.get(0).useful();
            if (!(useful.value() > SEEN * useful.standardError())) {
                return List.of();
            }
            double wanted = loss * useful.value();
            for (int k = 0; k < errors.size(); k++) {
                brackets.get(k).learn(watts.get(k + 1).usefulBeyond(watts.get(0)), wanted);
            }
        }
        return brackets.stream().map(bracket -> bracket.size).toList();
    }

    /** Sizes between which an error's lies, with what each costs beyond what is wanted, W. */
    private final class Bracket {
        private double low;
        private double high = most;
        private double tooLittle;
        private double tooMuch;
        private boolean bounded;
        private double size = first;

        /** Takes what the error of this size brings, W, and chooses the next. */
        void learn(Estimate gain, double wanted) {
            double cost = -gain.value();
            boolean seen = cost > SEEN * gain.standardError();
            double guess = seen ? size * Math.sqrt(wanted / cost) : most;
            if (cost >= wanted) {
                // An end that stays where it is counts less each time, or the other creeps towards it (Illinois' rule).
                tooLittle *= bounded && size < high ? 0.5 : 1;
                high = size;
                tooMuch = cost - wanted;
                bounded = true;
            } else {
                tooMuch *= low > 0 ? 0.5 : 1;
                low = size;
                tooLittle = cost - wanted;
            }
            size = Math.max(least, Math.min(most, bounded && low > 0 ? between() : guess));
        }

        private double between() {
            return low - tooLittle * (high - low) / (tooMuch - tooLittle);
        }
    }
}
