package simmerpoint.study.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;
import simmerpoint.dish.cut.FlatRings;

/** Against trying every diameter. */
class LargeEnoughTest {
    private static final int FROM = 100;
    private static final int MOST = 150;
    private static final DishCandidate SMALL = new DishCandidate(new PanelLayout(FlatRings.KIND, 12, 3), FROM, 80);

    private final List<Integer> looked = new ArrayList<>();

    private Optional<Integer> found(IntToDoubleFunction spare, int grown) {
        looked.clear();
        return new LargeEnough(SMALL, 280, dish -> {
                    looked.add(dish.diameterCentimetres());
                    return spare.applyAsDouble(dish.diameterCentimetres());
                })
                .upTo(MOST, grown)
                .map(DishCandidate::diameterCentimetres);
    }

    /** Watts that grow with the area, less those wanted; a power that is not the usual one, too. */
    @Test
    void findsTheLeastDiameterInFewLooks() {
        for (double power : new double[] {1, 2, 4}) {
            for (int least = FROM; least <= MOST; least++) {
                double wanted = least - 0.4;
                IntToDoubleFunction spare = d -> 280 * (Math.pow(d / wanted, power) - 1);
                for (int grown : new int[] {0, 3, 40}) {
                    assertEquals(Optional.of(least), found(spare, grown), "power " + power + ", grown " + grown);
                    assertTrue(looked.size() <= 11, least + ": " + looked);
                }
            }
        }
    }

    @Test
    void findsNothingWhereTheLargestIsTooSmall() {
        assertEquals(Optional.empty(), found(d -> d - MOST - 1, 0));
        assertEquals(Optional.empty(), found(d -> d - MOST - 1, 60));
    }

    /** Dishes over 110 cm are not allowed. */
    @Test
    void looksNoFartherThanIsAllowed() {
        IntToDoubleFunction spare = d -> d > 110 ? Double.NaN : d - 107.5;
        assertEquals(Optional.of(108), found(spare, 0));
        assertEquals(Optional.of(108), found(spare, 30));
        assertEquals(Optional.empty(), found(d -> d > 110 ? Double.NaN : d - 115, 0));
        assertEquals(Optional.empty(), found(d -> Double.NaN, 0));
    }
}
