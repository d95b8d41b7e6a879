package simmerpoint.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class StraightLineTest {
    private static final double[] NORRIS_X = {
        0.2, 337.4, 118.2, 884.6, 10.1, 226.5, 666.3, 996.3, 448.6, 777.0, 558.2, 0.4, 0.6, 775.5, 666.9, 338.0, 447.5,
                11.6,
        556.0, 228.1, 995.8, 887.6, 120.2, 0.3, 0.3, 556.8, 339.1, 887.2, 999.0, 779.0, 11.1, 118.3, 229.2, 669.1,
                448.9, 0.5
    };
    private static final double[] NORRIS_Y = {
        0.1, 338.8, 118.1, 888.0, 9.2, 228.1, 668.5, 998.5, 449.1, 778.9, 559.2, 0.3, 0.1, 778.1, 668.8, 339.3, 448.9,
                10.8,
        557.7, 228.3, 998.0, 888.8, 119.6, 0.3, 0.6, 557.6, 339.3, 888.0, 998.5, 778.9, 10.2, 117.6, 228.9, 668.4,
                449.2, 0.2
    };

    /** NIST Statistical Reference Datasets, Norris: certified values; the intervals derived from them with t = 2.0322445 (34). */
    @Test
    void certifiedValuesOfNorris() {
        StraightLine line = StraightLine.through(NORRIS_X, NORRIS_Y);
        assertEquals(-0.262323073774029, line.intercept(), 1e-9 * 0.2623);
        assertEquals(1.00211681802045, line.slope(), 1e-9);
        assertEquals(0.429796848199937e-3, line.slopeError(), 1e-9 * 0.43e-3);
        assertEquals(0.232818234301152, line.errorAt(0), 1e-9);
        assertEquals(0.884796396144373, line.deviation(), 1e-9);
        assertEquals(0.999993745883712, line.determination(), 1e-9);
        assertEquals(2.0322445, line.reach(0.95), 1e-6);
        assertEquals(500.796086, line.at(500), 1e-6);
        assertEquals(0.307889, line.reach(0.95) * line.errorAt(500), 1e-6);
        assertEquals(1.824292, line.reach(0.95) * line.deviationAt(500), 1e-6);
    }

    /** JCGM 100:2008 (GUM), example H.3: calibration of a thermometer about 20 °C; at 30 °C −0.1494(41). */
    @Test
    void calibrationLineOfTheGuide() {
        double[] t = {21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.010, 26.511};
        double[] b = {-0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.160};
        double[] about = new double[t.length];
        for (int k = 0; k < t.length; k++) {
            about[k] = t[k] - 20;
        }
        StraightLine line = StraightLine.through(about, b);
        assertEquals(-0.17120379, line.intercept(), 1e-8);
        assertEquals(0.00218270, line.slope(), 1e-8);
        assertEquals(0.0028776, line.errorAt(0), 1e-7);
        assertEquals(0.00066794, line.slopeError(), 1e-8);
        assertEquals(-0.149377, line.at(10), 1e-6);
        assertEquals(0.00413860, line.errorAt(10), 1e-8);
    }

    @Test
    void onePlaceIsNoLine() {
        assertThrows(
                IllegalArgumentException.class, () -> StraightLine.through(new double[] {1, 1}, new double[] {1, 2}));
    }
}
