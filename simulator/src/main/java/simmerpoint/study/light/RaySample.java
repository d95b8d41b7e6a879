package simmerpoint.study.light;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import simmerpoint.geometry.Pose;
import simmerpoint.geometry.Vec;
import simmerpoint.pan.Pan;
import simmerpoint.scenario.Scenario;
import simmerpoint.setup.Setup;
import simmerpoint.target.TargetIntersection;
import simmerpoint.tracing.ReflectedRays;

/** A few traced rays, errors of the mirror included, to be drawn again and again while the pan moves. Immutable. */
public final class RaySample {
    /** None at all. */
    public static final RaySample NONE = new RaySample(List.of());

    private static final double BEYOND = 1.3;
    private static final double BAND = 0.25;

    private final List<Ray> rays;

    /** Mirror point and unit directions to the sun and away, dish frame. */
    private record Ray(Vec point, Vec sun, Vec away) {}

    private RaySample(List<Ray> rays) {
        this.rays = List.copyOf(rays);
    }

    /** Of each of {@code most} level strips of the dish the ray nearest to its upright plane, if one is near it. */
    static RaySample of(List<ReflectedRays> batches, Pose inDish, double radius, int most) {
        Ray[] nearest = new Ray[most];
        for (ReflectedRays batch : batches) {
            for (int i = 0; i < batch.count(); i++) {
                Vec point = inDish.toParent(batch.point(i));
                int strip = (int) Math.floor((point.x() / radius + 1) / 2 * most);
                boolean here = strip >= 0 && strip < most && Math.abs(point.y()) < BAND * radius;
                if (here && (nearest[strip] == null || Math.abs(point.y()) < Math.abs(nearest[strip].point.y()))) {
                    nearest[strip] = new Ray(
                            point,
                            inDish.rotation().apply(batch.towardsSun(i)),
                            inDish.rotation().apply(batch.direction(i)));
                }
            }
        }
        List<Ray> kept = new ArrayList<>();
        for (Ray ray : nearest) {
            if (ray != null) {
                kept.add(ray);
            }
        }
        return new RaySample(kept);
    }

    /** Number of rays. */
    public int count() {
        return rays.size();
    }

    /** Where they go in {@code scenario}, whose dish and sun are those of the stored light. */
    public List<RayPath> paths(Scenario scenario) {
        Setup setup = scenario.setup();
        TargetIntersection end = new TargetIntersection(scenario.target());
        boolean shades = scenario.target() instanceof Pan pan && pan.castsShadow();
        Vec focus = new Vec(0, 0, scenario.dish().focalLengthMetres());
        return rays.stream().map(ray -> path(ray, setup, end, shades, focus)).toList();
    }

    private static RayPath path(Ray ray, Setup setup, TargetIntersection end, boolean shades, Vec focus) {
        Vec point = setup.dish().toParent(ray.point);
        Vec sun = setup.dish().rotation().apply(ray.sun);
        Vec away = setup.dish().rotation().apply(ray.away);
        if (shades) {
            double far = 100 * focus.z() + 100 * setup.target().origin().length();
            OptionalDouble before = reach(end, setup, point.plus(sun.times(far)), sun.times(-1));
            if (before.isPresent() && before.getAsDouble() < far) {
                Vec stop = point.plus(sun.times(far - before.getAsDouble()));
                return new RayPath(sun, point, stop, RayPath.Fate.SHADED);
            }
        }
        OptionalDouble reach = reach(end, setup, point, away);
        double length = reach.orElse(BEYOND * focus.minus(point).length());
        RayPath.Fate fate = reach.isPresent() ? RayPath.Fate.CAUGHT : RayPath.Fate.MISSED;
        return new RayPath(sun, point, point.plus(away.times(length)), fate);
    }

    private static OptionalDouble reach(TargetIntersection end, Setup setup, Vec from, Vec direction) {
        return end.distance(
                setup.target().fromParent(from),
                setup.target().rotation().inverse().apply(direction));
    }
}
