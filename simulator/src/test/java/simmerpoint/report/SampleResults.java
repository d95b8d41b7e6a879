package simmerpoint.report;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleBinaryOperator;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.cut.FlatRings;
import simmerpoint.dish.cut.RingSpacing;
import simmerpoint.dish.mirror.Mirror;
import simmerpoint.pan.Finish;
import simmerpoint.pan.Pan;
import simmerpoint.pan.Plane;
import simmerpoint.pan.Target;
import simmerpoint.sampling.Estimate;
import simmerpoint.scenario.Scenario;
import simmerpoint.setup.Aim;
import simmerpoint.setup.Stand;
import simmerpoint.study.trace.HeatResult;
import simmerpoint.study.trace.PanIrradiation;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.sun.SunShape;
import simmerpoint.sun.Sunlight;
import simmerpoint.target.CaughtByFace;
import simmerpoint.target.FluxMap;
import simmerpoint.target.FluxMaps;
import simmerpoint.target.Ledger;
import simmerpoint.target.Spot;
import simmerpoint.target.SpotEllipse;

/**
 * Results that look like traced ones but come from closed forms: two Gaussian spots of light on the target's plane, and
 * whatever wall light is asked for. Ledger and spot are computed from the maps, so that they agree with them.
 */
public final class SampleResults {
    private static final int CELLS = 120;
    static final double RELATIVE_ERROR = 0.01;

    private final Scenario scenario;
    private final double watts;
    private final double sigma;
    private final double shiftX;
    private final double wallWatts;

    private SampleResults(Scenario scenario, double watts, double sigma, double shiftX, double wallWatts) {
        this.scenario = scenario;
        this.watts = watts;
        this.sigma = sigma;
        this.shiftX = shiftX;
        this.wallWatts = wallWatts;
    }

    /** 24 cm pan, spot of 2 cm: nearly all caught. */
    public static TraceResult tight() {
        return new SampleResults(scenario("Tea kitchen at the lake hut", pan(), 850, 50), 640, 0.02, 0.003, 12).build();
    }

    /** 24 cm pan, spot of 14 cm: a good part missed. */
    public static TraceResult wide() {
        return new SampleResults(scenario("School yard, foil on card", pan(), 700, 62), 640, 0.14, 0, 55).build();
    }

    /** Low sun, lopsided, much light on the wall. */
    public static TraceResult lopsided() {
        return new SampleResults(scenario("Evening at the lake hut", pan(), 600, 25), 420, 0.035, -0.055, 190).build();
    }

    /** A bare disc of 20 cm. */
    public static TraceResult disc() {
        return new SampleResults(scenario("Plain optics", new Plane(0.2, 0), 1000, 50), 800, 0.012, 0, 0).build();
    }

    /** Nothing is caught. */
    public static TraceResult dark() {
        return new SampleResults(scenario("", pan(), 850, 50), 0, 0.02, 0, 0).build();
    }

    /** A tight spot with another title, spot size (m) and power (W). */
    public static TraceResult with(String title, double sigma, double watts) {
        return new SampleResults(scenario(title, pan(), 850, 50), watts, sigma, 0, watts * 0.02).build();
    }

    /** The tight spot with a precision that was asked for and not reached. */
    public static TraceResult imprecise() {
        TraceResult r = tight();
        return new TraceResult(
                r.scenario(),
                r.outlineArea(),
                r.apertureArea(),
                r.panels(),
                r.ledger(),
                r.spot(),
                r.maps(),
                r.faces(),
                r.heat(),
                r.seed(),
                r.replicates(),
                false,
                r.run());
    }

    /** The tight spot, run on other threads. */
    public static TraceResult onThreads(int threads, double seconds) {
        TraceResult r = tight();
        return new TraceResult(
                r.scenario(),
                r.outlineArea(),
                r.apertureArea(),
                r.panels(),
                r.ledger(),
                r.spot(),
                r.maps(),
                r.faces(),
                r.heat(),
                r.seed(),
                r.replicates(),
                true,
                new TraceResult.RunInfo(r.run().rays(), threads, seconds));
    }

    private static Pan pan() {
        return new Pan(0.24, 0.11, new Finish("black enamel", 0.92));
    }

    private static Scenario scenario(String title, Target target, double beam, double elevationDegrees) {
        return new Scenario(
                title,
                new DishPlan(1.2, 0.8, 0.06, 0, new FlatRings(24, 6, RingSpacing.EQUAL_WIDTH)),
                Mirror.plain(0.85, 0.005),
                new Sunlight(Math.toRadians(elevationDegrees), beam, new PointSun()),
                Aim.PERFECT,
                target,
                Stand.AT_FOCUS);
    }

    private TraceResult build() {
        double radius = scenario.target().radiusMetres();
        double half = 1.7 * radius;
        double cell = 2 * half / CELLS;
        FluxMap crossing = grid(CELLS, CELLS, cell, cell, -half, -half, this::flux);
        FluxMap caught =
                grid(CELLS, CELLS, cell, cell, -half, -half, (x, y) -> Math.hypot(x, y) < radius ? flux(x, y) : 0);
        Optional<FluxMap> wall = Optional.empty();
        Optional<FluxMap> lid = Optional.empty();
        if (scenario.target() instanceof Pan pan) {
            wall = Optional.of(wall(pan));
            lid = Optional.of(grid(60, 60, 2 * radius / 60, 2 * radius / 60, -radius, -radius, (x, y) -> 0));
        }
        FluxMaps maps = new FluxMaps(crossing, caught, wall, lid);
        return result(maps);
    }

