package simmerpoint.drawing.cooker;

import java.util.List;
import java.util.Set;
import simmerpoint.drawing.Raster;

/**
 * What a view along the axis shows of single panels while somebody changes the cooker.
 *
 * @param raster which panel is seen where
 * @param colours the panels as last coloured, {@link PanelRaster#PIXELS} across
 * @param shadow outline of the target's shadow, dish frame, m: pairs (x, y)
 * @param chosen number of the panel pointed at; below 0 for none
 * @param named numbers of panels that have theirs written on them
 */
public record LivePanels(PanelRaster raster, Raster colours, List<double[]> shadow, int chosen, Set<Integer> named) {
    /** Keeps a copy. */
    public LivePanels {
        named = Set.copyOf(named);
    }
}
