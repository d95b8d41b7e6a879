package simmerpoint.viewer.pan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import simmerpoint.drawing.chart.Ticks;
import simmerpoint.target.FluxMap;
import simmerpoint.target.WallPeak;

/**
 * What the colours of the maps mean: up to the brightest place, whatever that is, or up to a flux that stays.
 *
 * @param held upper end, W/m²; empty if it follows the light
 */
record ScaleChoice(Optional<Double> held) {
    static final ScaleChoice FOLLOWS = new ScaleChoice(Optional.empty());

    /** A wall that gets less than this share of the underside's flux is drawn in colours of its own. */
    static final double MUCH_DARKER = 0.2;

    /** Everything there is to choose from: 1, 2 and 5 times powers of ten, in kW/m². */
    static final List<ScaleChoice> ALL = all();

    private static List<ScaleChoice> all() {
        List<ScaleChoice> all = new ArrayList<>(List.of(FOLLOWS));
        for (double ten = 1000; ten < 1e6; ten *= 10) {
            double power = ten;
            Stream.of(1, 2, 5).forEach(k -> all.add(new ScaleChoice(Optional.of(k * power))));
        }
        return List.copyOf(all);
    }

    /** The upper end for maps whose brightest place has {@code brightest} W/m². */
    double top(double brightest) {
        return held.orElse(brightest);
    }

    /** "colours to fit", "up to 50 kW/m²". */
    String words() {
        return held.map(top -> "up to " + Ticks.text(top / 1000) + "\u00a0kW/m\u00b2")
                .orElse("colours to fit");
    }

    /**
     * The upper end of a wall's colours of its own, W/m²; empty if it shares those of the underside: a scale that is held is
     * held for both, and a dark wall shows nothing anyway. It never ends below the sun's own light, so that a wall on which
     * a few stray rays fall does not look ablaze.
     *
     * @param wall its light
     * @param top upper end of the underside's colours, W/m²
     * @param direct flux of the sun's own light, square to it, W/m²
     */
    Optional<Double> ownTop(FluxMap wall, double top, double direct) {
        double own = Math.max(WallPeak.of(wall), direct);
        return held.isEmpty() && wall.largest() > 0 && own < MUCH_DARKER * top ? Optional.of(own) : Optional.empty();
    }
}
