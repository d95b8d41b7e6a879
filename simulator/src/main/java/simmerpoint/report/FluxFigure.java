package simmerpoint.report;

import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.TargetWords;
import simmerpoint.drawing.Stack;
import simmerpoint.drawing.map.FluxScale;
import simmerpoint.drawing.map.PlaneMap;
import simmerpoint.drawing.map.WallMap;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.target.FluxMap;
import simmerpoint.units.UnitSystem;

/** The map of the focused light with its words for the page, the wall unrolled below. */
final class FluxFigure {
    private FluxFigure() {}

    static HtmlFigure of(TraceResult result, UnitSystem system) {
        FigureFormat figures = new FigureFormat(system);
        TargetWords words = TargetWords.of(result.scenario().target());
        Stack stack = new Stack(PlaneMap.of(result, system));
        WallMap.of(result, system).ifPresent(wall -> stack.gap(8).with(wall));
        String description = "Map of the focused light in the plane of the " + words.face() + ", hottest spot "
                + figures.plainFlux(result.spot().peakFlux()) + "; the figures follow below.";
        return HtmlFigure.drawing(stack, description, caption(result, figures, words.isPan()));
    }

    private static String caption(TraceResult result, FigureFormat figures, boolean isPan) {
        String from = isPan
                ? "The focused light in the plane of the pan’s underside, as if seen from above through the pan"
                : "The focused light in the plane of the disc, seen from the dish";
        String lid = result.maps()
                .lid()
                .filter(map -> map.largest() > 0)
                .map(map -> " The lid gets up to about " + about(map, figures) + ".")
                .orElse("");
        return from + ". The paler, the stronger." + lid;
    }

    private static String about(FluxMap map, FigureFormat figures) {
        double surely = FluxScale.surely(map);
        return figures.plainFlux(new Estimate(surely, 0.05 * surely));
    }
}
