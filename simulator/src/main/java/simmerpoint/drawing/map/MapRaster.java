package simmerpoint.drawing.map;

import simmerpoint.drawing.FluxColours;
import simmerpoint.drawing.Raster;
import simmerpoint.target.FluxMap;

/** A flux map as a raster, one point per cell. */
final class MapRaster {
    private MapRaster() {}

    /** The map as it faces; flux of {@code top} W/m² and more gets the last colour. */
    static Raster of(FluxMap map, Facing facing, double top) {
        boolean wall = facing == Facing.FIRST_RIGHT;
        int width = wall ? map.columns() : map.rows();
        int height = wall ? map.rows() : map.columns();
        int[] argb = new int[width * height];
        for (int y = 0; y < height; y++) {
            int down = facing == Facing.FIRST_DOWN ? y : height - 1 - y;
            for (int x = 0; x < width; x++) {
                double flux = wall ? map.at(x, down) : map.at(down, x);
                argb[y * width + x] = FluxColours.argb(flux / top);
            }
        }
        return Raster.cells(width, height, argb);
    }
}
