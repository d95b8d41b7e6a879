package simmerpoint.dish.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import simmerpoint.dish.Cut;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.cut.BentStrips;
import simmerpoint.dish.cut.FlatRings;
import simmerpoint.dish.cut.RingSpacing;
import simmerpoint.dish.cut.Smooth;
import simmerpoint.dish.cut.Tiles;

/** What holds for every shape error on every cut that can have it. */
class DeformationTest {
    private static final double RIM = 0.6;
    private static final double ELEVATION = 0.7;
    private static final double SIZE = 0.003;
    private static final List<Cut> CUTS =
            List.of(new BentStrips(9), new FlatRings(10, 5, RingSpacing.EQUAL_WIDTH), new Smooth(), Tiles.square(0.05));

    private static DishPlan plan(Cut cut) {
        return new DishPlan(2 * RIM, 0.65, 0.08, 0, cut);
    }

    static Stream<Arguments> errorsOfCuts() {
        return CUTS.stream()
                .flatMap(cut -> Stream.of(ShapeError.values())
                        .filter(error -> cut.has(error.trait()))
                        .map(error -> Arguments.of(error, cut)));
    }

    private static Deformation of(ShapeError error, Cut cut) {
        return ShapeErrors.NONE.with(error, SIZE).deformation(plan(cut), ELEVATION);
    }

    /** Slopes are those of the heights, by differences over a micrometre; borders of panels, where they jump, are kept clear of. */
    @ParameterizedTest
    @MethodSource("errorsOfCuts")
    void slopesAreThoseOfTheHeights(ShapeError error, Cut cut) {
        Deformation deformation = of(error, cut);
        double step = 1e-6;
        SplittableRandom random = new SplittableRandom(8);
        int tried = 0;
        while (tried < 300) {
            double x = random.nextDouble(-0.55, 0.55);
            double y = random.nextDouble(-0.55, 0.55);
            if (!(Math.hypot(x, y) < 0.55 && Math.hypot(x, y) > 0.05) || nearBorder(x, y, cut)) {
                continue;
            }
            tried++;
            Displacement at = deformation.at(x, y);
            double slopeX = (deformation.at(x + step, y).height()
                            - deformation.at(x - step, y).height())
                    / (2 * step);
            double slopeY = (deformation.at(x, y + step).height()
                            - deformation.at(x, y - step).height())
                    / (2 * step);
            assertEquals(slopeX, at.slopeX(), 1e-8);
            assertEquals(slopeY, at.slopeY(), 1e-8);
        }
    }

    private static boolean nearBorder(double x, double y, Cut cut) {
        if (cut.ribs(plan(cut)).isEmpty()) {
            return false;
        }
        Sectors sectors = new Sectors(cut.ribs(plan(cut)).get().sectors());
        int k = sectors.at(x, y);
        double along = x * sectors.cos[k] + y * sectors.sin[k];
        double across = y * sectors.cos[k] - x * sectors.sin[k];
        double r = along / sectors.cosHalf;
        boolean nearRing = Stream.of(cut.ribs(plan(cut)).get().borders())
                .flatMapToDouble(java.util.Arrays::stream)
                .anyMatch(border -> Math.abs(r - border) < 1e-4);
        return nearRing || along * sectors.tanHalf - Math.abs(across) < 1e-4;
    }

    /** The steepest place that is told is at least as steep as any that is found, and not twice as steep. */
    @ParameterizedTest
    @MethodSource("errorsOfCuts")
    void steepestIsThat(ShapeError error, Cut cut) {
        Deformation deformation = of(error, cut);
        SplittableRandom random = new SplittableRandom(3);
        double most = 0;
        for (int i = 0; i < 4000; i++) {
            double r = random.nextDouble(0.04, RIM * Math.cos(Math.PI / 9));
            double angle = random.nextDouble(2 * Math.PI);
            Displacement at = deformation.at(r * Math.cos(angle), r * Math.sin(angle));
            most = Math.max(most, Math.hypot(at.slopeX(), at.slopeY()));
        }
        double told = deformation.steepest(0.04, RIM);
        assertTrue(told > 0.98 * most && told < 2 * most, told + " and " + most);
    }

    /** Twice the error moves every place twice as far, and two errors move it by the sum of both. */
    @ParameterizedTest
    @MethodSource("errorsOfCuts")
    void errorsAdd(ShapeError error, Cut cut) {
        ShapeErrors one = ShapeErrors.NONE.with(error, SIZE);
        DishPlan plan = plan(cut);
        Deformation once = one.deformation(plan, ELEVATION);
        Deformation twice = one.with(error, 2 * SIZE).deformation(plan, ELEVATION);
        ShapeError other = error == ShapeError.TWIST ? ShapeError.SPRINGBACK : ShapeError.TWIST;
        Deformation alone = of(other, cut);
        Deformation both = one.with(other, SIZE).deformation(plan, ELEVATION);
        for (double x = -0.5; x < 0.5; x += 0.083) {
            assertEquals(2 * once.at(x, 0.1).height(), twice.at(x, 0.1).height(), 1e-15);
            assertEquals(
                    once.at(x, 0.1).height() + alone.at(x, 0.1).height(),
                    both.at(x, 0.1).height(),
                    1e-15);
            assertEquals(
                    once.at(x, 0.1).slopeX() + alone.at(x, 0.1).slopeX(),
                    both.at(x, 0.1).slopeX(),
                    1e-14);
        }
    }

    /** Ribs and axis stay where they are under errors of the sheet alone. */
    @Test
    void sheetIsHeldByTheRibs() {
        for (ShapeError error : List.of(ShapeError.SHEET_SAG, ShapeError.SHEET_BULGE)) {
            Deformation deformation = of(error, new BentStrips(9));
            for (int k = 0; k < 9; k++) {
                double angle = 2 * Math.PI * k / 9;
                assertEquals(
                        0,
                        deformation
                                .at(0.5 * Math.cos(angle), 0.5 * Math.sin(angle))
                                .height(),
                        1e-15);
            }
            assertEquals(0, deformation.at(0, 0).height(), 0);
        }
    }

    @Test
    void errorsOfNothingAreNone() {
        assertEquals(ShapeErrors.NONE, ShapeErrors.NONE.with(ShapeError.TWIST, 0));
        assertEquals(
                ShapeErrors.NONE, ShapeErrors.NONE.with(ShapeError.TWIST, SIZE).with(ShapeError.TWIST, 0));
        assertTrue(!ShapeErrors.NONE.any() && !ShapeErrors.NONE.byWeight());
        assertEquals(SIZE, ShapeErrors.NONE.with(ShapeError.TWIST, SIZE).of(ShapeError.TWIST), 0);
    }
}
