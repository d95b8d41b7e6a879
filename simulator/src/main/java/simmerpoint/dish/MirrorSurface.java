package simmerpoint.dish;

import java.util.List;
import java.util.Optional;
import simmerpoint.geometry.Point;
import simmerpoint.geometry.TriangleTree;

/**
 * A dish cut into panels, sampled uniformly over its outline. Every surface is exact: a flat panel is a plane polygon,
 * a bent strip a parabolic cylinder. Dish frame.
 */
public interface MirrorSurface {
    /** Area of the outline projected along the axis, m². */
    double outlineArea();

    /**
     * Area over which {@link #fill} spreads its places, in plan, m²: that of the outline, unless some lie outside it, which then have an
     * area of 0.
     */
    default double sampledArea() {
        return outlineArea();
    }

    /** Corners of the outline in plan, counter-clockwise, if it is a polygon about the axis; empty for a circle. */
    default List<Point> outlineCorners() {
        return List.of();
    }

    /** Area of the mirrors alone projected along the axis, m². */
    double apertureArea();

    /** Number of panels; a smooth dish is one. */
    int panels();

    /** Which zone each panel belongs to. */
    default PanelZones zones() {
        return PanelZones.ONE;
    }

    /** Largest angle between a panel's normal and the axis, rad. */
    double steepestSlope();

    /** Largest distance of a mirror point from the axis, m. */
    double radius();

    /** Height of the surface under the plan point (x, y), m, for points below which there is a mirror or could be. */
    double heightAt(double x, double y);

    /**
     * Number of equal sectors round the axis, if {@link #fill} gives each of them an equal share of its first numbers, sector after
     * sector; else 1.
     */
    default int sectors() {
        return 1;
    }

    /**
     * Second numbers of {@link #fill}, ascending, at which one ring round the axis ends and the next begins, that of the hub first; none
     * if there are no rings.
     */
    default double[] ringBorders() {
        return new double[0];
    }

    /**
     * Turns pairs of numbers evenly spread over the unit square into places evenly spread over the outline (in plan),
     * hub and gaps included; places outside the outline, if there are any, have an area of 0. The same pair gives nearly the same place whatever the cut, so that cuts can be compared.
     *
     * @param u first numbers, 0 to 1, best ascending: neighbours are then near each other in memory
     * @param v second numbers, 0 to 1
     * @param n how many
     * @param out receives the places
     */
    void fill(double[] u, double[] v, int n, MirrorPoints out);

    /**
     * Number of the panel whose mirror lies above the plan point (x, y), below 0 if there is none. Only surfaces of our own cuts know.
     *
     * @throws UnsupportedOperationException of other surfaces
     */
    default int panelAt(double x, double y) {
        throw new UnsupportedOperationException("panels of this surface are not found by place");
    }

    /**
     * The panels as triangles in the dish frame, owned by panels, where they can hide each other from the sun or from a target above the dish; empty for
     * surfaces that cannot. A surface that is part of a convex bowl cannot: light from a point of the bowl to a point
     * above it stays above it (derived here: the region above a convex surface is convex).
     */
    default Optional<TriangleTree> blockingPanels() {
        return Optional.empty();
    }
}
