package simmerpoint.drawing.map;

import simmerpoint.study.trace.TraceResult;
import simmerpoint.target.FluxMap;

/** Where the colours of maps end. */
public final class FluxScale {
    private static final double NO_LIGHT = 1000;

    private FluxScale() {}

    /** Flux at the upper end of the colours of all maps of a trace, W/m². */
    public static double top(TraceResult result) {
        double top = surely(result.maps().crossing());
        top = Math.max(top, result.maps().wall().map(FluxScale::surely).orElse(0.0));
        top = Math.max(top, result.maps().lid().map(FluxScale::surely).orElse(0.0));
        return top > 0 && Double.isFinite(top) ? top : NO_LIGHT;
    }

    /** The same of the colours of one map alone: its strongest light, but no less than direct sun. */
    static double own(FluxMap map, TraceResult result) {
        return Math.max(surely(map), result.scenario().sun().beamWattsPerSquareMetre());
    }

    /** The largest flux less one standard error, so that one cell bright by chance does not set the scale. */
    public static double surely(FluxMap map) {
        double top = 0;
        for (int k = 0; k < map.flux().length; k++) {
            double error = map.standardError()[k];
            top = Math.max(top, map.flux()[k] - (Double.isFinite(error) ? error : 0));
        }
        return top;
    }
}
