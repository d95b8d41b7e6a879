package simmerpoint.trial.spot;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import simmerpoint.sampling.Estimate;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.scenario.values.ScenarioValues;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceStudy;
import simmerpoint.target.FluxMap;

/**
 * Fits slope error and focal length to the widths of the spot on a card. Widths are traced on a grid of both, a bare card square to the axis
 * in place of the pan and the dish aimed dead on; between, their squares run straight with the square of the slope error and as a
 * parabola with the focal length, as blur and defocus add in squares. Both have the doubt of the scenario before, by a log-normal
 * and a normal law (Bayes' rule on a fine grid).
 */
public final class CardStudy {
    /** Slope errors that are traced, times the planned one. */
    private static final double[] ROUGH = {0.25, 1, 2, 4};

    /** Focal lengths that are traced, times the planned one. */
    private static final double[] LONG = {0.9, 0.95, 1, 1.05, 1.1};

    private static final double SMOOTHEST = 1e-3;

    /** Standard deviation of the logarithm of a slope error: one in ten is more than 1.6 times as much (as in the doubts). */
    private static final double ROUGH_DOUBT = 0.37;

    /** Of a focal length, relative (our estimate of hand-built ribs). */
    private static final double LONG_DOUBT = 0.03;

    private static final int FINE = 60;
    private static final double CARD = 0.5;

    private final CheckedScenario read;
    private final List<CardReading> readings;
    private final TraceOptions options;
    private final double slope;
    private final double focal;

    private CardStudy(CheckedScenario read, List<CardReading> readings, TraceOptions options) {
        this.read = read;
        this.readings = readings;
        this.options = options;
        slope = Math.max(SMOOTHEST, read.scenario().mirror().slopeErrorRadians());
        focal = read.scenario().dish().focalLengthMetres();
    }

    /**
     * Fits the spot.
     *
     * @throws ScenarioException if a card cannot stand in this dish
     */
    public static CardResult run(
            CheckedScenario read, List<CardReading> readings, TraceOptions options, Progress progress)
            throws ScenarioException {
        return new CardStudy(read, readings, options.withRays(options.rays() / 8)).run(progress);
    }

    private CardResult run(Progress progress) throws ScenarioException {
        double[][][] widths = new double[ROUGH.length][LONG.length][];
        for (int s = 0; s < ROUGH.length; s++) {
            for (int f = 0; f < LONG.length; f++) {
                if (!progress.report((double) (s * LONG.length + f) / (ROUGH.length * LONG.length), "")) {
                    throw new CancellationException();
                }
                widths[s][f] = widths(slope * ROUGH[s], focal * LONG[f]);
            }
        }
        return fit(widths);
    }

    /** Of the traced spot at every distance, m. */
    private double[] widths(double slopeError, double focalLength) throws ScenarioException {
        double[] widths = new double[readings.size()];
        for (int k = 0; k < widths.length; k++) {
            Scenario there = card(slopeError, focalLength, readings.get(k).distance());
            FluxMap map = TraceStudy.run(there, options, Progress.NONE).maps().crossing();
            widths[k] = 2
                    * SpotProfile.of(map.flux(), map.columns(), map.cellWidth()).halfRadius();
        }
        return widths;
    }

    private Scenario card(double slopeError, double focalLength, double distance) throws ScenarioException {
        double card = Math.min(CARD, 0.6 * 2 * read.scenario().dish().radiusMetres());
        ScenarioValues bare = read.values()
                .without(List.of(
                        "pan",
                        "plane",
                        "air",
                        "heat-levels",
                        "aim.turn",
                        "aim.drift",
                        "stand.slide",
                        "stand.raise",
                        "stand.side"))
                .with(Map.of("plane.disc", card + " m"));
        return CheckedScenario.scenario(bare.withNumbers(Map.of(
                "mirror.slope-error",
                slopeError,
                "dish.focal-length",
                focalLength,
                "stand.pull-back",
                distance - focalLength)));
    }

