package simmerpoint.study.panels;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.light.CardSpot;
import simmerpoint.study.light.ReflectedLight;
import simmerpoint.study.light.ReflectedRay;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;

/**
 * The light of one panel while all others are covered.
 *
 * @param number of the panel, from 1; 0 if none is lit
 * @param flux in the brightest part of its light where that is narrowest, W/m²
 */
public record OnePanelLight(int number, double flux) {
    private static final long RAYS_PER_PANEL = 512;
    private static final long MOST_RAYS = 1L << 20;

    /** Fewer rays tell nothing of a spot. */
    private static final int FEWEST = 64;

    /** Share of its light in its brightest part: little, since that of a bent strip is a line, but of this many rays. */
    private static final double BRIGHTEST = 0.03;

    private static final double RAYS_THERE = 100;

    private static final double NEAREST = 0.5;
    private static final double FARTHEST = 1.5;
    private static final int CARDS = 12;

    /** Of the panel whose light is brightest on any card from half to one and a half times the focal length away. */
    static OnePanelLight brightest(Scenario scenario, int panels, TraceOptions options) {
        TraceOptions enough = options.withRays(Math.min(MOST_RAYS, Math.max(options.rays(), RAYS_PER_PANEL * panels)));
        Map<Integer, List<ReflectedRay>> rays = ReflectedLight.deadOn(scenario, enough, options.seed())
                .rays(Progress.NONE)
                .collect(Collectors.groupingBy(ReflectedRay::panel));
        double f = scenario.dish().focalLengthMetres();
        Optional<OnePanelLight> brightest = rays.entrySet().stream()
                .filter(panel -> panel.getValue().size() >= FEWEST)
                .map(panel -> new OnePanelLight(panel.getKey() + 1, flux(panel.getValue(), f)))
                .max(Comparator.comparingDouble(OnePanelLight::flux));
        return brightest.orElse(new OnePanelLight(0, 0));
    }

    private static double flux(List<ReflectedRay> rays, double f) {
        CardSpot spot = new CardSpot(rays);
        double share = Math.min(1, Math.max(BRIGHTEST, RAYS_THERE / rays.size()));
        return IntStream.rangeClosed(0, CARDS)
                .mapToDouble(k -> spot.flux(f * (NEAREST + (FARTHEST - NEAREST) * k / CARDS), share))
                .max()
                .orElse(0);
    }
}
