package simmerpoint.truth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import simmerpoint.dish.Cut;
import simmerpoint.dish.CutTrait;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.Zone;
import simmerpoint.dish.cut.BentStrips;
import simmerpoint.dish.cut.Clipped;
import simmerpoint.dish.cut.FlatRings;
import simmerpoint.dish.cut.PlanRegion;
import simmerpoint.dish.cut.RingSpacing;
import simmerpoint.dish.cut.Smooth;
import simmerpoint.dish.cut.Tiles;
import simmerpoint.dish.cut.Zoned;
import simmerpoint.dish.mirror.Mirror;
import simmerpoint.geometry.Direction;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.light.StoredLight;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.target.Ledger;
import simmerpoint.target.ZoneLight;

/** Dishes of several zones against dishes of one. Light: 4 standard errors of all that is compared. */
class ZonesTest {
    private static final long RAYS = 1L << 17;
    /** Light is summed in single precision, W of some 400. */
    private static final double ROUNDING = 1e-4;

    private static final double DIAMETER = 1.2;
    private static final double F = 0.55;
    private static final Mirror FILM = Mirror.plain(0.85, 5e-3);
    private static final Mirror FOIL = new Mirror("foil", 0.7, 0.2, 9e-3, 4e-3, 0.3, 25e-3, 0.05, 7e-3);

    private static DishPlan ring(double inner, double outer, Cut cut) {
        return new DishPlan(outer, F, inner, cut.has(CutTrait.SEAMS) ? 0.002 : 0, cut);
    }

    private static Zone zone(String name, DishPlan plan, Mirror mirror) {
        return new Zone(name, plan, Optional.ofNullable(mirror));
    }

    private static Scene scene(DishPlan dish) {
        return Scene.of(dish, Scene.pan(0.1, 0.1)).with(FILM).elevation(Math.toRadians(50));
    }

    private static DishPlan zoned(Zone... zones) {
        return new DishPlan(DIAMETER, F, 0.1, 0, new Zoned(List.of(zones)));
    }

    private static void same(Estimate one, Estimate other) {
        double error = Math.hypot(one.standardError(), other.standardError());
        assertEquals(one.value(), other.value(), 4 * error + 1e-9);
    }

    private static void same(Ledger one, Ledger other) {
        same(one.outline(), other.outline());
        same(one.gap(), other.gap());
        same(one.incident(), other.incident());
        same(one.shaded(), other.shaded());
        same(one.mirrorLoss(), other.mirrorLoss());
        same(one.scattered(), other.scattered());
        same(one.reflected(), other.reflected());
        same(one.caught(), other.caught());
        same(one.wall(), other.wall());
    }

    static Stream<Cut> cuts() {
        return Stream.of(new BentStrips(16), new Smooth());
    }

    /** A dish cut in two along a circle is the same dish: areas to 1e-9, every line of the ledger. */
    @ParameterizedTest
    @MethodSource("cuts")
    void zonesWithOneMirrorAreThePlainDish(Cut cut) {
        TraceResult plain = scene(ring(0.1, DIAMETER, cut)).trace(RAYS, 3);
        DishPlan two = zoned(zone("middle", ring(0.1, 0.7, cut), null), zone("rim", ring(0.7, DIAMETER, cut), FILM));
        TraceResult zoned = scene(two).trace(RAYS, 4);
        assertEquals(plain.outlineArea(), zoned.outlineArea(), 1e-9);
        assertEquals(plain.apertureArea(), zoned.apertureArea(), 1e-9);
        same(plain.ledger(), zoned.ledger());
    }

    /** Flat rings of equal width, cut where two of them meet. */
    @Test
    void ringsInTwoZonesAreThePlainRings() {
        DishPlan plain = new DishPlan(DIAMETER, F, 0.2, 0, new FlatRings(12, 4, RingSpacing.EQUAL_WIDTH));
        Cut half = new FlatRings(12, 2, RingSpacing.EQUAL_WIDTH);
        DishPlan two = new DishPlan(
                DIAMETER,
                F,
                0.2,
                0,
                new Zoned(List.of(
                        zone("middle", new DishPlan(0.7, F, 0.2, 0, half), null),
                        zone("rim", new DishPlan(DIAMETER, F, 0.7, 0, half), null))));
        TraceResult one = scene(plain).trace(RAYS, 5);
        TraceResult zoned = scene(two).trace(RAYS, 6);
        assertEquals(one.apertureArea(), zoned.apertureArea(), 1e-12);
        assertEquals(one.panels(), zoned.panels());
        same(one.ledger(), zoned.ledger());
    }

