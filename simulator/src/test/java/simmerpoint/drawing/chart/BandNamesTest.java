package simmerpoint.drawing.chart;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;

import org.junit.jupiter.api.Test;

class BandNamesTest {
    @Test
    void namesOfLevelsKeepClearOfTheMark() {
        assertArrayEquals(new double[] {40, 100}, BandNames.free(10, 100, 24, 40));
        assertArrayEquals(new double[] {10, 72}, BandNames.free(10, 100, 72, 88));
        assertArrayEquals(new double[] {10, 100}, BandNames.free(10, 100, 192, 208));
    }
}
