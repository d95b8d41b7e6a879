package simmerpoint.quantities;

import java.io.IOException;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;
import simmerpoint.geometry.Vec;
import simmerpoint.pan.Pan;
import simmerpoint.scenario.Scenario;
import simmerpoint.setup.Setup;
import simmerpoint.study.light.ReflectedLight;
import simmerpoint.study.light.ReflectedRay;
import simmerpoint.study.trace.Progress;

/** The reflected rays of a trace as CSV: a line each, with what a program needs that follows them further. */
public final class RaysTable {
    private static final Fields<ReflectedRay> RAY = Fields.<ReflectedRay>none()
            .number(
                    "x_m",
                    "where it leaves the mirror, towards the dish's upper edge",
                    r -> r.point().x())
            .number(
                    "y_m",
                    "the same to the right as seen from behind the dish",
                    r -> r.point().y())
            .number(
                    "z_m",
                    "the same along the axis towards the sun",
                    r -> r.point().z())
            .number(
                    "direction_x",
                    "unit vector the way it goes",
                    r -> r.direction().x())
            .number("direction_y", "the same", r -> r.direction().y())
            .number("direction_z", "the same", r -> r.direction().z())
            .number("power_W", "that it carries; all of them add up to reflected_power_W", ReflectedRay::watts)
            .whole("panel", "number as on the pieces to cut, from 1", r -> r.panel() + 1);

    private RaysTable() {}

    /**
     * Writes the rays as they are cast.
     *
     * @throws IOException if {@code out} takes no more
     */
    public static void write(ReflectedLight light, long seed, Appendable out, Progress progress) throws IOException {
        Scenario scenario = light.scenario();
        Supplier<Stream<ReflectedRay>> rays = () -> light.rays(progress);
        CsvWriter csv = new CsvWriter(out);
        csv.head("rays", scenario.title());
        csv.comment("seed: " + seed);
        notes(light).forEach(csv::comment);
        csv.table(RAY, rays);
    }

    private static List<String> notes(ReflectedLight light) {
        Scenario scenario = light.scenario();
        Setup setup = light.setup();
        String normal = vector(setup.target().rotation().apply(new Vec(0, 0, 1)));
        String middle = vector(setup.target().origin());
        String radius = number(scenario.target().radiusMetres());
        return List.of(
                "frame: origin in the middle of the dish; lengths in m; the dish as it points when aimed dead on",
                "focus: 0 0 " + number(scenario.dish().focalLengthMetres()),
                scenario.target() instanceof Pan pan
                        ? "pan: middle of its underside " + middle + "; upwards " + normal + "; radius " + radius
                                + "; height " + number(pan.heightMetres())
                        : "disc: middle " + middle + "; away from the dish " + normal + "; radius " + radius);
    }

    private static String vector(Vec v) {
        return number(v.x()) + " " + number(v.y()) + " " + number(v.z());
    }

    private static String number(double x) {
        return StableNumber.of(x, CsvWriter.DIGITS);
    }
}
