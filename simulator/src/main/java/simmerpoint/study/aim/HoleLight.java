package simmerpoint.study.aim;

import java.util.Comparator;
import java.util.List;
import simmerpoint.geometry.Vec;
import simmerpoint.study.light.ReflectedRay;

/** The light that comes through one hole of a cloth, on cards square to the axis. Its middle moves straight with the card's distance. */
final class HoleLight {
    private final List<ReflectedRay> rays;
    private final double watts;

    HoleLight(List<ReflectedRay> rays) {
        this.rays = rays;
        watts = rays.stream().mapToDouble(ReflectedRay::watts).sum();
    }

    /** All of it, W. */
    double watts() {
        return watts;
    }

    /** Its middle on a card so far from the middle of the dish. */
    Vec middle(double distance) {
        Vec sum = Vec.ZERO;
        for (ReflectedRay ray : rays) {
            sum = sum.plus(at(ray, distance).times(ray.watts()));
        }
        return sum.times(1 / watts);
    }

    /** Radius about its middle that holds {@code share} of it, m. */
    double radius(double distance, double share) {
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
