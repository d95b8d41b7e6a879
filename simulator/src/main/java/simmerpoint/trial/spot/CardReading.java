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

    /** Standard deviation of the width, m: a pencil's line round the bright spot, or a photograph (our estimates). */
    public double deviation() {
        boolean spoilt = photo.map(p -> p.saturated() > SpotPhoto.TOO_MANY).orElse(false);
        return spoilt ? SATURATED * width : Math.hypot(photo.isPresent() ? 0 : PENCIL, SHARE * width);
    }
}
