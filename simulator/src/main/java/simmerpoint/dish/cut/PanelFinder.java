package simmerpoint.dish.cut;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import simmerpoint.dish.PanelOutline;
import simmerpoint.geometry.Vec;

/** Panels found by their place in plan: outlines in a net of cells. Immutable. */
final class PanelFinder {
    private final List<PanelOutline> outlines;
    private final int across;
    private final double reach;
    private final List<List<double[][]>> cells = new ArrayList<>();

    PanelFinder(List<PanelOutline> outlines) {
        this.outlines = outlines;
        across = (int) Math.max(8, Math.min(256, 2 * Math.sqrt(outlines.size())));
        reach = outlines.stream()
                        .flatMap(outline -> outline.edge().stream())
                        .mapToDouble(p -> Math.max(Math.abs(p.x()), Math.abs(p.y())))
                        .max()
                        .orElse(1)
                * (1 + 1e-9);
        for (int k = 0; k < across * across; k++) {
            cells.add(new ArrayList<>());
        }
        outlines.forEach(this::add);
    }

    private void add(PanelOutline outline) {
        double[][] edges = {corners(outline.edge()), corners(outline.hole())};
        int left = cell(outline.edge().stream().mapToDouble(Vec::x).min().orElseThrow());
        int right = cell(outline.edge().stream().mapToDouble(Vec::x).max().orElseThrow());
        int foot = cell(outline.edge().stream().mapToDouble(Vec::y).min().orElseThrow());
        int top = cell(outline.edge().stream().mapToDouble(Vec::y).max().orElseThrow());
        for (int j = foot; j <= top; j++) {
            for (int i = left; i <= right; i++) {
                cells.get(j * across + i).add(edges);
            }
        }
    }

    /** Corners x y in turn. */
    private static double[] corners(List<Vec> edge) {
        return edge.stream().flatMapToDouble(p -> DoubleStream.of(p.x(), p.y())).toArray();
    }

    private int cell(double at) {
        return (int) Math.max(0, Math.min(across - 1, Math.floor((at / reach + 1) / 2 * across)));
    }

    /** Whether a panel is there. */
    boolean covers(double x, double y) {
        if (Math.abs(x) > reach || Math.abs(y) > reach) {
            return false;
        }
        for (double[][] edges : cells.get(cell(y) * across + cell(x))) {
            if (crossings(edges[0], x, y) != crossings(edges[1], x, y)) {
                return true;
            }
        }
        return false;
    }

    /** Whether a line from the place along x crosses the edge an odd number of times. */
    private static boolean crossings(double[] edge, double x, double y) {
        boolean odd = false;
        for (int i = 0, j = edge.length - 2; i < edge.length; j = i, i += 2) {
            boolean crosses = edge[i + 1] > y != edge[j + 1] > y;
            if (crosses && x < edge[i] + (y - edge[i + 1]) / (edge[j + 1] - edge[i + 1]) * (edge[j] - edge[i])) {
                odd = !odd;
            }
        }
        return odd;
    }

    /** All panels. */
    List<PanelOutline> outlines() {
        return outlines;
    }
}
