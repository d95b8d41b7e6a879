package simmerpoint.drawing.cooker;

import java.util.List;
import simmerpoint.drawing.Raster;

/**
 * What a view along the axis shows of single panels while somebody changes the cooker.
 *
 * @param raster which panel is seen where
 * @param colours the panels as last coloured, {@link PanelRaster#PIXELS} across
 * @param shadow outline of the target's shadow, dish frame, m: pairs (x, y)
 * @param chosen number of the panel pointed at; below 0 for none
 */
public record LivePanels(PanelRaster raster, Raster colours, List<double[]> shadow, int chosen) {}
