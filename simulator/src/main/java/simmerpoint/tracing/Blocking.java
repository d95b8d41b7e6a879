package simmerpoint.tracing;

import java.util.Optional;
import simmerpoint.dish.MirrorSurface;
import simmerpoint.dish.PanelTriangles;
import simmerpoint.geometry.Pose;
import simmerpoint.geometry.TriangleTree;
import simmerpoint.geometry.Vec;

/**
 * Panels that hide each other, from the sun or from the target. Whether that can happen is decided once per dish, by
 * {@link MirrorSurface#blockingPanels()}; where it can, every ray is tested against a tree of the panels.
 */
public final class Blocking {
    /** Rays start this share of the tree's reach away from their mirror point, so that rounding finds no false hit. */
    private static final double CLEARANCE = 1e-9;

    private static final double FAR = 1e6;

    private final TriangleTree tree;

    private Blocking(TriangleTree tree) {
        this.tree = tree;
    }

    static Blocking of(MirrorSurface surface, Pose dishInTarget) {
        Optional<PanelTriangles> panels = surface.blockingPanels();
        return new Blocking(panels.map(p -> new TriangleTree(moved(p.corners(), dishInTarget), p.owners()))
                .orElse(null));
    }

    private static double[] moved(double[] corners, Pose pose) {
        double[] out = new double[corners.length];
        for (int i = 0; i < corners.length; i += 3) {
            Vec v = pose.toParent(new Vec(corners[i], corners[i + 1], corners[i + 2]));
            out[i] = v.x();
            out[i + 1] = v.y();
            out[i + 2] = v.z();
        }
        return out;
    }

    /** Whether any panel of this dish can hide another. */
    public boolean possible() {
        return tree != null;
    }

    /** A test for one thread. */
    public Test test() {
        return new Test();
    }

    /** Tests rays of one thread. */
    public final class Test {
        private final TriangleTree.Query query = tree == null ? null : tree.new Query();

        /** Takes the watts from mirror points that another panel hides from the sun. */
        void dropHidden(LightBatch light) {
            for (int i = 0; i < light.capacity; i++) {
                if (light.watts[i] > 0 && light.panel[i] >= 0) {
                    boolean hidden = query.meets(
                            light.px[i],
                            light.py[i],
                            light.pz[i],
                            light.sx[i],
                            light.sy[i],
                            light.sz[i],
                            CLEARANCE,
                            FAR,
                            light.panel[i]);
                    light.watts[i] = hidden ? 0 : light.watts[i];
                }
            }
        }

        /**
         * Whether another panel stops ray {@code i} within {@code reach} lengths of the direction (dx, dy, dz).
         */
        public boolean stops(LightBatch light, int i, double dx, double dy, double dz, double reach) {
            return query != null
                    && query.meets(light.px[i], light.py[i], light.pz[i], dx, dy, dz, CLEARANCE, reach, light.panel[i]);
        }
    }
}
