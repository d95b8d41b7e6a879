package simmerpoint.trial.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import simmerpoint.trial.fit.FlawEffects.Effect;

/**
 * Which flaw is how likely behind the logs, by Bayes' rule over all of them in all sizes: no flaw beyond the usual doubts, one, or two that
 * add. The usual doubts about everything, the flaw's own cause among them, stay in the covariance.
 */
final class FlawPosterior {
    /** Before a trial: no flaw, one, two (our estimates). */
    private static final double NONE = 0.5;

    private static final double ONE = 0.4;
    private static final double TWO = 0.1;

    private final LinearCurves law;
    private final GaussianUpdate update;
    private final List<Effect> effects;
    private final double[] off;
    private final List<Hypothesis> all = new ArrayList<>();

    /**
     * What may be behind the logs.
     *
     * @param first a flaw; null for none
     * @param second another; null for none
     * @param logWeight before all are scaled to add up to 1
     */
    private record Hypothesis(Effect first, Effect second, double logWeight) {
        boolean hasOnly(TrialFlaw flaw) {
            return first != null && second == null && first.flaw() == flaw;
        }

        boolean isPair() {
            return second != null;
        }
    }

    FlawPosterior(LinearCurves law, GaussianUpdate update, List<Effect> effects, double[] measured) {
        this.law = law;
        this.update = update;
        this.effects = effects;
        off = new double[law.points()];
        for (int k = 0; k < off.length; k++) {
            off[k] = measured[k] - law.mean()[k];
        }
        weigh();
    }

    private void weigh() {
        double[] white = update.whitened(off);
        List<double[]> whites =
                effects.stream().map(e -> update.whitened(points(e.more()))).toList();
        long flaws = effects.stream().map(Effect::flaw).distinct().count();
        double pairs = flaws * (flaws - 1) / 2.0;
        all.add(new Hypothesis(null, null, Math.log(NONE) - squares(white, null, null) / 2));
        for (int i = 0; i < effects.size(); i++) {
            Effect one = effects.get(i);
            double prior = Math.log(ONE / flaws * one.weight());
            all.add(new Hypothesis(one, null, prior - squares(white, whites.get(i), null) / 2));
            for (int j = i + 1; j < effects.size(); j++) {
                Effect two = effects.get(j);
                if (two.flaw() != one.flaw()) {
                    double both = Math.log(TWO / pairs * one.weight() * two.weight());
                    all.add(new Hypothesis(one, two, both - squares(white, whites.get(i), whites.get(j)) / 2));
                }
            }
        }
        double most = all.stream().mapToDouble(Hypothesis::logWeight).max().orElse(0);
        double sum =
                all.stream().mapToDouble(h -> Math.exp(h.logWeight() - most)).sum();
        all.replaceAll(h -> new Hypothesis(h.first(), h.second(), h.logWeight() - most - Math.log(sum)));
    }

    private static double squares(double[] white, double[] one, double[] two) {
        double sum = 0;
        for (int k = 0; k < white.length; k++) {
            double left = white[k] - (one == null ? 0 : one[k]) - (two == null ? 0 : two[k]);
            sum += left * left;
        }
        return sum;
    }

    private static double[] points(double[] more) {
        return java.util.Arrays.copyOf(more, more.length - 1);
    }

    private static double weight(Hypothesis h) {
        return Math.exp(h.logWeight());
    }

    /** Probability that nothing is wrong beyond the usual doubts. */
    double none() {
        return weight(all.get(0));
    }

    /** Every flaw alone, the likeliest first. */
    List<FlawLikelihood> flaws(List<FittedLog> logs) {
        List<FlawLikelihood> found = new ArrayList<>();
        for (TrialFlaw flaw : effects.stream().map(Effect::flaw).distinct().toList()) {
            List<Hypothesis> own = all.stream().filter(h -> h.hasOnly(flaw)).toList();
            double sum = own.stream().mapToDouble(FlawPosterior::weight).sum();
            Effect best = own.stream()
                    .max(Comparator.comparingDouble(Hypothesis::logWeight))
                    .orElseThrow()
                    .first();
            List<Hypothesis> ways = own.stream()
                    .filter(h -> h.first().step().way() == best.step().way())
                    .toList();
            double size = ways.stream()
                    .mapToDouble(h -> relative(h, ways) * h.first().step().size())
                    .sum();
            found.add(new FlawLikelihood(flaw, sum, best.step().way(), size, curves(best.more(), logs), best.step()));
        }
        found.sort(Comparator.comparingDouble((FlawLikelihood f) -> -f.probability()));
        return found;
    }

    private static double relative(Hypothesis h, List<Hypothesis> among) {
        double most = among.stream().mapToDouble(Hypothesis::logWeight).max().orElse(0);
        double sum =
                among.stream().mapToDouble(a -> Math.exp(a.logWeight() - most)).sum();
        return Math.exp(h.logWeight() - most) / sum;
    }

