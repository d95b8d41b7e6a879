package simmerpoint.study.build;

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
 * larger one by a straight line: some errors help at first. An error is done when its size hardly changes any more.
 *
 * @param loss share of the watts
 * @param first size that is traced first, m
 * @param least smallest that is told, m
 * @param most largest that is looked at, m
 * @param rounds how often every error is traced at most
 */
record ErrorSizeSearch(double loss, double first, double least, double most, int rounds) {
    /** A cost below so many of its standard errors is not seen. */
    private static final double SEEN = 2;

    /** Sizes are told with two digits. */
    private static final double CLOSE_ENOUGH = 0.003;

    /**
     * Sizes of errors, m, in their order; {@link #most} where more would do. None for a cooker that brings nothing to lose.
     *
     * @param scenario without them
     * @param errors each makes the scenario with an error of a size, m
     */
    List<Double> find(
            Scenario scenario, List<DoubleFunction<Scenario>> errors, TraceOptions options, Progress progress) {
        PairedWatts without =
                PairedStudy.watts(List.of(scenario), options, Progress.NONE).get(0);
        Estimate useful = without.useful();
        if (!(useful.value() > SEEN * useful.standardError())) {
            return List.of();
        }
        List<Bracket> brackets = errors.stream().map(Bracket::new).toList();
        for (int round = 0; round < rounds; round++) {
            Progress part = new PartialProgress(progress, (double) round / rounds, (round + 1.0) / rounds);
            List<Bracket> open =
                    brackets.stream().filter(bracket -> bracket.open).toList();
            List<PairedWatts> watts =
                    PairedStudy.watts(open.stream().map(Bracket::scenario).toList(), options, part);
            for (int k = 0; k < open.size(); k++) {
                open.get(k).learn(watts.get(k).usefulBeyond(without), loss * useful.value());
            }
        }
        return brackets.stream().map(bracket -> bracket.size).toList();
    }

    /** Sizes between which an error's lies, with what each costs beyond what is wanted, W. */
    private final class Bracket {
        private final DoubleFunction<Scenario> error;
        private double low;
        private double high = most;
        private double tooLittle;
        private double tooMuch;
        private boolean bounded;
        private double size = first;
        private boolean open = true;

        Bracket(DoubleFunction<Scenario> error) {
            this.error = error;
        }

        /** With an error of the size to look at. */
        Scenario scenario() {
            return error.apply(size);
        }

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
            double next = Math.max(least, Math.min(most, bounded && low > 0 ? between() : guess));
            open = Math.abs(next - size) > CLOSE_ENOUGH * size;
            size = next;
        }

        private double between() {
            return low - tooLittle * (high - low) / (tooMuch - tooLittle);
        }
    }
}
