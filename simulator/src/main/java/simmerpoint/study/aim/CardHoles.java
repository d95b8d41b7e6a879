package simmerpoint.study.aim;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import simmerpoint.geometry.Vec;
import simmerpoint.study.light.ReflectedRay;

/**
 * Two round holes in a cloth over the mirror, one on each side of its middle.
 *
 * @param first middle of one, dish frame, m
 * @param second middle of the other
 * @param diameterMetres of each
 */
public record CardHoles(Vec first, Vec second, double diameterMetres) {
    /** Where they lie between the middle and the edge. */
    private static final double OUT = 0.75;

    /** As wide as a hand, m, or this share of the way from the middle to the edge. */
    private static final double HAND = 0.1;

    private static final double OF_REACH = 0.2;

    /** Fewer rays through a hole tell nothing. */
    private static final int FEWEST = 24;

    /**
     * Holes for a dish of which these rays come: side by side, else one above the other; empty where there is no mirror in such places.
     */
    static Optional<CardHoles> of(List<ReflectedRay> rays) {
        if (rays.isEmpty()) {
            return Optional.empty();
        }
        Vec middle = rays.stream()
                .map(ReflectedRay::point)
                .reduce(Vec.ZERO, Vec::plus)
                .times(1.0 / rays.size());
        return Stream.of(new Vec(0, 1, 0), new Vec(1, 0, 0))
                .map(along -> about(middle, along, rays))
                .filter(holes -> holes.rays(holes.first, rays).size() >= FEWEST
                        && holes.rays(holes.second, rays).size() >= FEWEST)
                .findFirst();
    }

    private static CardHoles about(Vec middle, Vec along, List<ReflectedRay> rays) {
        double reach = rays.stream()
                .mapToDouble(ray -> Math.abs(ray.point().minus(middle).dot(along)))
                .max()
                .orElse(0);
        Vec level = new Vec(middle.x(), middle.y(), 0);
        return new CardHoles(
                level.plus(along.times(OUT * reach)),
                level.minus(along.times(OUT * reach)),
                Math.min(HAND, OF_REACH * reach));
    }

    /** Whether they lie side by side; else one is above the other. */
    public boolean sideBySide() {
        return Math.abs(first.y() - second.y()) > Math.abs(first.x() - second.x());
    }

    /** From middle to middle, m. */
    public double apartMetres() {
        return first.minus(second).length();
    }

    /** Those that come through the hole about {@code middle}. */
    List<ReflectedRay> rays(Vec middle, List<ReflectedRay> rays) {
        return rays.stream()
                .filter(ray ->
                        Math.hypot(ray.point().x() - middle.x(), ray.point().y() - middle.y()) < diameterMetres / 2)
                .toList();
    }
}
