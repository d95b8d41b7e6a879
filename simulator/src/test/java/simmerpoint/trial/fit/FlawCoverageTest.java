package simmerpoint.trial.fit;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.apache.commons.math3.distribution.BinomialDistribution;
import org.apache.commons.math3.linear.RealMatrix;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.trial.log.Reading;
import simmerpoint.trial.log.TrialLog;

/** Cookers drawn with another seed are the truth: the intervals told of their watts hold them as often as they say. */
class FlawCoverageTest {
    private static final double MINUTES = 40;
    private static final TraceOptions OPTIONS = TraceOptions.defaults();

    private final FittedLog log;
    private final LinearCurves law;
    private final List<FlawEffects.Effect> effects;
    private final RealMatrix noise;
    private final double rate;

    FlawCoverageTest() throws Exception {
        CheckedScenario read = ScenarioReader.read(Path.of("../scenarios/garden-strips.yaml"));
        List<Reading> rows = new ArrayList<>();
        for (int k = 0; k <= MINUTES; k++) {
            rows.add(new Reading(k + 2, 60.0 * k, 20 + k, 22, Double.NaN, 820, 1));
        }
        log = new FittedLog(
                new TrialLog(Path.of("log.csv"), Map.of(), false, Optional.empty(), rows), read, 60 * MINUTES);
        law = LinearCurves.of(List.of(DrawnCurves.of(log, 7, OPTIONS, Progress.NONE)));
        effects = FlawEffects.of(List.of(log), OPTIONS);
        rate = 0.04;
        noise = TrialNoise.covariance(log.curve(), rate, true);
    }

    /** Thermometer and gusts as {@link TrialNoise} says, added up minute by minute. */
    private double[] measured(double[] truth, SplittableRandom chance) {
        LogCurve curve = log.curve();
        double[] read = truth.clone();
        double walk = 0;
        double before = 0;
        for (int k = 0; k < read.length; k++) {
            walk += 0.03 * rate * Math.sqrt(600 * (curve.seconds()[k] - before)) * gauss(chance);
            before = curve.seconds()[k];
            read[k] += walk + 0.25 / Math.sqrt(curve.readings()[k]) * gauss(chance);
        }
        return read;
    }

    private static double gauss(SplittableRandom chance) {
        return Math.sqrt(-2 * Math.log(1 - chance.nextDouble())) * Math.cos(2 * Math.PI * chance.nextDouble());
    }

    private int held(int bits, int seeds) {
        List<DrawnCurves.Outcome> truths =
                DrawnCurves.of(log, bits, OPTIONS.withSeed(77), Progress.NONE).outcomes().stream()
                        .flatMap(Optional::stream)
                        .limit(seeds)
                        .toList();
        assertTrue(truths.size() == seeds, "cookers");
        int n = law.points();
        GaussianUpdate update = new GaussianUpdate(law.covariance().getSubMatrix(0, n - 1, 0, n - 1), noise);
        int held = 0;
        for (int k = 0; k < seeds; k++) {
            DrawnCurves.Outcome truth = truths.get(k);
            double[] power =
                    new FlawPosterior(law, update, effects, measured(truth.celsius(), new SplittableRandom(k))).power();
            held += Math.abs(power[0] - truth.watts()) <= TrialFit.REACH * power[1] ? 1 : 0;
        }
        return held;
    }

    /** By the binomial law of 0.95; left by chance once in a thousand. */
    @Test
    void intervalsOfTheFitHoldTheTruth() {
        BinomialDistribution binomial = new BinomialDistribution(null, 60, 0.95);
        int held = held(6, 60);
        assertTrue(binomial.cumulativeProbability(held) > 1e-3, () -> "60 cookers, held " + held);
    }

    @Test
    @Tag("thorough")
    void intervalsOfTheFitHoldTheTruthOftenEnough() {
        int held = held(9, 500);
        assertTrue(held >= 460 && held <= 490, () -> "500 cookers, held " + held);
    }
}
