package simmerpoint.trial.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.distribution.NormalDistribution;
import simmerpoint.scenario.doubts.Doubt;
import simmerpoint.scenario.doubts.ScenarioDoubts;
import simmerpoint.study.likely.LitPan;
import simmerpoint.study.likely.LitPans;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.uncertainty.Draws;

/**
 * What the drawn cookers of one log's scenario do in its weather: the curve of each, and its cooking power. Their causes are counted in standard
 * deviations of a normal law of the same probability.
 *
 * @param doubts causes of the scenario
 * @param scores of each cooker, cause by cause
 * @param outcomes of each cooker; empty where its values do not go together
 */
record DrawnCurves(List<Doubt> doubts, double[][] scores, List<Optional<Outcome>> outcomes) {
    private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);

    /**
     * What one cooker does.
     *
     * @param celsius its curve
     * @param watts its cooking power in the mean light of the log
     */
    record Outcome(double[] celsius, double watts) {
        static Outcome of(LitPan pan, LogWeather weather, double[] seconds) {
            return new Outcome(
                    LogHeating.celsius(pan, weather, seconds),
                    pan.kitchen().cooking().cookingPowerWatts(pan.absorbed(), pan.losses()));
        }
    }

    static DrawnCurves of(FittedLog log, int bits, TraceOptions options, Progress progress) {
        ScenarioDoubts doubts = ScenarioDoubts.of(log.scenario());
        LogWeather weather = log.weather();
        double[] seconds = log.curve().seconds();
        List<Optional<Outcome>> outcomes =
                LitPans.drawn(doubts, bits, options, pan -> Outcome.of(pan, weather, seconds), progress);
        return new DrawnCurves(
                doubts.all(), scores(doubts.all().size(), bits, options.seed()), new ArrayList<>(outcomes));
    }

    private static double[][] scores(int causes, int bits, long seed) {
        Draws draws = Draws.of(causes, bits, seed);
        double[][] scores = new double[1 << bits][causes];
        for (int d = 0; d < scores.length; d++) {
            for (int c = 0; c < causes; c++) {
                scores[d][c] = NORMAL.inverseCumulativeProbability(draws.probability(c, d));
            }
        }
        return scores;
    }
}
