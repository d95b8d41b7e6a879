package simmerpoint.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;

class YearlyCurveProperties {
    /** Days from New Year to the middle of each month of a year of 365, counted by hand. */
    private static final double[] MIDDLES = {15.5, 45, 74.5, 105, 135.5, 166, 196.5, 227.5, 258, 288.5, 319, 349.5};

    private static double[] numbers(List<Double> list) {
        return list.stream().mapToDouble(Double::doubleValue).toArray();
    }

    @Property(seed = "42", tries = 100)
    void passesThroughTheMiddlesOfMonths(@ForAll @Size(12) List<@DoubleRange(min = -9, max = 9) Double> list) {
        double[] values = numbers(list);
        YearlyCurve curve = YearlyCurve.throughMidMonths(values);
        for (int i = 0; i < 12; i++) {
            assertEquals(values[i], curve.at(MIDDLES[i]), 1e-12);
            assertEquals(values[i], curve.at(MIDDLES[i] - 365), 1e-12);
        }
    }

    @Property(seed = "42", tries = 100)
    void staysBetweenNeighboursAndHasNoKink(@ForAll @Size(12) List<@DoubleRange(min = -9, max = 9) Double> list) {
        double[] values = numbers(list);
        YearlyCurve curve = YearlyCurve.throughMidMonths(values);
        for (int i = 0; i < 12; i++) {
            double a = values[i];
            double b = values[(i + 1) % 12];
            for (double day = MIDDLES[i]; day < MIDDLES[i] + 28; day += 1.7) {
                double value = curve.at(day);
                assertTrue(value >= Math.min(a, b) - 1e-12 && value <= Math.max(a, b) + 1e-12);
            }
            // The two slopes at a value differ by the curve's bend times the step: below 6 × 18 / 29² per day² here,
            // so.
            // under 2e-5; rounding of the differences adds as much again.
            double step = 1e-4;
            double left = (curve.at(MIDDLES[i]) - curve.at(MIDDLES[i] - step)) / step;
            double right = (curve.at(MIDDLES[i] + step) - curve.at(MIDDLES[i])) / step;
            assertEquals(left, right, 1e-4);
        }
    }

    @Example
    void datesAreCountedByNoon() {
        double[] values = {1, 2, 3, 4, 5, 6, 7, 6, 5, 4, 3, 2};
        YearlyCurve curve = YearlyCurve.throughDay(21, values);
        for (int month = 1; month <= 12; month++) {
            assertEquals(values[month - 1], curve.on(LocalDate.of(2026, month, 21)), 1e-12);
            assertEquals(values[month - 1], curve.on(LocalDate.of(2028, month, 21)), 0.05);
        }
        assertEquals(curve.on(LocalDate.of(2026, 12, 31)), curve.on(LocalDate.of(2027, 1, 1)), 0.05);
    }

    @Example
    void refusesElevenMonths() {
        assertThrows(IllegalArgumentException.class, () -> YearlyCurve.throughMidMonths(new double[11]));
    }
}
