package simmerpoint.viewer.editing;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import simmerpoint.scenario.keys.Key;
import simmerpoint.units.Dimension;
import simmerpoint.units.TypedQuantity;

/**
 * From where to where a slider goes, SI: what hand-built cookers have, which is far less than what a key allows. A number
 * beyond it can be typed.
 *
 * @param low least value, SI
 * @param high greatest value, SI
 */
record SliderSpan(double low, double high) {
    private static final Map<String, String[]> SPANS = new HashMap<>();

    static {
        span("dish.diameter", "40 cm", "250 cm");
        span("dish.focal-length", "20 cm", "150 cm");
        span("dish.hub", "0 cm", "30 cm");
        span("dish.gap", "0 mm", "20 mm");
        span("dish.surface.sectors", "6", "64");
        span("dish.surface.rings", "1", "16");
        span("dish.surface.tile", "10 mm", "200 mm");
        span("mirror.reflectance", "0.5", "1");
        span("mirror.scattered", "0", "0.3");
        span("mirror.slope-error", "0 mrad", "20 mrad");
        span("mirror.beam-spread", "0 mrad", "10 mrad");
        span("mirror.wide-share", "0", "0.5");
        span("mirror.wide-spread", "0 mrad", "60 mrad");
        span("mirror.dust", "0", "0.3");
        span("mirror.panel-tilt", "0 mrad", "20 mrad");
        span("workmanship.rib-cut", "0 mm", "5 mm");
        span("workmanship.rib-set", "0°", "2°");
        span("workmanship.panel-edge", "0 mm", "5 mm");
        span("workmanship.sag", "0 mm", "10 mm");
        span("workmanship.bubble-height", "0 mm", "2 mm");
        span("workmanship.bubble-width", "5 mm", "100 mm");
        span("sun.elevation", "5°", "90°");
        span("sun.beam", "200 W/m²", "1050 W/m²");
        span("sky.beam", "200 W/m²", "1050 W/m²");
        span("sky.turbidity", "1.5", "8");
        for (String way : new String[] {"turn.up", "turn.side", "drift.up", "drift.side"}) {
            span("aim." + way, "-5°", "5°");
        }
        span("aim.jitter", "0 mrad", "10 mrad");
        span("aim.mount", "-20 cm", "60 cm");
        span("pan.diameter", "10 cm", "50 cm");
        span("pan.height", "3 cm", "30 cm");
        span("pan.water", "0.2 l", "10 l");
        span("pan.mass", "0.2 kg", "6 kg");
        span("pan.water-temperature", "0 °C", "100 °C");
        span("plane.disc", "5 cm", "50 cm");
        span("plane.lean", "-60°", "60°");
        span("stand.pull-back", "-20 cm", "60 cm");
        span("stand.slide", "-30 cm", "30 cm");
        span("stand.raise", "-20 cm", "40 cm");
        span("stand.side", "-20 cm", "20 cm");
        span("stand.tripod-height", "20 cm", "150 cm");
        span("stand.lowest-pan", "0 cm", "150 cm");
        span("stand.highest-pan", "50 cm", "250 cm");
        span("air.temperature", "-10 °C", "45 °C");
        span("air.wind", "0 m/s", "10 m/s");
        span("heat-levels.hold", "50 °C", "80 °C");
        span("heat-levels.simmer-below-boiling", "1 K", "15 K");
    }

    private static void span(String path, String low, String high) {
        SPANS.put(path, new String[] {low, high});
    }

    /** The span for a key; empty if a slider would not help. */
    static Optional<SliderSpan> of(Key key) {
        String[] span = SPANS.get(key.path());
        if (span != null) {
            return Optional.of(new SliderSpan(si(span[0], key.dimension()), si(span[1], key.dimension())));
        }
        boolean narrow = key.dimension() == Dimension.SHARE && key.range() != null;
        return narrow
                ? Optional.of(new SliderSpan(key.range().low(), key.range().high()))
                : Optional.empty();
    }

    private static double si(String text, Dimension dimension) {
        return TypedQuantity.of(text, dimension).orElseThrow().si();
    }
}
