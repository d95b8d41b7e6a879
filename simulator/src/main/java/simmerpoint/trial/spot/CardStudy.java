package simmerpoint.trial.spot;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import simmerpoint.sampling.Estimate;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.study.trace.ImpossibleSetupException;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;

/**
 * Fits slope error and focal length to the spot on a card: to its width, or in a photograph to the radii that hold a tenth to nine tenths of
 * its light. These are traced on a grid of both; between, their squares run straight with the square of the slope error and as a
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

    /** Twice the focal length away the light is as wide as the dish again. */
    private static final double FARTHEST = 2;

    /** Rays of the grid and of the dishes that are shown, as shares of those asked for. */
    private static final int GRID_RAYS = 4;

    private static final int SHOWN_RAYS = 2;

    private final CheckedScenario read;
    private final List<CardReading> readings;
    private final double[] distances;
    private final TraceOptions options;
    private final double slope;
    private final double focal;

    private CardStudy(CheckedScenario read, List<CardReading> readings, TraceOptions options) {
        this.read = read;
        this.readings = readings;
        this.options = options;
        distances = readings.stream().mapToDouble(CardReading::distance).toArray();
        slope = Math.max(SMOOTHEST, read.scenario().mirror().slopeErrorRadians());
        focal = read.scenario().dish().focalLengthMetres();
    }

    /**
     * Fits the spot.
     *
     * @throws ScenarioException if a card cannot stand in this dish
     * @throws ImpossibleSetupException if a card is farther away than any spot is of use
     */
    public static CardResult run(
            CheckedScenario read, List<CardReading> readings, TraceOptions options, Progress progress)
            throws ScenarioException {
        CardStudy study = new CardStudy(read, readings, options);
        study.refuseFar();
        return study.run(progress);
    }

    private void refuseFar() {
        for (CardReading reading : readings) {
            double times = reading.distance() / focal;
            if (times > FARTHEST) {
                throw new ImpossibleSetupException(String.format(
                        Locale.ROOT,
                        "line %d of the card\u2019s file: %.0f cm from the middle of the dish is %.1f times the focal length, where the light"
                                + " is wider than the dish and tells nothing; is the unit right? Up to %.0f cm is allowed",
                        reading.line(),
                        100 * reading.distance(),
                        times,
                        100 * FARTHEST * focal));
            }
        }
    }

    private CardResult run(Progress progress) throws ScenarioException {
        CardLight light = new CardLight(read.values(), options.withRays(options.rays() / GRID_RAYS), distances);
        double[][][][] figures = new double[ROUGH.length][LONG.length][][];
        for (int s = 0; s < ROUGH.length; s++) {
            for (int f = 0; f < LONG.length; f++) {
                if (!progress.report((double) (s * LONG.length + f) / (ROUGH.length * LONG.length), "")) {
                    throw new CancellationException();
                }
                figures[s][f] = figures(light.maps(slope * ROUGH[s], focal * LONG[f], distances));
            }
        }
        return fit(figures);
    }

    /** Of every reading. */
    private double[][] figures(List<SpotMap> maps) {
        double[][] figures = new double[maps.size()][];
        for (int k = 0; k < figures.length; k++) {
            figures[k] = readings.get(k).figures(maps.get(k));
        }
        return figures;
    }

    private CardResult fit(double[][][][] figures) throws ScenarioException {
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
            double misfit = misfit(between(figures, rough, longer)) + prior(rough, longer);
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
        double counts = readings.stream().mapToDouble(CardReading::counts).sum();
        double misfit = Math.sqrt(misfit(between(figures, likeliest[1], likeliest[2])) / counts);
        return new CardResult(
                read,
                points(likeliest[1], likeliest[2]),
                new Estimate(means[0] * slope, deviations[0] * slope),
                new Estimate(means[1] * focal, deviations[1] * focal),
                misfit,
                options.seed());
    }

    /** Spots of the likeliest dish; the figures are means, which may lie between two dishes that fit alike. */
    private List<CardResult.Point> points(double rough, double longer) throws ScenarioException {
        CardLight light = new CardLight(read.values(), options.withRays(options.rays() / SHOWN_RAYS), distances);
        List<SpotMap> planned = light.maps(slope, focal, distances);
        List<SpotMap> fitted = light.maps(rough * slope, longer * focal, distances);
        List<CardResult.Point> points = new ArrayList<>();
        for (int k = 0; k < readings.size(); k++) {
            SpotMap meant = planned.get(k);
            SpotMap found = fitted.get(k);
            Optional<SpotComparison> maps =
                    readings.get(k).photo().map(photo -> SpotComparison.of(photo, meant, found));
            points.add(new CardResult.Point(
                    readings.get(k),
                    maps.map(m -> m.planned().width()).orElseGet(() -> width(meant)),
                    maps.map(m -> m.fitted().width()).orElseGet(() -> width(found)),
                    maps));
        }
        return points;
    }

    private static double width(SpotMap map) {
        return map.profile(Double.POSITIVE_INFINITY).width();
    }

    private double misfit(double[][] figures) {
        double sum = 0;
        for (int k = 0; k < figures.length; k++) {
            sum += readings.get(k).misfit(figures[k]);
        }
        return sum;
    }

    private static double prior(double rough, double longer) {
        double a = Math.log(rough) / ROUGH_DOUBT;
        double b = (longer - 1) / LONG_DOUBT;
        return a * a + b * b;
    }

    /** Figures of a dish between the traced ones. */
    private static double[][] between(double[][][][] figures, double rough, double longer) {
        int s = below(ROUGH, rough);
        double u = (rough * rough - ROUGH[s] * ROUGH[s]) / (ROUGH[s + 1] * ROUGH[s + 1] - ROUGH[s] * ROUGH[s]);
        int middle = middle(longer);
        double[][] found = new double[figures[0][0].length][];
        for (int k = 0; k < found.length; k++) {
            found[k] = new double[figures[0][0][k].length];
            for (int p = 0; p < found[k].length; p++) {
                double square = (1 - u) * square(figures[s], k, p, middle, longer)
                        + u * square(figures[s + 1], k, p, middle, longer);
                found[k][p] = Math.sqrt(Math.max(0, square));
            }
        }
        return found;
    }

    /** The middle of the three nearest focal lengths. */
    private static int middle(double longer) {
        int middle = 1;
        while (middle < LONG.length - 2 && Math.abs(LONG[middle + 1] - longer) < Math.abs(LONG[middle] - longer)) {
            middle++;
        }
        return middle;
    }

    /** The parabola through the squares there. */
    private static double square(double[][][] figures, int k, int p, int middle, double longer) {
        double sum = 0;
        for (int a = middle - 1; a <= middle + 1; a++) {
            double weight = figures[a][k][p] * figures[a][k][p];
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
