package simmerpoint.truth;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.RandomDistribution;
import simmerpoint.dish.Cut;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.cut.BentStrips;
import simmerpoint.dish.cut.FlatRings;
import simmerpoint.dish.cut.FromFile;
import simmerpoint.dish.cut.RingSpacing;
import simmerpoint.dish.cut.Smooth;
import simmerpoint.dish.cut.Tiles;
import simmerpoint.dish.mirror.Mirror;
import simmerpoint.geometry.Vec;
import simmerpoint.pan.Finish;
import simmerpoint.pan.Pan;
import simmerpoint.pan.Plane;
import simmerpoint.pan.Target;
import simmerpoint.setup.Aim;
import simmerpoint.setup.Stand;
import simmerpoint.sun.GaussianSun;
import simmerpoint.sun.LimbDarkenedSun;
import simmerpoint.sun.SunShape;
import simmerpoint.sun.UniformDiscSun;

/** Scenes over wide ranges: every cut, pans and discs clear of the mirror, off-axis light, every flaw of a mirror. */
final class AnyScenes {
    private AnyScenes() {}

    static Arbitrary<Scene> all() {
        return dishes().flatMap(dish -> Combinators.combine(
                        mirrors(),
                        between(0.1, Math.PI / 2),
                        between(100, 1100),
                        shapes(),
                        aims(dish.focalLengthMetres()),
                        targets(dish.diameterMetres()),
                        stands(dish.diameterMetres()))
                .as((mirror, elevation, beam, shape, aim, target, stand) ->
                        new Scene(dish, mirror, elevation, beam, shape, aim, target, stand)));
    }

    /** Evenly between the two, and now and then one of them exactly. */
    private static Arbitrary<Double> between(double from, double to) {
        return Arbitraries.integers()
                .between(-1, 21)
                .withDistribution(RandomDistribution.uniform())
                .withoutEdgeCases()
                .flatMap(whole -> Arbitraries.doubles()
                        .between(0, 1)
                        .ofScale(6)
                        .withDistribution(RandomDistribution.uniform())
                        .withoutEdgeCases()
                        .map(part -> Math.max(0, Math.min(1, (whole + part) / 21))))
                .map(u -> from + u * (to - from));
    }

    static Arbitrary<DishPlan> dishes() {
        Arbitrary<Double> diameters = between(Math.log(0.2), Math.log(5)).map(Math::exp);
        return diameters.flatMap(d -> Combinators.combine(
                        between(0.42, 1.5), between(0, 0.3), between(0, 0.003), cuts(d))
                .as((ratio, hub, gap, cut) ->
                        new DishPlan(d, ratio * d, hub * d, cut instanceof Smooth ? 0 : gap * d, cut)));
    }

    private static Arbitrary<Cut> cuts(double d) {
        Arbitrary<Integer> sectors = Arbitraries.integers().between(3, 40);
        Arbitrary<Cut> rings = Combinators.combine(
                        sectors, Arbitraries.integers().between(1, 12), Arbitraries.of(RingSpacing.class))
                .as(FlatRings::new);
        Arbitrary<Double> sides = between(d / 30, d / 8);
        return Arbitraries.oneOf(
                rings,
                sectors.map(BentStrips::new),
                sides.map(Tiles::square),
                sides.map(Tiles::hexagon),
                Arbitraries.just(new Smooth()),
                between(0.02, 0.2).map(w -> new FromFile(Tile.mesh(tile(d, w * d)))));
    }

    private static Vec[] tile(double d, double side) {
        return Tile.tangent(d, 12, side);
    }

    private static Arbitrary<Mirror> mirrors() {
        return Combinators.combine(
                        between(0.3, 1),
                        between(0, 0.5),
                        between(0, 0.03),
                        between(0, 0.02),
                        between(0, 0.5),
                        between(0, 0.06),
                        between(0, 0.4),
                        between(0, 0.02))
                .as((rho, scattered, slope, spread, wide, wideSpread, dust, tilt) ->
                        new Mirror("own figures", rho, scattered, slope, spread, wide, wideSpread, dust, tilt));
    }

    private static Arbitrary<SunShape> shapes() {
        return Arbitraries.of(
                new UniformDiscSun(4.65e-3), new LimbDarkenedSun(4.65e-3), new GaussianSun(3e-3), Scene.POINT);
    }

    private static Arbitrary<Aim> aims(double focal) {
        Arbitrary<Double> angle = between(-0.08, 0.08);
        return Combinators.combine(
                        angle,
                        angle,
                        angle,
                        angle,
                        between(0, 0.01),
                        between(0, 0.3),
                        Arbitraries.of(Aim.PanCarrier.class))
                .as((up, side, driftUp, driftSide, jitter, mount, carrier) ->
                        new Aim(up, side, driftUp, driftSide, jitter, mount * focal, carrier));
    }

    private static Arbitrary<Target> targets(double d) {
        Finish finish = new Finish("black enamel", 0.9);
        Arbitrary<Target> pans = Combinators.combine(between(0.05, 0.3), between(0.02, 0.3))
                .as((wide, high) -> new Pan(wide * d, high * d, finish));
        Arbitrary<Target> planes = Combinators.combine(between(0.01, 0.5), between(-0.8, 0.8))
                .as((wide, lean) -> new Plane(wide * d, lean));
        return Arbitraries.oneOf(pans, planes);
    }

    private static Arbitrary<Stand> stands(double d) {
        Arbitrary<Double> move = between(-0.05, 0.05).map(u -> u * d);
        return Combinators.combine(move, move, move, move).as(Stand::new);
    }

    /** The same scene with every length times {@code k}. */
    static Scene scaled(Scene s, double k) {
        DishPlan dish = s.dish();
        DishPlan bigger = new DishPlan(
                k * dish.diameterMetres(),
                k * dish.focalLengthMetres(),
                k * dish.hubMetres(),
                k * dish.gapMetres(),
                scaled(dish.cut(), k));
        Aim aim = s.aim();
        Aim farther = new Aim(
                aim.turnUpRadians(),
                aim.turnSideRadians(),
                aim.driftUpRadians(),
                aim.driftSideRadians(),
                aim.jitterRadians(),
                k * aim.mountMetres(),
                aim.panCarriedBy());
        Stand stand = s.stand();
        Stand moved = new Stand(
                k * stand.pullBackMetres(), k * stand.slideMetres(), k * stand.raiseMetres(), k * stand.sideMetres());
        return s.with(bigger).with(farther).with(moved).with(scaled(s.target(), k));
    }

    private static Cut scaled(Cut cut, double k) {
        if (cut instanceof Tiles tiles) {
            return new Tiles(tiles.shape(), k * tiles.tileMetres(), tiles.atRim());
        }
        if (cut instanceof FromFile file) {
            return new FromFile(Tile.scaled(file.mesh(), k));
        }
        return cut;
    }

    private static Target scaled(Target target, double k) {
        return target instanceof Pan pan
                ? new Pan(k * pan.diameterMetres(), k * pan.heightMetres(), pan.finish())
                : new Plane(2 * k * target.radiusMetres(), ((Plane) target).leanRadians());
    }
}
