package simmerpoint.dish;

import simmerpoint.dish.mesh.MeshSurface;
import simmerpoint.geometry.Direction;

/** Lays out the surface of a plan. */
public final class MirrorSurfaces {
    private MirrorSurfaces() {}

    /**
     * The surface of {@code plan}.
     *
     * @param plan what to build
     * @param sunInDish direction to the sun's centre in the dish frame: only a mesh needs it, to find its gaps
     * @throws IllegalArgumentException if no panel fits
     */
    public static MirrorSurface of(DishPlan plan, Direction sunInDish) {
        Cut cut = plan.cut();
        if (cut instanceof Cut.FlatRings rings) {
            return new FlatRingSurface(plan, rings);
        } else if (cut instanceof Cut.BentStrips strips) {
            return new BentStripSurface(plan, strips);
        } else if (cut instanceof Cut.SquareTiles tiles) {
            return new TileSurface(plan, TileShape.SQUARE, tiles.tileMetres());
        } else if (cut instanceof Cut.HexagonTiles tiles) {
            return new TileSurface(plan, TileShape.HEXAGON, tiles.tileMetres());
        } else if (cut instanceof Cut.FromFile file) {
            return new MeshSurface(file.mesh(), sunInDish);
        } else if (cut instanceof Cut.Perfected better) {
            return new PerfectedSurface(plan, better, of(plan.withCut(better.panels()), sunInDish));
        }
        return new SmoothSurface(plan);
    }
}