    private double flux(double x, double y) {
        return 0.7 * gauss(x - shiftX, y, sigma, sigma * 0.8) * watts
                + 0.3 * gauss(x - shiftX * 1.6, y - 0.4 * sigma, sigma * 1.9, sigma * 1.3) * watts;
    }

    private static double gauss(double x, double y, double sx, double sy) {
        return Math.exp(-x * x / (2 * sx * sx) - y * y / (2 * sy * sy)) / (2 * Math.PI * sx * sy);
    }

    private FluxMap wall(Pan pan) {
        double r = pan.radiusMetres();
        double sweep = 2 * Math.PI * r;
        // Brightest on the side that faces away from the sun, where the dish is; fading upwards.
        double scale = wallWatts / (r * 2.0 * 0.03);
        return grid(
                120,
                18,
                sweep / 120,
                pan.heightMetres() / 18,
                0,
                0,
                (s, h) -> scale * Math.max(0, Math.cos(s / r)) * Math.exp(-h / 0.03));
    }

    private static FluxMap grid(int nx, int ny, double w, double h, double x0, double y0, DoubleBinaryOperator f) {
        double[] flux = new double[nx * ny];
        double[] se = new double[nx * ny];
        for (int j = 0; j < ny; j++) {
            for (int i = 0; i < nx; i++) {
                flux[j * nx + i] = f.applyAsDouble(x0 + (i + 0.5) * w, y0 + (j + 0.5) * h);
                se[j * nx + i] = RELATIVE_ERROR * flux[j * nx + i];
            }
        }
        return new FluxMap(nx, ny, w, h, x0, y0, flux, se);
    }

    private TraceResult result(FluxMaps maps) {
        double beam = scenario.sun().beamWattsPerSquareMetre();
        double gap = 0.0028 * beam;
        double underside = maps.caught().power();
        double wall = maps.wall().map(FluxMap::power).orElse(0.0);
        double caught = underside + wall;
        double reflected = Math.max(watts + wall, caught);
        double shaded = scenario.target() instanceof Pan ? 0.03 * beam : 0;
        double outline = gap + shaded + reflected / 0.83;
        double outlineArea = outline / beam;
        double direct = scenario.target() instanceof Pan ? 0.02 * beam : 0;
        double absorbed =
                scenario.target() instanceof Pan pan ? pan.finish().absorptance() * (caught + direct) : caught;
        Ledger ledger = new Ledger(
                Estimate.exact(outline),
                estimate(gap),
                Estimate.exact(outline - gap),
                estimate(shaded),
                estimate(reflected / 0.83 * 0.15),
                estimate(reflected / 0.83 * 0.02),
                estimate(reflected),
                estimate(reflected - caught),
                estimate(underside),
                estimate(wall),
                estimate(0),
                estimate(caught),
                Estimate.exact(direct),
                estimate(absorbed),
                Estimate.exact(0),
                Estimate.exact(0),
                List.of());
        CaughtByFace faces = new CaughtByFace(underside, 0.99, new double[] {wall}, new double[] {0.9 * wall}, 0, 1);
        return new TraceResult(
                scenario,
                outlineArea,
                outlineArea - 0.0028,
                144,
                ledger,
                spot(maps, caught / reflected, underside),
                maps,
                faces,
                scenario.cooking()
                        .map(kitchen -> new HeatResult(
                                kitchen,
                                PanIrradiation.absorbed(faces, scenario, kitchen)
                                        .scaledTo(absorbed),
                                estimate(kitchen.cooking()
                                        .cookingPowerWatts(PanIrradiation.absorbed(faces, scenario, kitchen)
                                                .scaledTo(absorbed))))),
                1,
                32,
                true,
                new TraceResult.RunInfo(262144, 2, 0.0173));
    }

    private Spot spot(FluxMaps maps, double intercept, double underside) {
        double area = Math.PI * Math.pow(scenario.target().radiusMetres(), 2);
        double peak = maps.caught().largest();
        boolean any = underside > 0;
        double nan = Double.NaN;
        return new Spot(
                estimate(intercept),
                estimate(underside / area / scenario.sun().beamWattsPerSquareMetre()),
                any ? estimate(0.9) : new Estimate(nan, nan),
                estimate(0.97 * peak),
                0.01,
                shiftX,
                0.002,
                any ? new Estimate(1.15 * shiftX, 0.00012) : new Estimate(nan, nan),
                any ? new Estimate(0.0009, 0.00011) : new Estimate(nan, nan),
                any ? Optional.of(estimate(1.3 * sigma)) : Optional.empty(),
                any ? Optional.of(estimate(2.7 * sigma)) : Optional.empty(),
                sigma < 0.1 && any ? Optional.of(estimate(3.3 * sigma)) : Optional.empty(),
                any ? Optional.of(new SpotEllipse(1.3 * sigma, 0.9 * sigma, 0.1)) : Optional.empty());
    }

    private static Estimate estimate(double value) {
        return new Estimate(value, 0.002 * Math.abs(value));
    }

    private record PointSun() implements SunShape {
        @Override
        public String describe() {
            return "uniform disc, half-angle 4.65 mrad";
        }

        @Override
        public double relativeRadiance(double angle) {
            return angle == 0 ? 1 : 0;
        }

        @Override
        public double density(double angle) {
            return 0;
        }

        @Override
        public double cumulative(double angle) {
            return 1;
        }

        @Override
        public double inverse(double u) {
            return 0;
        }

        @Override
        public double largestAngle() {
            return 0;
        }
    }
}
