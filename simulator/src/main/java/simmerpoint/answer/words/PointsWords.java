package simmerpoint.answer.words;

import java.util.Optional;
import simmerpoint.dish.cut.MeasuredMirror;
import simmerpoint.dish.points.MeasuredShape;
import simmerpoint.sampling.Estimate;
import simmerpoint.scenario.Scenario;
import simmerpoint.units.PlusMinus;

/**
 * What the measured points of a mirror come to: how well they tell its focal length, which way their axes point, and whether what they are
 * off a paraboloid is good or bad.
 *
 * @param shape measured
 * @param across of what the light is to hit, m
 * @param noun for that
 * @param figures in the reader's units
 */
public record PointsWords(MeasuredShape shape, double across, String noun, FigureFormat figures) {
    /** Less light than this share beside the pan is good, more than the other bad: our estimate. */
    private static final double GOOD = 0.01;

    private static final double BAD = 0.1;

    /** Of a scenario whose dish was measured so. */
    public static Optional<PointsWords> of(Scenario scenario, FigureFormat figures) {
        return scenario.dish().cut() instanceof MeasuredMirror mirror
                ? Optional.of(new PointsWords(
                        mirror.shape(),
                        2 * scenario.target().radiusMetres(),
                        TargetWords.of(scenario.target()).noun(),
                        figures))
                : Optional.empty();
    }

    /** In a dozen words. */
    public String brief() {
        return "focal length " + focalLength() + "; " + verdict()
                + "; x up, y to the right as seen from behind the dish";
    }

    /** All of it. */
    public String full() {
        return "By the points the focal length is " + focalLength()
                + ". Seen from behind the dish x points up and y to the right; z points towards the sun. " + bad();
    }

    private String focalLength() {
        return figures.length(new Estimate(shape.focalLength(), PlusMinus.DEVIATIONS * shape.focalDeviation()));
    }

    private String bad() {
        return "As uneven as it is, it throws the light " + figures.length(beside(), 2)
                + " beside the focus (root mean square): " + verdict() + "."
                + (missing() < GOOD
                        ? ""
                        : " Before you bend anything, measure some places again: what looks like a dent may be a slip of the"
                                + " rule.");
    }

    /** Slopes that are off turn the light by twice as much, over about the focal length. */
    private double beside() {
        return 2 * shape.slopesOffParaboloid() * shape.focalLength();
    }

    /** The share of the light that falls outside the pan's circle, if it lies about the focus as a normal distribution: e^(−R²/s²). */
    private double missing() {
        double radius = across / 2;
        return Math.exp(-radius * radius / (beside() * beside()));
    }

    private String verdict() {
        String target = "a " + noun + " " + figures.length(across) + " across";
        if (missing() < GOOD) {
            return "good, " + target + " catches nearly all of the light";
        }
        return missing() < BAD
                ? "fair, some of the light misses " + target
                : "bad, " + figures.percent(missing()) + " of the light misses " + target;
    }
}
