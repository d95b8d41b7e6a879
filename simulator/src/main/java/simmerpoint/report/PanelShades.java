package simmerpoint.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import simmerpoint.dish.PanelOutline;
import simmerpoint.geometry.Vec;

/** Panels as areas in a few shades by how they lean, as if lit from the upper left, so that the bowl is seen as one. */
final class PanelShades {
    private static final int SHADES = 6;

    /** More panels than this are too small to be drawn one by one. */
    static final int MOST = 4000;

    private final List<StringBuilder> ways = new ArrayList<>();

    /**
     * The areas of panels.
     *
     * @param panels in the order in which they are drawn
     * @param light where light seems to come from, in the panels' frame
     * @param place where a point comes on the sheet
     */
    PanelShades(List<PanelOutline> panels, Vec light, Function<Vec, double[]> place) {
        double[] shade =
                panels.stream().mapToDouble(p -> normal(p.edge()).dot(light)).toArray();
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (double s : shade) {
            low = Math.min(low, s);
            high = Math.max(high, s);
        }
        for (int k = 0; k < SHADES; k++) {
            ways.add(new StringBuilder());
        }
        for (int k = 0; k < shade.length; k++) {
            double share = high - low > 1e-9 ? (shade[k] - low) / (high - low) : 0.5;
            StringBuilder way = ways.get((int) Math.min(SHADES - 1, share * SHADES));
            way.append(way(panels.get(k).edge(), place));
            if (!panels.get(k).hole().isEmpty()) {
                way.append(way(panels.get(k).hole(), place));
            }
        }
    }

    static String way(List<Vec> edge, Function<Vec, double[]> place) {
        return SvgSheet.way(edge.stream().map(place).toList(), true);
    }

    /** Unit normal by the sum of vector products of neighbouring corners (Newell's rule). */
    private static Vec normal(List<Vec> edge) {
        Vec sum = Vec.ZERO;
        for (int i = 0; i < edge.size(); i++) {
            sum = sum.plus(edge.get(i).cross(edge.get((i + 1) % edge.size())));
        }
        double length = sum.length();
        return length > 0 ? sum.times(1 / length) : Vec.ZERO;
    }

    void paint(SvgSheet sheet) {
        for (int k = 0; k < SHADES; k++) {
            if (!ways.get(k).isEmpty()) {
                sheet.path("panel shade" + k, ways.get(k).toString());
            }
        }
    }
}
