package simmerpoint.trial.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.RealMatrix;
import simmerpoint.heat.AbsorbedLight;
import simmerpoint.study.likely.LikelyStudy;
import simmerpoint.study.likely.LitPan;
import simmerpoint.study.likely.LitPans;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.uncertainty.Quantiles;

/** Finds out what logs say about a cooker. */
public final class FlawStudy {
    /** More scatter than instruments explain is met by more noise, so often. */
    private static final int ROUNDS = 3;

    private final List<FittedLog> logs;
    private final TraceOptions options;
    private double scatter = 1;

    private FlawStudy(List<FittedLog> logs, TraceOptions options) {
        this.logs = logs;
        this.options = options;
    }

    /**
     * Fits the model to logs.
     *
     * @param logs at least one; the first is the one whose cooking power is told
     * @throws simmerpoint.study.trace.ImpossibleSetupException if the cooker cannot stand as asked
     */
    public static TrialFit run(List<FittedLog> logs, TraceOptions options, Progress progress) {
        return new FlawStudy(logs, options).run(progress);
    }

    private TrialFit run(Progress progress) {
        List<DrawnCurves> drawn = logs.stream()
                .map(log -> DrawnCurves.of(log, LikelyStudy.FOR_RANGE, options, progress))
                .toList();
        LinearCurves law = LinearCurves.of(drawn);
        FlawPosterior posterior = posterior(law, FlawEffects.of(logs, options));
        return result(drawn, law, posterior);
    }

    private FlawPosterior posterior(LinearCurves law, List<FlawEffects.Effect> effects) {
        int n = law.points();
        RealMatrix prior = law.covariance().getSubMatrix(0, n - 1, 0, n - 1);
        GaussianUpdate update = new GaussianUpdate(prior, noise());
        double[] measured = logs.stream()
                .flatMapToDouble(log -> Arrays.stream(log.curve().celsius()))
                .toArray();
        FlawPosterior posterior = new FlawPosterior(law, update, effects, measured);
        for (int round = 0; round < ROUNDS && posterior.scatter() > 1; round++) {
            scatter *= posterior.scatter();
            update = update.noisier(posterior.scatter());
            posterior = new FlawPosterior(law, update, effects, measured);
        }
        return posterior;
    }

    private RealMatrix noise() {
        int n = logs.stream().mapToInt(log -> log.curve().points()).sum();
        RealMatrix noise = new Array2DRowRealMatrix(n, n);
        int at = 0;
        for (FittedLog log : logs) {
            RealMatrix own =
                    TrialNoise.covariance(log.curve(), rate(log), log.log().hasLight());
            noise.setSubMatrix(own.getData(), at, at);
            at += own.getRowDimension();
        }
        return noise;
    }

    /** How fast the pan warms in the light of a log, or cools without, where it does so fastest, K/s. */
    private double rate(FittedLog log) {
        LitPan pan = LitPans.given(log.scenario().scenario(), options).orElseThrow();
        double capacity = pan.kitchen()
                .cooking()
                .likelyPot()
                .heatCapacity(pan.kitchen().contents().waterKilograms());
        if (!log.log().isCooling()) {
            return pan.absorbed().total() / capacity;
        }
        double start = pan.kitchen().contents().startCelsius();
        return pan.kitchen()
                        .cooking()
                        .likelyPot()
                        .losses()
                        .at(start, AbsorbedLight.NOTHING)
                        .total()
                / capacity;
    }

    private TrialFit result(List<DrawnCurves> drawn, LinearCurves law, FlawPosterior posterior) {
        List<FlawLikelihood> flaws = posterior.flaws(logs);
        double[] power = posterior.power();
        TrialFit fit = new TrialFit(
                curves(drawn, posterior.curves()),
                new Quantiles(law.watts()).likelyRange(),
                power[0],
                power[1],
                posterior.none(),
                flaws,
                posterior.pairs(),
                Math.sqrt(scatter),
                causes(law, posterior.causes()),
                Optional.empty());
        return fit.isFlawed() && !fit.rivals().isEmpty()
                ? fit.with(NextMeasurementSearch.of(
                        logs.get(0), flaws.get(0), fit.rivals().get(0), options))
                : fit;
    }

    private List<TrialFit.KnownCause> causes(LinearCurves law, double[][] known) {
        List<TrialFit.KnownCause> causes = new ArrayList<>();
        for (int c = 0; c < known.length; c++) {
            if (law.causes().get(c).log() < 0) {
                causes.add(new TrialFit.KnownCause(law.causes().get(c).doubt(), known[c][0], known[c][1]));
            }
        }
        return causes;
    }

    private List<FittedCurve> curves(List<DrawnCurves> drawn, double[] fitted) {
        List<FittedCurve> curves = new ArrayList<>();
        int at = 0;
        for (int k = 0; k < logs.size(); k++) {
            LogCurve curve = logs.get(k).curve();
            int n = curve.points();
            List<Quantiles> likely = quantiles(drawn.get(k), n);
            curves.add(new FittedCurve(
                    logs.get(k).log(),
                    curve.seconds(),
                    curve.celsius(),
                    likely.stream().mapToDouble(q -> q.likelyRange().low()).toArray(),
                    likely.stream().mapToDouble(q -> q.likelyRange().likely()).toArray(),
                    likely.stream().mapToDouble(q -> q.likelyRange().high()).toArray(),
                    Arrays.copyOfRange(fitted, at, at + n)));
            at += n;
        }
        return curves;
    }

    private static List<Quantiles> quantiles(DrawnCurves drawn, int points) {
        return IntStream.range(0, points)
                .mapToObj(p -> new Quantiles(drawn.outcomes().stream()
                        .flatMap(Optional::stream)
                        .mapToDouble(o -> o.celsius()[p])
                        .toArray()))
                .toList();
    }
}
