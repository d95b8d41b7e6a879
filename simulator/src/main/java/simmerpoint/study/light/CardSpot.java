package simmerpoint.study.light;

import java.util.Comparator;
import java.util.List;
import simmerpoint.geometry.Vec;

/**
 * What part of a dish reflects, on cards square to its axis: what comes through a hole in a cloth, or from a single panel. Its middle moves
 * straight with the card's distance.
 */
public final class CardSpot {
    private final List<ReflectedRay> rays;
    private final double watts;

    /** The spot of those rays; dish frame. */
    public CardSpot(List<ReflectedRay> rays) {
        this.rays = rays;
        watts = rays.stream().mapToDouble(ReflectedRay::watts).sum();
    }

    /** All of it, W. */
    public double watts() {
        return watts;
    }

    /** Its middle on a card so far from the middle of the dish. */
    public Vec middle(double distance) {
        Vec sum = Vec.ZERO;
        for (ReflectedRay ray : rays) {
            sum = sum.plus(at(ray, distance).times(ray.watts()));
        }
        return sum.times(1 / watts);
    }

    /** Radius about its middle that holds {@code share} of it, m. */
    public double radius(double distance, double share) {
        Vec middle = middle(distance);
        double so = 0;
        double radius = 0;
        for (double[] one : byRadius(middle, distance)) {
            radius = one[0];
            so += one[1];
            if (so >= share * watts) {
                return radius;
            }
        }
        return radius;
    }

    /** Mean over the circle about its middle that holds {@code share} of it, W/m². */
    public double flux(double distance, double share) {
        double radius = radius(distance, share);
        return share * watts / (Math.PI * radius * radius);
    }

    private List<double[]> byRadius(Vec middle, double distance) {
        return rays.stream()
                .map(ray -> new double[] {at(ray, distance).minus(middle).length(), ray.watts()})
                .sorted(Comparator.comparingDouble(one -> one[0]))
                .toList();
    }

    private static Vec at(ReflectedRay ray, double distance) {
        double way = (distance - ray.point().z()) / ray.direction().z();
        return new Vec(
                ray.point().x() + way * ray.direction().x(),
                ray.point().y() + way * ray.direction().y(),
                0);
    }
}
