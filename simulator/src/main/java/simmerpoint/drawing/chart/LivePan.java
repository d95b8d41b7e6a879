package simmerpoint.drawing.chart;

import java.util.Optional;

/**
 * The pan while somebody moves it.
 *
 * @param presentMetres where it stands, m from the focus
 * @param fits whether the curve is the one of this cooker
 * @param tracedWatts watts traced where it stands; empty while they are on their way
 * @param pointedMetres the place that is pointed at, m from the focus; empty if none
 */
public record LivePan(
        double presentMetres, boolean fits, Optional<Double> tracedWatts, Optional<Double> pointedMetres) {}
