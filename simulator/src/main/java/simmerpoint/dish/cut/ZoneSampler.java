package simmerpoint.dish.cut;

import java.util.List;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.MirrorPoints;
import simmerpoint.dish.MirrorSurface;
import simmerpoint.dish.PanelOutline;
import simmerpoint.dish.Zone;
import simmerpoint.geometry.Direction;
import simmerpoint.geometry.Point;

/**
 * One zone of a dish: its surface, sampled from where the zones within it end. Second numbers are shares of the outline within a like
 * outline through the place (all our own cuts lay their places so), and what they give below a least one is left out.
 */
final class ZoneSampler {
    final MirrorSurface surface;
    /** The outline, and what lies within it. */
    final PlanRegion region;

    private final DishPlan plan;
    private final PlanRegion clip;
    private final int sides;
    private final double outer;
    private final double least;
    private final double inner2;

    ZoneSampler(Zone zone, List<Zone> all) {
        plan = zone.plan();
        surface = plan.surface(Direction.Z);
        outer = plan.radiusMetres();
        List<Point> corners = surface.outlineCorners();
        sides = corners.size();
        clip = plan.cut() instanceof Clipped clipped ? clipped.within(plan) : PlanRegion.circle(outer);
        region = corners.isEmpty() ? clip : clip.within(corners);
        double from = all.stream()
                .filter(other -> other.plan().hubMetres() < plan.hubMetres())
                .mapToDouble(other -> filled(other, sides))
                .max()
                .orElse(0);
        from = Math.min(from, plan.hubMetres() / 2);
        least = from * from / (outer * outer);
        double nearest = from * shrink();
        inner2 = nearest * nearest * (1 - 1e-12);
    }

    /**
     * Radius to which a zone with its hub fills an outline of so many sides about the axis, or a circle, m; 0 if it does not go all
     * round.
     */
    private static double filled(Zone zone, int alike) {
        if (zone.plan().cut() instanceof Clipped) {
            return 0;
        }
        int sides = zone.plan().surface(Direction.Z).outlineCorners().size();
        return zone.plan().radiusMetres() * (sides == 0 || sides == alike ? 1 : Math.cos(Math.PI / sides));
    }

    /** Distance of the sides of the outline from the axis ÷ that of its corners. */
    private double shrink() {
        return sides == 0 ? 1 : Math.cos(Math.PI / sides);
    }

    /** Area over which its places are spread, m². */
    double sampledArea() {
        return surface.sampledArea() * (1 - least);
    }

    /** Whether it samples places at that square of the distance from the axis. */
    boolean mayHold(double r2) {
        return r2 >= inner2 && r2 <= outer * outer;
    }

    /** Whether its outline and that of another have the same shape, so that second numbers tell which of two places is farther out. */
    boolean isLike(ZoneSampler other) {
        return sides == other.sides;
    }

    /** Whether it samples the place that a second number gives in another zone of the same shape. */
    boolean mayHoldLike(ZoneSampler other, double second) {
        double here = second * (other.outer * other.outer) / (outer * outer);
        return here >= least * (1 + 1e-12) && here < 1;
    }

    /** Whether what it samples may lie where another samples. */
    boolean mayMeet(ZoneSampler other) {
        double mine = Math.sqrt(least) * outer * (isLike(other) ? 1 : shrink());
        double others = Math.sqrt(other.least) * other.outer * (isLike(other) ? 1 : other.shrink());
        return mine < other.outer * (1 - 1e-12) && others < outer * (1 - 1e-12);
    }

    /** Fills places as {@link MirrorSurface#fill}; {@code v} is overwritten. */
    void fill(double[] u, double[] v, int n, MirrorPoints out) {
        for (int i = 0; least > 0 && i < n; i++) {
            v[i] = Math.min(Math.nextDown(1.0), least + (1 - least) * v[i]);
        }
        surface.fill(u, v, n, out);
    }

    /** Whether a place is one of those it samples, gaps as well. */
    boolean samples(double x, double y) {
        double v = second(x, y);
        return v >= least && v <= 1 && clip.contains(x, y);
    }

    /** The second number that gives a place. */
    private double second(double x, double y) {
        if (sides == 0) {
            return (x * x + y * y) / (outer * outer);
        }
        double half = Math.PI / sides;
        double bisector = (2 * Math.floor(Math.atan2(y, x) / (2 * half)) + 1) * half;
        double along = (x * Math.cos(bisector) + y * Math.sin(bisector)) / (outer * shrink());
        return along * along;
    }

    /** Whether one of its mirrors is there. */
    boolean covers(double x, double y) {
        return surface.panelAt(x, y) >= 0;
    }

    /** Its panels in plan. */
    List<PanelOutline> outlines() {
        return plan.outlines();
    }
}