    private static List<double[]> curves(double[] more, List<FittedLog> logs) {
        List<double[]> curves = new ArrayList<>();
        int at = 0;
        for (FittedLog log : logs) {
            int n = log.curve().points();
            curves.add(java.util.Arrays.copyOfRange(more, at, at + n));
            at += n;
        }
        return curves;
    }

    /** Pairs, the likeliest first. */
    List<FlawPair> pairs() {
        Map<TrialFlaw, Map<TrialFlaw, Double>> sums = new EnumMap<>(TrialFlaw.class);
        all.stream().filter(Hypothesis::isPair).forEach(h -> {
            boolean ordered = h.first().flaw().compareTo(h.second().flaw()) < 0;
            TrialFlaw a = ordered ? h.first().flaw() : h.second().flaw();
            TrialFlaw b = ordered ? h.second().flaw() : h.first().flaw();
            sums.computeIfAbsent(a, x -> new EnumMap<>(TrialFlaw.class)).merge(b, weight(h), Double::sum);
        });
        List<FlawPair> pairs = new ArrayList<>();
        sums.forEach((a, others) -> others.forEach((b, p) -> pairs.add(new FlawPair(a, b, p))));
        pairs.sort(Comparator.comparingDouble((FlawPair p) -> -p.probability()));
        return pairs;
    }

    /** Mean change by flaws of all points and, last, of the power. */
    private double[] meanChange() {
        double[] mean = new double[law.points() + 1];
        for (Hypothesis h : all) {
            double w = weight(h);
            for (int k = 0; k < mean.length && w > 1e-9; k++) {
                mean[k] += w * change(h, k);
            }
        }
        return mean;
    }

    private static double change(Hypothesis h, int k) {
        return (h.first() == null ? 0 : h.first().more()[k])
                + (h.second() == null ? 0 : h.second().more()[k]);
    }

    /** What is left of the deviations behind the mean change by flaws. */
    private double[] left() {
        double[] mean = meanChange();
        double[] left = off.clone();
        for (int k = 0; k < left.length; k++) {
            left[k] -= mean[k];
        }
        return left;
    }

    /** How much more the logs scatter than the noise says, in variances. */
    double scatter() {
        double expected = update.expectedMisfit();
        return expected > 0 ? update.misfit(left()) / expected : 1;
    }

    /** The curves of all logs by all that is known now, °C. */
    double[] curves() {
        double[] mean = meanChange();
        double[] weights = update.weighted(left());
        double[] more = covarianceOfPoints().operate(weights);
        double[] fitted = new double[law.points()];
        for (int k = 0; k < fitted.length; k++) {
            fitted[k] = law.mean()[k] + mean[k] + more[k];
        }
        return fitted;
    }

    private RealMatrix covarianceOfPoints() {
        int n = law.points();
        return law.covariance().getSubMatrix(0, n - 1, 0, n - 1);
    }

    /** Cooking power in the light of the first log by all that is known now: mean and standard deviation, W. */
    double[] power() {
        int n = law.points();
        RealMatrix covariance = law.covariance();
        double[] with = java.util.Arrays.copyOf(covariance.getRow(n), n);
        double[] gain = update.weighted(with);
        double within = covariance.getEntry(n, n) - new ArrayRealVector(gain).dotProduct(new ArrayRealVector(with));
        double base = law.mean()[n] + dot(gain, off);
        double sum = 0;
        double squares = 0;
        for (Hypothesis h : all) {
            double w = weight(h);
            if (w > 1e-9) {
                double more = change(h, n);
                for (int k = 0; k < n; k++) {
                    more -= gain[k] * change(h, k);
                }
                sum += w * more;
                squares += w * more * more;
            }
        }
        return new double[] {base + sum, Math.sqrt(Math.max(0, within) + Math.max(0, squares - sum * sum))};
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int k = 0; k < a.length; k++) {
            sum += a[k] * b[k];
        }
        return sum;
    }

    /** What is known now of every cause: mean and standard deviation in those of its doubt. */
    double[][] causes() {
        int n = law.points();
        RealMatrix slopes = law.slopes().getSubMatrix(0, n - 1, 0, law.causes().size() - 1);
        double[] mean = slopes.transpose().operate(update.weighted(left()));
        RealMatrix narrowed = slopes.transpose().multiply(update.weighted(slopes));
        double[][] known = new double[mean.length][2];
        for (int c = 0; c < mean.length; c++) {
            known[c][0] = mean[c];
            known[c][1] = Math.sqrt(Math.max(0, 1 - narrowed.getEntry(c, c)));
        }
        return known;
    }
}
