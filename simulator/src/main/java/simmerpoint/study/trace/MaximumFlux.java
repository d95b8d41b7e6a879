package simmerpoint.study.trace;

import simmerpoint.target.FluxMap;
import simmerpoint.target.FluxMaps;
import simmerpoint.target.HottestPatch;

/**
 * The hottest light of a traced dish, for cautions: on the target, and in the plane of its underside beside it, since light
 * that misses the pan burns as well.
 */
public final class MaximumFlux {
    /** Light beyond the map is told of from this share of all thrown light on. */
    private static final double LEAST_BEYOND = 0.1;

    /** Nobody knows where light beyond the map meets: half of it is taken to fall within this radius, m. Our own choice. */
    private static final double NARROW = 0.05;

    private static final int SQUARE = 3;

    private MaximumFlux() {}

    /** Its flux, W/m²; 0 if no light is thrown at all. */
    public static double of(TraceResult result) {
        FluxMaps maps = result.maps();
        double hottest = Math.max(surely(maps.crossing()), beyond(result));
        hottest = Math.max(hottest, maps.wall().map(FluxMap::largest).orElse(0.0));
        hottest = Math.max(hottest, maps.lid().map(MaximumFlux::surely).orElse(0.0));
        double peak = result.spot().peakFlux().value();
        return peak > hottest ? peak : hottest;
    }

    /** The hottest square of three cells by three, less one standard error. */
    private static double surely(FluxMap map) {
        return HottestPatch.of(map, SQUARE, SQUARE, false);
    }

    /** Light that crosses the plane beyond the map, or not at all. */
    private static double beyond(TraceResult result) {
        double thrown =
                result.ledger().caught().value() + result.ledger().missed().value();
        double watts = thrown - result.maps().crossing().power();
        return watts > LEAST_BEYOND * thrown ? watts / 2 / (Math.PI * NARROW * NARROW) : 0;
    }
}
