package simmerpoint.truth;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.cut.BentStrips;
import simmerpoint.dish.cut.FlatRings;
import simmerpoint.dish.mirror.Mirror;
import simmerpoint.pan.Plane;
import simmerpoint.sampling.Estimate;
import simmerpoint.setup.Stand;
import simmerpoint.study.trace.TraceResult;

/**
 * The tracer against quadrature over panels and sun disc, which shares no code with it: mirrors without slope error or
 * spread, a bare disc, 2^18 rays. Bound: 4 standard errors plus 1e-4 of the reflected light, five times what the
 * quadrature itself is sure of. The dishes' ribs stand at angles 2πk/n from +x.
 */
class QuadratureAgreementTest {
    private static final long RAYS = 1L << 18;
    private static final double ALLOWANCE = 1e-4;

    /** One arrangement of dish, sun and disc. */
    record Arrangement(String name, Scene scene) {
        @Override
        public String toString() {
            return name;
        }
    }

    static Stream<Arrangement> arrangements() {
        Scene rings = Scene.of(Scene.rings(1.2, 0.8, 0.06, 24, 6), Scene.disc(0.03));
        Scene strips = Scene.of(Scene.strips(1.2, 0.8, 0.06, 24), Scene.disc(0.03));
        Scene smooth = Scene.of(Scene.smooth(1.2, 0.8, 0.06), Scene.disc(0.004));
        return Stream.of(
                        of("flat rings", rings),
                        of(
                                "flat rings, few and large",
                                rings.with(Scene.rings(1.2, 0.5, 0, 8, 2)).with(Scene.disc(0.12))),
                        of(
                                "flat rings, pulled back, leaning",
                                rings.pullBack(0.1).with(new Plane(0.16, 0.5))),
                        of("flat rings, drift", rings.drift(0.0349066, -0.01)),
                        of(
                                "flat rings, turn about a mount",
                                rings.turn(0.02, 0.015, 0.05).with(Scene.disc(0.06))),
                        of("bent strips", strips),
                        of(
                                "bent strips, few",
                                strips.with(Scene.strips(1.2, 0.5, 0.1, 9)).with(Scene.disc(0.08))),
                        of(
                                "bent strips, pulled back, leaning",
                                strips.pullBack(0.15).with(new Plane(0.2, -0.6))),
                        of(
                                "bent strips, drift and turn",
                                strips.drift(-0.02, 0.01).turn(0.01, -0.02, 0.1).with(Scene.disc(0.07))),
                        of("smooth", smooth),
                        of("smooth, before the focus", smooth.pullBack(-0.05).with(Scene.disc(0.03))),
                        of("smooth, drift", smooth.drift(0.005, 0.01).with(Scene.disc(0.012))),
                        of(
                                "smooth, all moves, leaning",
                                smooth.elevation(0.9)
                                        .with(new Stand(0.02, 0.03, -0.02, 0.01))
                                        .with(new Plane(0.08, 0.4))),
                        of("smooth, turn", smooth.turn(-0.01, 0.004, 0.2).with(Scene.disc(0.02))))
                .map(a -> new Arrangement(a.name(), a.scene().with(Mirror.plain(0.85, 0))));
    }

    private static Arrangement of(String name, Scene scene) {
        return new Arrangement(name, scene);
    }

    @ParameterizedTest
    @MethodSource("arrangements")
    void tracerAgrees(Arrangement arrangement) {
        Scene scene = arrangement.scene();
        TraceResult result = scene.trace(RAYS, 11);
        double radius = scene.target().radiusMetres();
        Within light = integrate(scene, radius);
        double watts = scene.beam() * scene.mirror().reflectance();
        double reflected = watts * light.reflected();
        Check.near("reflected", reflected, result.ledger().reflected(), ALLOWANCE * reflected);
        Check.near("caught", watts * light.within()[0], result.ledger().caught(), ALLOWANCE * reflected);
        Check.near("intercept", light.share(0), result.spot().interceptFactor(), ALLOWANCE);
        radiusHolds(scene, 0.50, result.spot().radius50());
        radiusHolds(scene, 0.90, result.spot().radius90());
        radiusHolds(scene, 0.95, result.spot().radius95());
    }

    /** The share within the radius, less and more 4 of its standard errors, lies below and above the wanted one. */
    private static void radiusHolds(Scene scene, double share, Optional<Estimate> traced) {
        double r = traced.orElseThrow().value();
        double slack = 4 * traced.orElseThrow().standardError();
        Within light = integrate(scene, r - slack, r, r + slack);
        assertTrue(
                light.share(0) <= share + ALLOWANCE && light.share(2) >= share - ALLOWANCE,
                () -> String.format(
                        "within %.6f m ± %.2g m lies %.6f of the light, not %.2f",
                        r, slack / 4, light.share(1), share));
    }

    private static Within integrate(Scene scene, double... radii) {
        double lean = scene.target() instanceof Plane plane ? plane.leanRadians() : 0;
        Bench bench = Bench.of(scene, lean);
        DishPlan dish = scene.dish();
        double d = dish.diameterMetres();
        double f = dish.focalLengthMetres();
        double hub = dish.hubMetres();
        if (dish.cut() instanceof FlatRings cut) {
            return FlatPanelQuadrature.rings(d, f, hub, cut.sectors(), cut.rings())
                    .integrate(bench, Scene.SUN, 16, radii);
        }
        if (dish.cut() instanceof BentStrips cut) {
            return new StripQuadrature(d, f, hub, cut.sectors()).integrate(bench, Scene.SUN, 8, 40, radii);
        }
        return new SmoothQuadrature(d, f, hub).integrate(bench, Scene.SUN, 12, 96, 32, radii);
    }
}
