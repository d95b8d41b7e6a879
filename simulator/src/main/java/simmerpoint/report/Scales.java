package simmerpoint.report;

import java.util.Optional;
import simmerpoint.answer.Figures;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.target.FluxMap;
import simmerpoint.target.WallPeak;

/** Ends, marks and colours of the scales in pictures, for whoever draws the same on a screen. */
public final class Scales {
    private Scales() {}

    /** Flux at the upper end of the colours of all maps of a trace, W/m². */
    public static double fluxTop(TraceResult result) {
        return FluxSheet.top(result);
    }

    /** The pan's wall unrolled with its side away from the sun in the middle; empty for a bare disc. */
    public static Optional<FluxMap> wall(TraceResult result) {
        double radius = result.scenario().target().radiusMetres();
        return result.maps().wall().map(map -> FluxSheet.awayInTheMiddle(map, radius));
    }

    /** How much falls on a wall: "up to about 2.6 kW/m²", the same wherever it is told. */
    public static String wallWords(FluxMap wall, Figures figures) {
        return wall.largest() > 0 ? "up to about " + wallFlux(wall, figures) : "no focused light falls on it";
    }

    /** The flux on a wall's hottest place in words: "2.6 kW/m²"; "1 W/m²" stands for anything below. */
    public static String wallFlux(FluxMap wall, Figures figures) {
        double peak = WallPeak.of(wall);
        return peak < 1 ? "1" + Figures.NBSP + "W/m\u00b2" : figures.plainFlux(new Estimate(peak, 0.05 * peak));
    }
}
