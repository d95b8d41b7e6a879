package simmerpoint.dish.mesh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import org.junit.jupiter.api.Test;

class MeshFocusTest {
    private static final int SIDES = 6;

    /** Rings of triangles with all corners on z = r²/4f: the definition of a paraboloid of focal length f. */
    private static Mesh bowl(double focalLength, double sign) {
        int rings = 12;
        int around = 8 * SIDES;
        double[] vertices = new double[3 * (rings + 1) * around];
        for (int j = 0; j <= rings; j++) {
            for (int i = 0; i < around; i++) {
                double r = 0.05 + 0.05 * j;
                double angle = 2 * Math.PI * i / around;
                int at = 3 * (j * around + i);
                vertices[at] = r * Math.cos(angle);
                vertices[at + 1] = r * Math.sin(angle);
                vertices[at + 2] = sign * r * r / (4 * focalLength);
            }
        }
        int[] corners = new int[4 * rings * around];
        int[] first = new int[rings * around + 1];
        for (int k = 0; k < rings * around; k++) {
            int j = k / around;
            int i = k % around;
            int next = (i + 1) % around;
            corners[4 * k] = j * around + i;
            corners[4 * k + 1] = (j + 1) * around + i;
            corners[4 * k + 2] = (j + 1) * around + next;
            corners[4 * k + 3] = j * around + next;
            first[k + 1] = 4 * (k + 1);
        }
        return new Mesh("bowl", vertices, corners, first);
    }

    /** Chords lean as the curve does between their ends; the middle of a flat facet lies a little within: 1 % covers it. */
    @Test
    void findsTheFocalLengthOfABowl() {
        for (double f : new double[] {0.3, 0.8, 2}) {
            assertEquals(f, MeshFocus.focalLength(bowl(f, 1)), 0.01 * f);
        }
    }

    @Test
    void aDomeDoesNotGather() {
        assertFalse(MeshFocus.focalLength(bowl(0.8, -1)) > 0);
    }
}