    /** Halves with mirrors of their own send what each half alone sends with that mirror. */
    @Test
    void eachZoneSendsWhatItSendsAlone() {
        Cut strips = new BentStrips(10);
        PlanRegion round = PlanRegion.circle(0.6);
        DishPlan upper = ring(0.1, DIAMETER, Clipped.of(strips, round.between(-Math.PI / 2, Math.PI / 2)));
        DishPlan lower = ring(0.1, DIAMETER, Clipped.of(strips, round.between(Math.PI / 2, 1.5 * Math.PI)));
        Ledger both = scene(zoned(zone("upper", upper, FILM), zone("lower", lower, FOIL)))
                .trace(RAYS, 7)
                .ledger();
        Ledger film = scene(upper).trace(RAYS, 8).ledger();
        Ledger foil = scene(lower).with(FOIL.withPanelTilt(0)).trace(RAYS, 9).ledger();
        ZoneLight first = both.zones().get(0);
        ZoneLight second = both.zones().get(1);
        same(film.incident(), first.incident());
        same(film.reflected(), first.reflected());
        same(film.caught(), first.caught());
        same(foil.incident(), second.incident());
        same(foil.reflected(), second.reflected());
        assertEquals(
                both.caught().value(), first.caught().value() + second.caught().value(), ROUNDING);
        assertEquals(
                both.incident().value(),
                first.incident().value() + second.incident().value(),
                1e-9);
        assertEquals(
                both.incident().value(),
                both.shaded().value()
                        + both.mirrorLoss().value()
                        + both.scattered().value()
                        + both.reflected().value(),
                ROUNDING);
    }

    /** Slope error, beam spread and wide share are those of the zone: caught as from that half alone, without tilts that chance draws. */
    @Test
    void errorsAreThoseOfTheZone() {
        Mirror rough = FOIL.withPanelTilt(0);
        DishPlan middle = ring(0.1, 0.8, new BentStrips(16));
        DishPlan rim = ring(0.8, DIAMETER, Tiles.square(0.05));
        Ledger both = scene(zoned(zone("middle", middle, FILM), zone("rim", rim, rough)))
                .trace(RAYS, 10)
                .ledger();
        same(
                scene(middle).trace(RAYS, 11).ledger().caught(),
                both.zones().get(0).caught());
        same(
                scene(rim).with(rough).trace(RAYS, 12).ledger().caught(),
                both.zones().get(1).caught());
    }

    /** A zone whose mirror reflects nothing is a dish without that zone, but for what its mirrors take up. */
    @Test
    void aBlackZoneIsNoZone() {
        Cut strips = new BentStrips(16);
        DishPlan two = zoned(
                zone("middle", ring(0.1, 0.7, strips), null),
                zone("rim", ring(0.7, DIAMETER, strips), Mirror.plain(0, 0)));
        Ledger black = scene(two).trace(RAYS, 13).ledger();
        Ledger small = scene(ring(0.1, 0.7, strips)).trace(RAYS, 14).ledger();
        same(small.reflected(), black.reflected());
        same(small.caught(), black.caught());
        same(small.underside(), black.underside());
        assertEquals(0, black.zones().get(1).reflected().value());
    }

    /** Tiles on a smooth dish: every place counts once, on the tile where there is one, and nothing is bare but the hub (closed form). */
    @Test
    void whatLiesUnderAnotherZoneCountsOnce() {
        DishPlan bowl = ring(0.1, DIAMETER, new Smooth());
        DishPlan patches = ring(0.7, DIAMETER, Tiles.square(0.05));
        TraceResult result = scene(zoned(zone("bowl", bowl, null), zone("patches", patches, FOIL)))
                .with(Scene.POINT)
                .elevation(Math.PI / 2)
                .trace(RAYS, 15);
        double outline = Math.PI * 0.36;
        double open = Math.PI * (0.36 - 0.0025);
        assertEquals(outline, result.outlineArea(), 1e-12);
        assertEquals(open, result.apertureArea(), 2e-5);
        Ledger ledger = result.ledger();
        assertEquals(
                1000 * outline, ledger.outline().value(), 4 * ledger.outline().standardError() + 1e-6);
        assertEquals(
                1000 * open, ledger.incident().value(), 4 * ledger.incident().standardError() + 1e-6);
        double tiles = patches.surface(Direction.Z).apertureArea();
        Estimate onTiles = ledger.zones().get(1).incident();
        assertEquals(1000 * tiles, onTiles.value(), 4 * onTiles.standardError());
    }

    /** Stored light, caught with one sampled error a ray, agrees with the trace zone by zone. */
    @Test
    void storedLightKnowsZones() {
        DishPlan two = zoned(
                zone("middle", ring(0.1, 0.8, new BentStrips(16)), FILM),
                zone("rim", ring(0.8, DIAMETER, Tiles.square(0.05)), FOIL));
        TraceOptions options =
                TraceOptions.defaults().withRays(RAYS).withSeed(3).withThreads(2);
        Scene scene = scene(two);
        Ledger traced = scene.trace(options).ledger();
        Ledger stored = StoredLight.cast(scene.scenario(), options.withSeed(3), Progress.NONE)
                .catchFor(scene.scenario(), Progress.NONE)
                .ledger();
        for (int z = 0; z < 2; z++) {
            same(traced.zones().get(z).incident(), stored.zones().get(z).incident());
            same(traced.zones().get(z).reflected(), stored.zones().get(z).reflected());
            same(traced.zones().get(z).caught(), stored.zones().get(z).caught());
        }
        assertTrue(traced.zones().get(1).caught().value() > 10);
    }
}
