package simmerpoint.truth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import simmerpoint.dish.Cut;
import simmerpoint.dish.CutTrait;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.cut.BentStrips;
import simmerpoint.dish.cut.Clipped;
import simmerpoint.dish.cut.FlatRings;
import simmerpoint.dish.cut.PlanRegion;
import simmerpoint.dish.cut.RingSpacing;
import simmerpoint.dish.cut.Smooth;
import simmerpoint.dish.cut.TileShape;
import simmerpoint.dish.cut.Tiles;
import simmerpoint.dish.mirror.Mirror;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.target.Ledger;

/** Light of dishes whose rim is not round. */
class RimTest {
    private static final long RAYS = 1L << 17;
    private static final PlanRegion ROUND = PlanRegion.circle(0.6);

    private static Scene scene(Cut cut, PlanRegion region) {
        double gap = cut.has(CutTrait.SEAMS) ? 0.003 : 0;
        DishPlan dish = new DishPlan(1.2, 0.55, 0.1, gap, Clipped.of(cut, region));
        return Scene.of(dish, Scene.pan(0.09, 0.1))
                .with(Mirror.plain(0.85, 6e-3))
                .elevation(Math.toRadians(50));
    }

    static Stream<Cut> cuts() {
        return Stream.of(
                new FlatRings(12, 3, RingSpacing.EQUAL_WIDTH),
                new BentStrips(10),
                new Tiles(TileShape.SQUARE, 0.07, Tiles.AtRim.CUT),
                new Smooth());
    }

    /** The two halves of a dish send what all of it sends, line by line: 4 standard errors of all three together. */
    @ParameterizedTest
    @MethodSource("cuts")
    void halvesAddUpToTheWhole(Cut cut) {
        Ledger whole = scene(cut, ROUND).trace(RAYS, 11).ledger();
        Ledger upper = scene(cut, ROUND.between(-Math.PI / 2, Math.PI / 2))
                .trace(RAYS, 12)
                .ledger();
        Ledger lower = scene(cut, ROUND.between(Math.PI / 2, 1.5 * Math.PI))
                .trace(RAYS, 13)
                .ledger();
        same(whole.outline(), upper.outline(), lower.outline());
        same(whole.gap(), upper.gap(), lower.gap());
        same(whole.incident(), upper.incident(), lower.incident());
        same(whole.shaded(), upper.shaded(), lower.shaded());
        same(whole.reflected(), upper.reflected(), lower.reflected());
        same(whole.caught(), upper.caught(), lower.caught());
        same(whole.underside(), upper.underside(), lower.underside());
        assertTrue(
                lower.caught().value() > upper.caught().value(),
                "the underside of a level pan looks down, to the lower half");
    }

    private static void same(Estimate whole, Estimate one, Estimate other) {
        double error = Math.sqrt(whole.standardError() * whole.standardError()
                + one.standardError() * one.standardError()
                + other.standardError() * other.standardError());
        assertEquals(whole.value(), one.value() + other.value(), 4 * error + 1e-9);
    }

    /** Closed form: parallel light on an area, all of it through the focus of a paraboloid; 4 standard errors. */
    @Test
    void aSquareDishSendsTheLightOfItsSquareThroughTheFocus() {
        PlanRegion square = PlanRegion.regular(0.6, 4, 0.8, 0.2);
        DishPlan dish = new DishPlan(1.2, 0.55, 0, 0, Clipped.of(new Smooth(), square));
        TraceResult result = Scene.of(dish, Scene.disc(0.002)).with(Scene.POINT).trace(RAYS, 3);
        assertEquals(0.64, result.outlineArea(), 1e-12);
        assertEquals(0.64, result.apertureArea(), 1e-12);
        Estimate caught = result.ledger().caught();
        assertEquals(640, caught.value(), 4 * caught.standardError() + 1e-9);
        assertEquals(0, result.ledger().missed().value(), 1e-9);
    }
}
