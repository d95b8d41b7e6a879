package simmerpoint.tracing;

import java.util.Optional;
import simmerpoint.dish.MirrorSurface;
import simmerpoint.dish.PanelTriangles;
import simmerpoint.geometry.Pose;
import simmerpoint.geometry.TriangleTree;
import simmerpoint.geometry.Vec;

/**
 * Panels that shade each other from the sun or block each other's reflected light. Whether that can happen is decided once
 * per dish, by {@link MirrorSurface#blockingPanels()}; if so, every ray is tested against a tree of the panels.
 */
public final class Blocking {
    /** Rays start at this ray parameter, so that rounding gives no false hit near their own mirror point. */
    private static final double CLEARANCE = 1e-9;

    private static final double FAR = 1e6;

    private final TriangleTree tree;

    private Blocking(TriangleTree tree) {
        this.tree = tree;
    }

    static Blocking of(MirrorSurface surface, Pose dishInTarget) {
        Optional<PanelTriangles> panels = surface.blockingPanels();
        return new Blocking(panels.map(p -> new TriangleTree(transformed(p.corners(), dishInTarget), p.owners()))
                .orElse(null));
    }

    private static double[] transformed(double[] corners, Pose pose) {
        double[] out = new double[corners.length];
        for (int i = 0; i < corners.length; i += 3) {
            Vec v = pose.toParent(new Vec(corners[i], corners[i + 1], corners[i + 2]));
            out[i] = v.x();
            out[i + 1] = v.y();
            out[i + 2] = v.z();
        }
        return out;
    }

    /** Whether any panel of this dish can block another. */
    public boolean possible() {
        return tree != null;
    }

    /** A test for one thread. */
    public Test test() {
        return new Test();
    }

    /** Tests rays. Not thread-safe. */
    public final class Test {
        private final TriangleTree.Query query = tree == null ? null : tree.new Query();

        /** Sets the watts of mirror points to 0 that another panel shades from the sun. */
        void removeShaded(LightBatch light) {
            for (int i = 0; i < light.capacity; i++) {
                if (light.watts[i] > 0 && light.panel[i] >= 0) {
                    boolean shaded = blocks(light, i, light.sx[i], light.sy[i], light.sz[i], FAR);
                    light.watts[i] = shaded ? 0 : light.watts[i];
                }
            }
        }

        /**
         * Whether another panel blocks ray {@code i} along (dx, dy, dz) before the ray parameter {@code limit}.
         */
        public boolean blocks(LightBatch light, int i, double dx, double dy, double dz, double limit) {
            if (query == null) {
                return false;
            }
            if (light.turns == null) {
                return query.anyHit(
                        light.px[i], light.py[i], light.pz[i], dx, dy, dz, CLEARANCE, limit, light.panel[i]);
            }
            Vec p = light.turns.pointAtRest(i, light.px[i], light.py[i], light.pz[i]);
            Vec d = light.turns.directionAtRest(i, dx, dy, dz);
            return query.anyHit(p.x(), p.y(), p.z(), d.x(), d.y(), d.z(), CLEARANCE, limit, light.panel[i]);
        }
    }
}
