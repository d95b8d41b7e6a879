package simmerpoint.drawing.cooker;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import simmerpoint.dish.PanelOutline;
import simmerpoint.drawing.Canvas;
import simmerpoint.drawing.Path;
import simmerpoint.drawing.Style;
import simmerpoint.geometry.Vec;

/** Shades of panels by how they lean, as if lit from somewhere, so that the bowl is seen as one. */
final class PanelShades {
    /** More panels than this are too small to be drawn one by one. */
    static final int MOST = 3000;

    private PanelShades() {}

    /** A style for each panel; {@code light} says in their frame where light seems to come from. */
    static List<Style> of(List<PanelOutline> panels, Vec light) {
        double[] shade =
                panels.stream().mapToDouble(p -> normal(p.edge()).dot(light)).toArray();
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (double s : shade) {
            low = Math.min(low, s);
            high = Math.max(high, s);
        }
        double least = low;
        double range = high - low;
        return Arrays.stream(shade)
                .mapToObj(s -> Style.shade(range > 1e-9 ? (s - least) / range : 0.5))
                .toList();
    }

    /**
     * Draws panels in their shades, farther ones first; those of a bowl hide nothing of each other, so that all of a shade are one
     * shape.
     */
    static void draw(Canvas canvas, List<Style> shades, List<Path> outlines, boolean bowl) {
        if (!bowl) {
            for (int k = 0; k < shades.size(); k++) {
                canvas.draw(shades.get(k), outlines.get(k));
            }
            return;
        }
        Map<Style, List<Path.Part>> joined = new EnumMap<>(Style.class);
        for (int k = 0; k < shades.size(); k++) {
            joined.computeIfAbsent(shades.get(k), s -> new ArrayList<>())
                    .addAll(outlines.get(k).parts());
        }
        joined.forEach((shade, parts) -> canvas.draw(shade, new Path(parts)));
    }

    /** The outline of a panel with its hole, if it has one; {@code place} says where a point comes on the drawing. */
    static <P> Path outline(List<P> edge, List<P> hole, Function<P, double[]> place) {
        Path outer = Path.through(edge.stream().map(place).toList(), true);
        return hole.isEmpty()
                ? outer
                : outer.and(Path.through(hole.stream().map(place).toList(), true));
    }

    /** Unit normal; zero where there is none. */
    private static Vec normal(List<Vec> edge) {
        Vec area = Vec.area(edge);
        double length = area.length();
        return length > 0 ? area.times(1 / length) : Vec.ZERO;
    }
}
