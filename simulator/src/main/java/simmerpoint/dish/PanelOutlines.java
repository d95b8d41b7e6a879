package simmerpoint.dish;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.IntFunction;
import simmerpoint.dish.mesh.Mesh;
import simmerpoint.geometry.Vec;

/**
 * The edges of all panels of a dish, laid out exactly as they are traced: gaps taken off, tiles in their tangent planes,
 * strips bent. Panel tilt and everything else that the seed decides is left out. A panel of which the gaps leave nothing
 * has no outline; perfected panels have those they were made from.
 */
public final class PanelOutlines {
    private static final int CIRCLE = 180;

    private PanelOutlines() {}

    /** The outlines in the order of the panels' numbers; dish frame, m. */
    public static List<PanelOutline> of(DishPlan plan) {
        Cut cut = plan.cut();
        if (cut instanceof Cut.FlatRings rings) {
            FlatRingSurface surface = new FlatRingSurface(plan, rings);
            return numbered(surface.panels(), surface::edge);
        } else if (cut instanceof Cut.BentStrips strips) {
            BentStripSurface surface = new BentStripSurface(plan, strips);
            return numbered(surface.panels(), surface::edge);
        } else if (cut instanceof Cut.SquareTiles tiles) {
            return tiles(new TileLattice(plan, TileShape.SQUARE, tiles.tileMetres()));
        } else if (cut instanceof Cut.HexagonTiles tiles) {
            return tiles(new TileLattice(plan, TileShape.HEXAGON, tiles.tileMetres()));
        } else if (cut instanceof Cut.FromFile file) {
            return numbered(file.mesh().polygons(), k -> polygon(file.mesh(), k));
        } else if (cut instanceof Cut.Perfected better) {
            return of(plan.withCut(better.panels()));
        }
        List<Vec> hub = plan.hubMetres() > 0 ? circle(plan.hubMetres() / 2, plan.focalLengthMetres()) : List.of();
        return List.of(new PanelOutline(0, circle(plan.radiusMetres(), plan.focalLengthMetres()), hub));
    }

    private static List<PanelOutline> numbered(int panels, IntFunction<List<Vec>> edge) {
        List<PanelOutline> all = new ArrayList<>(panels);
        for (int k = 0; k < panels; k++) {
            List<Vec> corners = edge.apply(k);
            if (!corners.isEmpty()) {
                all.add(new PanelOutline(k, corners, List.of()));
            }
        }
        return all;
    }

    private static List<PanelOutline> tiles(TileLattice lattice) {
        List<PanelOutline> all = new ArrayList<>(lattice.count());
        lattice.forEach(plane -> all.add(new PanelOutline(all.size(), tile(lattice, plane), List.of())));
        return all;
    }

    private static List<Vec> tile(TileLattice lattice, TangentPlane plane) {
        List<Vec> corners = new ArrayList<>();
        for (int c = 0; c < lattice.shape.corners(); c++) {
            double a = lattice.tile * lattice.shape.cornerX(c);
            double b = lattice.tile * lattice.shape.cornerY(c);
            corners.add(new Vec(plane.cx() + plane.planX(a, b), plane.cy() + plane.planY(a, b), plane.height(a, b)));
        }
        return corners;
    }

    /** Turned so that it runs counter-clockwise seen from +z. */
    private static List<Vec> polygon(Mesh mesh, int k) {
        List<Vec> corners = new ArrayList<>();
        double twiceArea = 0;
        for (int c = mesh.firstCorner()[k]; c < mesh.firstCorner()[k + 1]; c++) {
            int at = 3 * mesh.corners()[c];
            corners.add(new Vec(mesh.vertices()[at], mesh.vertices()[at + 1], mesh.vertices()[at + 2]));
        }
        for (int i = 0, j = corners.size() - 1; i < corners.size(); j = i++) {
            twiceArea += corners.get(j).x() * corners.get(i).y()
                    - corners.get(i).x() * corners.get(j).y();
        }
        if (twiceArea < 0) {
            Collections.reverse(corners);
        }
        return corners;
    }

    private static List<Vec> circle(double radius, double focalLength) {
        List<Vec> points = new ArrayList<>(CIRCLE);
        double height = new Parabola(focalLength).height(radius);
        for (int k = 0; k < CIRCLE; k++) {
            double angle = 2 * Math.PI * k / CIRCLE;
            points.add(new Vec(radius * Math.cos(angle), radius * Math.sin(angle), height));
        }
        return points;
    }
}
