package simmerpoint.truth;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.mirror.Mirror;
import simmerpoint.geometry.Vec;
import simmerpoint.study.trace.TraceResult;

/** What must change nothing but noise. Bounds: 5 standard errors of the difference, see Check. */
class SymmetryProperties {
    private static final long RAYS = 1L << 14;

    private static List<Vec[]> fourTiles() {
        List<Vec[]> tiles = new ArrayList<>();
        tiles.add(Tile.tangent(0.6, 20, 0.12));
        tiles.add(Tile.turned(Tile.tangent(0.6, 30, 0.08), 1.1));
        tiles.add(Tile.turned(Tile.tangent(0.6, 45, 0.15), 2.5));
        tiles.add(Tile.turned(Tile.tangent(0.6, 38, 0.10), 4.0));
        return tiles;
    }

    private static Scene of(List<Vec[]> tiles) {
        return Scene.of(Scene.mesh(1.2, 0.6, Tile.mesh(tiles)), Scene.disc(0.05))
                .with(Mirror.plain(0.8, 4e-3));
    }

    private static void same(TraceResult a, TraceResult b) {
        Check.same("incident", a.ledger().incident(), b.ledger().incident(), 1e-9);
        Check.same("caught", a.ledger().caught(), b.ledger().caught(), 1e-9);
        Check.same(
                "radius", a.spot().radius50().orElseThrow(), b.spot().radius50().orElseThrow(), 1e-9);
        Check.same(
                "radius", a.spot().radius90().orElseThrow(), b.spot().radius90().orElseThrow(), 1e-9);
    }

    /** Mirrors and sun turned together about the axis: the disc is round, so it catches the same. */
    @Property(seed = "111", tries = 8, shrinking = ShrinkingMode.OFF)
    void turningDishAndSunAboutTheAxisChangesNothing(
            @ForAll @Scale(4) @DoubleRange(min = 0.1, max = 6.2) double angle,
            @ForAll @Scale(4) @DoubleRange(min = -0.04, max = 0.04) double up,
            @ForAll @Scale(4) @DoubleRange(min = -0.04, max = 0.04) double side) {
        TraceResult a = of(fourTiles()).drift(up, side).trace(RAYS, 81);
        List<Vec[]> turned =
                fourTiles().stream().map(t -> Tile.turned(t, angle)).toList();
        double c = Math.cos(angle);
        double s = Math.sin(angle);
        TraceResult b = of(turned).drift(c * up - s * side, s * up + c * side).trace(RAYS, 82);
        same(a, b);
        double x = a.spot().centroidX().value();
        double y = a.spot().centroidY().value();
        double error = Math.hypot(
                a.spot().centroidX().standardError(), a.spot().centroidY().standardError());
        Check.near("x", c * x - s * y, b.spot().centroidX().value(), 1.5 * error, 1e-6);
        Check.near("y", s * x + c * y, b.spot().centroidY().value(), 1.5 * error, 1e-6);
    }

    /** One mirror or its two halves without a saw cut between them: the same light. */
    @Property(seed = "112", tries = 8, shrinking = ShrinkingMode.OFF)
    void cuttingAPanelInTwoChangesNothing(
            @ForAll @Scale(4) @DoubleRange(min = 0.05, max = 0.95) double share,
            @ForAll @IntRange(min = 0, max = 3) int which) {
        List<Vec[]> tiles = fourTiles();
        List<Vec[]> halves = Tile.cut(tiles.remove(which), share);
        tiles.addAll(halves);
        TraceResult whole = of(fourTiles()).drift(0.01, 0.02).trace(RAYS, 83);
        TraceResult cut = of(tiles).drift(0.01, 0.02).trace(RAYS, 84);
        assertEquals(whole.apertureArea(), cut.apertureArea(), 1e-12);
        assertEquals(whole.panels() + 1, cut.panels());
        same(whole, cut);
        Check.same("x", whole.spot().centroidX(), cut.spot().centroidX(), 1e-9);
        Check.same("y", whole.spot().centroidY(), cut.spot().centroidY(), 1e-9);
    }

    /** Sun drifted to one side or as far to the other: mirror images. */
    @Property(seed = "113", tries = 8, shrinking = ShrinkingMode.OFF)
    void driftToTheOtherSideMirrorsTheSpot(
            @ForAll @Scale(4) @DoubleRange(min = 0.002, max = 0.06) double side,
            @ForAll @Scale(4) @DoubleRange(min = -0.03, max = 0.03) double up,
            @ForAll @IntRange(min = 2, max = 16) int half) {
        for (DishPlan dish : List.of(
                Scene.rings(1.2, 0.8, 0.06, 2 * half, 4),
                Scene.strips(1.2, 0.8, 0.06, 2 * half),
                Scene.smooth(1.2, 0.8, 0.06))) {
            Scene scene = Scene.of(dish, Scene.pan(0.12, 0.1))
                    .with(Mirror.plain(0.8, 4e-3))
                    .elevation(0.8);
            mirrored(
                    scene.drift(up, side).trace(RAYS, 85),
                    scene.drift(up, -side).trace(RAYS, 86));
            mirrored(
                    scene.turn(up, side, 0.1).trace(RAYS, 87),
                    scene.turn(up, -side, 0.1).trace(RAYS, 88));
        }
    }

    private static void mirrored(TraceResult a, TraceResult b) {
        Check.same("caught", a.ledger().caught(), b.ledger().caught(), 1e-6);
        Check.same("wall", a.ledger().wall(), b.ledger().wall(), 1e-6);
        Check.same("shaded", a.ledger().shaded(), b.ledger().shaded(), 1e-6);
        if (a.ledger().underside().value() > 10) {
            Check.same("x", a.spot().centroidX(), b.spot().centroidX(), 1e-6);
            Check.same("y", a.spot().centroidY(), b.spot().centroidY().times(-1), 1e-6);
        }
    }
}
