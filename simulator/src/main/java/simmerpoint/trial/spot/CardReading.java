package simmerpoint.trial.spot;

import java.util.Optional;

/**
 * The spot on a card at one distance.
 *
 * @param line of the file
 * @param distance of the card from the middle of the dish, along its axis, m
 * @param width of the spot at half of its brightness, m
 * @param photo where the width was read off one
 */
public record CardReading(int line, double distance, double width, Optional<SpotPhoto> photo) {
    private static final double PENCIL = 0.003;
    private static final double SHARE = 0.05;
    private static final double SATURATED = 0.2;

    /** The radii of one photograph hang together: they count as so many figures. */
    private static final double RADII_COUNT_AS = 3;

    /** Standard deviation of the width, m: a pencil's line round the bright spot, or a photograph (our estimates). */
    public double deviation() {
        return photo.isPresent() ? ofPhoto() * width : Math.hypot(PENCIL, SHARE * width);
    }

    private double ofPhoto() {
        return photo.map(p -> p.saturated() > SpotPhoto.TOO_MANY).orElse(false) ? SATURATED : SHARE;
    }

    /** What of a traced map is held against this: the width, or of a photograph the radii of all shares, m. */
    double[] figures(SpotMap traced) {
        return photo.map(p -> radii(traced.withoutFaint().profile(p.reach()))).orElseGet(() ->
                new double[] {traced.profile(Double.POSITIVE_INFINITY).width()});
    }

    private static double[] radii(SpotProfile profile) {
        return profile.radii().stream().mapToDouble(r -> r).toArray();
    }

    /** How far such figures are off, in squares of standard deviations. */
    double misfit(double[] figures) {
        if (photo.isEmpty()) {
            return Math.pow((figures[0] - width) / deviation(), 2);
        }
        double[] measured = radii(photo.get().profile());
        double sum = 0;
        for (int k = 0; k < measured.length; k++) {
            sum += Math.pow((figures[k] - measured[k]) / (ofPhoto() * measured[k]), 2);
        }
        return RADII_COUNT_AS * sum / measured.length;
    }

    /** How many figures it counts as. */
    double counts() {
        return photo.isPresent() ? RADII_COUNT_AS : 1;
    }
}
