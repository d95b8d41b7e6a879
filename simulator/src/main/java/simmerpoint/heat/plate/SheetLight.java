package simmerpoint.heat.plate;

import java.util.function.ToDoubleBiFunction;
import simmerpoint.target.FluxMap;

/** Traced light on the cells of a pan's sheet. */
final class SheetLight {
    private static final int SAMPLES = 3;

    private SheetLight() {}

    /**
     * Watts taken up by each cell.
     *
     * @param mesh the cells
     * @param bottom flux map of the underside, only for how the light is shared out
     * @param bottomWatts taken up by the whole underside
     * @param wall flux map of the wall unrolled, the same
     * @param wallWatts taken up by the whole wall
     */
    static double[] watts(PanMesh mesh, FluxMap bottom, double bottomWatts, FluxMap wall, double wallWatts) {
        double[] watts = new double[mesh.cells()];
        fill(watts, mesh, 0, mesh.bottomRings(), bottomWatts, (r, a) -> at(bottom, r * Math.cos(a), r * Math.sin(a)));
        fill(watts, mesh, mesh.bottomRings(), mesh.rings(), wallWatts, (h, a) -> at(wall, mesh.radius() * a, h));
        return watts;
    }

    /** Shares out the watts over a range of rings by a flux over place along the sheet and angle; evenly if there is none. */
    private static void fill(
            double[] watts, PanMesh mesh, int from, int to, double sum, ToDoubleBiFunction<Double, Double> flux) {
        double all = 0;
        double area = 0;
        for (int ring = from; ring < to; ring++) {
            for (int sector = 0; sector < mesh.sectors(); sector++) {
                double here = mesh.area(ring) * mean(mesh, ring, sector, flux);
                watts[ring * mesh.sectors() + sector] = here;
                all += here;
                area += mesh.area(ring);
            }
        }
        for (int cell = from * mesh.sectors(); cell < to * mesh.sectors(); cell++) {
            watts[cell] = all > 0 ? watts[cell] * sum / all : sum * mesh.area(cell / mesh.sectors()) / area;
        }
    }

    private static double mean(PanMesh mesh, int ring, int sector, ToDoubleBiFunction<Double, Double> flux) {
        double middle = mesh.isBottom(ring) ? mesh.middleRadius(ring) : mesh.middleHeight(ring);
        double sum = 0;
        for (int i = 0; i < SAMPLES; i++) {
            double along = middle + mesh.width(ring) * ((i + 0.5) / SAMPLES - 0.5);
            for (int j = 0; j < SAMPLES; j++) {
                double around = mesh.angle(sector) + 2 * Math.PI / mesh.sectors() * ((j + 0.5) / SAMPLES - 0.5);
                sum += flux.applyAsDouble(along, around);
            }
        }
        return sum / (SAMPLES * SAMPLES);
    }

    private static double at(FluxMap map, double x, double y) {
        int i = (int) Math.floor((x - map.firstMin()) / map.cellWidth());
        int j = (int) Math.floor((y - map.secondMin()) / map.cellHeight());
        return i >= 0 && i < map.columns() && j >= 0 && j < map.rows() ? map.at(i, j) : 0;
    }
}
