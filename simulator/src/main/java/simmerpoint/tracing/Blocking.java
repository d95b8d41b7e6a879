package simmerpoint.tracing;

import simmerpoint.dish.MirrorSurface;
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
    private final Pose targetInDish;

    private Blocking(TriangleTree tree, Pose targetInDish) {
        this.tree = tree;
        this.targetInDish = targetInDish;
    }

    static Blocking of(MirrorSurface surface, Pose dishInTarget) {
        return new Blocking(surface.blockingPanels().orElse(null), dishInTarget.inverse());
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
            Vec p = new Vec(light.px[i], light.py[i], light.pz[i]);
            Vec d = new Vec(dx, dy, dz);
            if (light.turns != null) {
                p = light.turns.pointAtRest(i, p.x(), p.y(), p.z());
                d = light.turns.directionAtRest(i, dx, dy, dz);
            }
            p = targetInDish.toParent(p);
            d = targetInDish.rotation().apply(d);
            return query.anyHit(p.x(), p.y(), p.z(), d.x(), d.y(), d.z(), CLEARANCE, limit, light.panel[i]);
        }
    }
}
