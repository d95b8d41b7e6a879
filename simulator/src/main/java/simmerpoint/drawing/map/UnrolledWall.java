package simmerpoint.drawing.map;

import java.util.Optional;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.target.FluxMap;
import simmerpoint.target.WallPeak;

/** The pan's wall as a strip, and how much falls on it in words. */
public final class UnrolledWall {
    private UnrolledWall() {}

    /** The wall with its side away from the sun, where the dish is, in the middle; empty for a bare disc. */
    public static Optional<FluxMap> of(TraceResult result) {
        double radius = result.scenario().target().radiusMetres();
        return result.maps().wall().map(map -> awayInTheMiddle(map, radius));
    }

    private static FluxMap awayInTheMiddle(FluxMap wall, double radius) {
        double girth = 2 * Math.PI * radius;
        double length = wall.columns() * wall.cellWidth();
        if (Math.abs(length - girth) > 1e-6 * girth) {
            return wall;
        }
        int shift = (int) Math.round((-girth / 2 - wall.firstMin()) / wall.cellWidth());
        double[] flux = new double[wall.flux().length];
        double[] error = new double[flux.length];
        for (int j = 0; j < wall.rows(); j++) {
            for (int i = 0; i < wall.columns(); i++) {
                int from = j * wall.columns() + Math.floorMod(i + shift, wall.columns());
                flux[j * wall.columns() + i] = wall.flux()[from];
                error[j * wall.columns() + i] = wall.standardError()[from];
            }
        }
        double firstMin = wall.firstMin() + shift * wall.cellWidth();
        return new FluxMap(
                wall.columns(),
                wall.rows(),
                wall.cellWidth(),
                wall.cellHeight(),
                firstMin,
                wall.secondMin(),
                flux,
                error);
    }

    /** How much falls on a wall: "up to about 2.6 kW/m²", the same wherever it is told. */
    public static String words(FluxMap wall, FigureFormat figures) {
        return wall.largest() > 0 ? "up to about " + peak(wall, figures) : "no focused light falls on it";
    }

    /** The flux on a wall's hottest place in words: "2.6 kW/m²"; "1 W/m²" stands for anything below. */
    static String peak(FluxMap wall, FigureFormat figures) {
        double peak = WallPeak.of(wall);
        return peak < 1 ? "1" + FigureFormat.NBSP + "W/m\u00b2" : figures.plainFlux(new Estimate(peak, 0.05 * peak));
    }
}