    private CardResult fit(double[][][] widths) {
        double sum = 0;
        double[] means = new double[2];
        double[] squares = new double[2];
        double best = Double.POSITIVE_INFINITY;
        double[] likeliest = {0, 1, 1};
        double[][] all = new double[(FINE + 1) * (FINE + 1)][];
        for (int a = 0; a < all.length; a++) {
            int step = a / (FINE + 1);
            double rough = ROUGH[0] * Math.pow(ROUGH[ROUGH.length - 1] / ROUGH[0], step / (double) FINE);
            double longer = LONG[0] + (LONG[LONG.length - 1] - LONG[0]) * (a % (FINE + 1)) / FINE;
            double misfit = misfit(between(widths, rough, longer)) + prior(rough, longer);
            all[a] = new double[] {misfit, rough, longer};
            if (misfit < best) {
                best = misfit;
                likeliest = all[a];
            }
        }
        for (double[] one : all) {
            double weight = Math.exp((best - one[0]) / 2);
            sum += weight;
            for (int p = 0; p < 2; p++) {
                means[p] += weight * one[1 + p];
                squares[p] += weight * one[1 + p] * one[1 + p];
            }
        }
        double[] deviations = new double[2];
        for (int p = 0; p < 2; p++) {
            means[p] /= sum;
            deviations[p] = Math.sqrt(Math.max(0, squares[p] / sum - means[p] * means[p]));
        }
        return result(between(widths, likeliest[1], likeliest[2]), between(widths, 1, 1), means, deviations);
    }

    /** Widths are those of the likeliest dish; the figures are means, which may lie between two dishes that fit alike. */
    private CardResult result(double[] fitted, double[] planned, double[] means, double[] deviations) {
        List<CardResult.Point> points = new ArrayList<>();
        for (int k = 0; k < readings.size(); k++) {
            points.add(new CardResult.Point(readings.get(k), planned[k], fitted[k]));
        }
        return new CardResult(
                read,
                points,
                new Estimate(means[0] * slope, deviations[0] * slope),
                new Estimate(means[1] * focal, deviations[1] * focal),
                Math.sqrt(misfit(fitted) / readings.size()),
                options.seed());
    }

    private double misfit(double[] widths) {
        double sum = 0;
        for (int k = 0; k < widths.length; k++) {
            double off = (widths[k] - readings.get(k).width()) / readings.get(k).deviation();
            sum += off * off;
        }
        return sum;
    }

    private static double prior(double rough, double longer) {
        double a = Math.log(rough) / ROUGH_DOUBT;
        double b = (longer - 1) / LONG_DOUBT;
        return a * a + b * b;
    }

    /** Widths of a dish between the traced ones. */
    private static double[] between(double[][][] widths, double rough, double longer) {
        int s = below(ROUGH, rough);
        double u = (rough * rough - ROUGH[s] * ROUGH[s]) / (ROUGH[s + 1] * ROUGH[s + 1] - ROUGH[s] * ROUGH[s]);
        double[] found = new double[widths[0][0].length];
        for (int k = 0; k < found.length; k++) {
            double square = (1 - u) * square(widths[s], k, longer) + u * square(widths[s + 1], k, longer);
            found[k] = Math.sqrt(Math.max(0, square));
        }
        return found;
    }

    /** The parabola through the squares at the three nearest focal lengths. */
    private static double square(double[][] widths, int k, double longer) {
        int middle = 1;
        while (middle < LONG.length - 2 && Math.abs(LONG[middle + 1] - longer) < Math.abs(LONG[middle] - longer)) {
            middle++;
        }
        double sum = 0;
        for (int a = middle - 1; a <= middle + 1; a++) {
            double weight = widths[a][k] * widths[a][k];
            for (int b = middle - 1; b <= middle + 1; b++) {
                weight *= a == b ? 1 : (longer - LONG[b]) / (LONG[a] - LONG[b]);
            }
            sum += weight;
        }
        return sum;
    }

    private static int below(double[] nodes, double value) {
        int k = 0;
        while (k < nodes.length - 2 && nodes[k + 1] <= value) {
            k++;
        }
        return k;
    }
}
