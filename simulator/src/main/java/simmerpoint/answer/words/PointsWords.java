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
    /**
     * Thrown less far beside the focus than this share of the pan's radius, next to no light is lost: traced here, bowls with 0.1, 0.4 and
     * 0.6 of it lost 1, 7 and 12 % of the light.
     */
    private static final double GOOD = 1.0 / 3;

    private static final double BAD = 2.0 / 3;

    /** Told no finer: a pan is placed no better, m. */
    private static final double FINEST = 0.001;

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
        return figures.length(
                new Estimate(shape.focalLength(), Math.max(FINEST, PlusMinus.DEVIATIONS * shape.focalDeviation())));
    }

    private String bad() {
        return "As uneven as it is, it throws the light " + figures.length(beside(), 2)
                + " beside the focus (root mean square): " + verdict() + "."
                + " Dents that fit between the points, "
                + figures.length(Math.sqrt(shape.outlineArea() / shape.points()), 2) + " apart, are not seen."
                + (radii() < GOOD
                        ? ""
                        : " Before you bend anything, measure some places again: what looks like a dent may be a slip of the"
                                + " rule.");
    }

    /** Slopes that are off turn the light by twice as much, over about the focal length. */
    private double beside() {
        return 2 * shape.slopesOffParaboloid() * shape.focalLength();
    }

    /** How far beside the focus it throws the light, in radii of the pan. */
    private double radii() {
        return 2 * beside() / across;
    }

    private String verdict() {
        String target = "a " + noun + " " + figures.length(across) + " across";
        if (radii() < GOOD) {
            return "good, " + target + " catches nearly all of the light";
        }
        return radii() < BAD ? "fair, some of the light misses " + target : "bad, much of the light misses " + target;
    }
}
