package simmerpoint.heat.losses;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.apache.commons.math3.stat.correlation.PearsonsCorrelation;
import org.junit.jupiter.api.Test;
import simmerpoint.uncertainty.LikelyRange;

class LossSpreadTest {
    /** A log-normal factor with one in ten above 1.35 has one in ten below 1/1.35; 21 steps blur that by some 5 %. */
    @Test
    void tenthsAreWhereTheyAreSaidToBe() {
        LikelyRange dry = LossSpread.range(LossFactors::dry);
        LikelyRange evaporation = LossSpread.range(LossFactors::evaporation);
        assertEquals(1.35, dry.high(), 0.05);
        assertEquals(1 / 1.35, dry.low(), 0.03);
        assertEquals(1, dry.likely(), 1e-12);
        assertEquals(1.5, evaporation.high(), 0.07);
        assertEquals(1 / 1.5, evaporation.low(), 0.03);
    }

    @Test
    void factorsAreIndependent() {
        double[] dry =
                LossSpread.all().stream().mapToDouble(f -> Math.log(f.dry())).toArray();
        double[] wet = LossSpread.all().stream()
                .mapToDouble(f -> Math.log(f.evaporation()))
                .toArray();
        double correlation = new PearsonsCorrelation().correlation(dry, wet);
        assertTrue(Math.abs(correlation) < 0.01, "correlation " + correlation);
        assertEquals(21, java.util.Arrays.stream(wet).distinct().count());
    }

    /** ln(a·b) of two such factors is normal: one in ten of a·b lies above exp(√(ln²1.35 + ln²1.5)) = 1.66 (derived). */
    @Test
    void productOfBothSpreadsAsTheoryHasIt() {
        LikelyRange product = LossSpread.range(f -> f.dry() * f.evaporation());
        double theory = Math.exp(Math.hypot(Math.log(1.35), Math.log(1.5)));
        assertEquals(theory, product.high(), 0.12);
        assertEquals(1 / theory, product.low(), 0.06);
    }

    @Test
    void rangeKeepsItsOrderAndRefusesNonsense() {
        LikelyRange range = LikelyRange.ofSample(9, new double[] {1, 2, 3});
        assertEquals(9, range.high());
        assertEquals(1.2, range.low(), 1e-12);
        assertThrows(IllegalArgumentException.class, () -> new LikelyRange(2, 1, 3));
        assertThrows(IllegalArgumentException.class, () -> new LikelyRange(Double.NaN, 1, 3));
        LikelyRange never =
                LikelyRange.ofSample(1, new double[] {2, 3, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY});
        assertEquals(Double.POSITIVE_INFINITY, never.high());
        assertEquals(1, never.low());
    }
}
