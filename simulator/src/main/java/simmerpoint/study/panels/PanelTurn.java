package simmerpoint.study.panels;

import simmerpoint.dish.PanelOutline;
import simmerpoint.geometry.Vec;

/**
 * How a panel must be turned, as somebody does it who stands before the dish with wedges in hand. Both angles are small.
 *
 * @param outerEdgeUp by which its edge away from the dish's middle must rise towards the sun, rad; below 0 to sink
 * @param sideEdgeUp by which the edge that comes first anticlockwise, seen from the sun, must rise, rad
 * @param outerLiftMetres the same at that edge, with the opposite edge as hinge, m
 * @param sideLiftMetres likewise
 */
public record PanelTurn(double outerEdgeUp, double sideEdgeUp, double outerLiftMetres, double sideLiftMetres) {
    /** Nearer to the axis than this no direction leads outwards, m. */
    private static final double AT_AXIS = 1e-6;

    /**
     * Of a panel whose normal must change. Lifting an edge by φ turns the normal away from it by φ.
     *
     * @param middle of the panel, dish frame, m
     * @param normal unit
     * @param change of the normal, across it, rad
     * @param outline of the panel
     */
    static PanelTurn of(Vec middle, Vec normal, Vec change, PanelOutline outline) {
        double far = Math.hypot(middle.x(), middle.y());
        Vec out = far > AT_AXIS ? new Vec(middle.x() / far, middle.y() / far, 0) : new Vec(1, 0, 0);
        Vec outward = across(out, normal);
        Vec side = normal.cross(outward);
        double outer = -change.dot(outward);
        double sideways = -change.dot(side);
        return new PanelTurn(outer, sideways, outer * extent(outline, outward), sideways * extent(outline, side));
    }

    private static Vec across(Vec direction, Vec normal) {
        Vec in = direction.minus(normal.times(direction.dot(normal)));
        return in.times(1 / in.length());
    }

    private static double extent(PanelOutline outline, Vec direction) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (Vec corner : outline.edge()) {
            double along = corner.dot(direction);
            least = Math.min(least, along);
            most = Math.max(most, along);
        }
        return most - least;
    }
}
