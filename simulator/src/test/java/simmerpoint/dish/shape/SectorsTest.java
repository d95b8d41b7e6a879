package simmerpoint.dish.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SectorsTest {
    /** Against the angle of the place, anywhere but within 1e-9 rad of a rib, at three distances from the axis. */
    @ParameterizedTest
    @ValueSource(ints = {3, 4, 7, 24, 1000})
    void aSectorIsFoundByTheAngle(int count) {
        Sectors sectors = new Sectors(count);
        double width = 2 * Math.PI / count;
        for (int k = 0; k < count; k++) {
            for (double share : new double[] {1e-9 / width, 0.3, 0.5, 1 - 1e-9 / width}) {
                double angle = (k + share) * width;
                for (double r : new double[] {1e-6, 0.4, 7}) {
                    assertEquals(k, sectors.at(r * Math.cos(angle), r * Math.sin(angle)), angle + " of " + count);
                }
            }
        }
        assertEquals(0, sectors.at(0, 0));
        assertEquals(0, sectors.at(1, 0));
        assertEquals(0, sectors.at(1, -0.0));
    }
}
