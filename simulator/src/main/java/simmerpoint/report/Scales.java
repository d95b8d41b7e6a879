package simmerpoint.report;

import java.awt.Color;
import java.util.List;
import java.util.Optional;
import simmerpoint.answer.Figures;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.pan.PanResult;
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

    /** Upper end of the watts' scale over moves of the pan, W. */
    public static double mostWatts(PanResult result) {
        return PanSheet.mostWatts(result);
    }

    /** Upper end of the fluxes' scale over moves of the pan, W/m². */
    public static double mostFlux(PanResult result) {
        return PanSheet.mostFlux(result);
    }

    /** Colour of the curve of watts over moves. */
    public static Color wattsColour() {
        return MovePanel.WATTS;
    }

    /** Colour of the curve of the hottest spot over moves. */
    public static Color fluxColour() {
        return MovePanel.FLUX;
    }

    /** Round marks from 0 to {@code top}, about {@code wanted} of them. */
    public static List<Double> marks(double top, int wanted) {
        return NiceSteps.upTo(top, wanted);
    }

    /** The largest of 1, 2 or 5 times a power of ten that is not above {@code x}, which is above 0. */
    public static double roundBelow(double x) {
        return NiceSteps.below(x);
    }

    /** A mark as it is written: "0.5", "20". */
    public static String text(double mark) {
        String text = Figures.rounded(mark, 3);
        return text.contains(".") ? text.replaceAll("0+$", "").replaceAll("\\.$", "") : text;
    }
}
