package simmerpoint.dish;

import simmerpoint.dish.mesh.Mesh;
import simmerpoint.units.RangeCheck;

/** How the paraboloid is cut into panels. */
public sealed interface Cut {
    /**
     * Sectors × rings of flat trapezoids, all four corners of each on the paraboloid.
     *
     * @param sectors number of sectors round the axis, at least 3
     * @param rings number of rings from hub to rim, at least 1
     * @param spacing where the rings' borders lie along the rib
     */
    record FlatRings(int sectors, int rings, RingSpacing spacing) implements Cut {
        /** Checks both counts. */
        public FlatRings {
            RangeCheck.require(sectors >= 3, "sectors", sectors, "3 or more");
            RangeCheck.require(rings >= 1, "rings", rings, "1 or more");
        }
    }

    /**
     * Panels bent along the ribs and straight from rib to rib: each exactly a parabolic cylinder of focal length
     * f·cos²(π/n).
     *
     * @param sectors number of strips round the axis, at least 3
     */
    record BentStrips(int sectors) implements Cut {
        /** Checks the count. */
        public BentStrips {
            RangeCheck.require(sectors >= 3, "sectors", sectors, "3 or more");
        }
    }

    /**
     * Small flat square mirrors that touch the paraboloid at their centres.
     *
     * @param tileMetres side of a tile, above 0
     */
    record SquareTiles(double tileMetres) implements Cut {
        /** Checks the side. */
        public SquareTiles {
            RangeCheck.require(tileMetres > 0, "tile", tileMetres, "above 0 m");
        }
    }

    /**
     * Small flat hexagonal mirrors that touch the paraboloid at their centres.
     *
     * @param tileMetres width of a tile across its flats, above 0
     */
    record HexagonTiles(double tileMetres) implements Cut {
        /** Checks the width. */
        public HexagonTiles {
            RangeCheck.require(tileMetres > 0, "tile", tileMetres, "above 0 m");
        }
    }

    /** The uncut paraboloid. */
    record Smooth() implements Cut {}

    /**
     * The panels of another cut made better than anyone could: what is lost by them is the difference. Each keeps its
     * outline in plan and its tilt.
     *
     * @param panels the cut; not a mesh, whose focus and gaps nobody knows
     * @param curved whether each panel is bent to the paraboloid itself
     * @param filled whether hub, gaps and bare edge are mirror too, each place in the surface that a panel there has
     */
    record Perfected(Cut panels, boolean curved, boolean filled) implements Cut {
        /** Refuses a mesh, and a cut that is perfected already. */
        public Perfected {
            if (panels == null || panels instanceof FromFile || panels instanceof Perfected) {
                throw new IllegalArgumentException("only our own cuts can be perfected, not " + panels);
            }
        }
    }

    /**
     * Flat polygons that somebody else drew, in the dish frame.
     *
     * @param mesh the polygons, m
     */
    record FromFile(Mesh mesh) implements Cut {}
}
