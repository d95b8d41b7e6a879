package simmerpoint.drawing.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.Path;
import simmerpoint.study.aim.AimMap;

class AimFieldTest {
    /** The cone 100 − |angle| has circles for isolines: at 70 W of radius 30 of its 40, hence 0.375 of the square. */
    @Test
    void theIsolineOfAConeIsACircle() {
        int n = 25;
        double[] angles = new double[n];
        double[][] watts = new double[n][n];
        for (int i = 0; i < n; i++) {
            angles[i] = (i - 12) * 40.0 / 12;
        }
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                watts[i][j] = 100 - Math.hypot(angles[i], angles[j]);
            }
        }
        Path line = new AimField(new AimMap(false, angles, watts, 0)).isoline(70, new Box(0, 0, 1, 1));
        for (Path.Part part : line.parts()) {
            for (int k = 0; k < 2; k++) {
                assertEquals(0.375, Math.hypot(part.xs()[k] - 0.5, part.ys()[k] - 0.5), 1e-3);
            }
        }
        assertTrue(line.parts().size() > 50, line.parts().size() + " pieces");
    }
}
