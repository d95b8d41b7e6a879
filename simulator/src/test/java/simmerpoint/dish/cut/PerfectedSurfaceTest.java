package simmerpoint.dish.cut;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import simmerpoint.dish.Cut;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.MirrorPoints;
import simmerpoint.dish.MirrorSurface;
import simmerpoint.dish.SurfaceSamples;
import simmerpoint.geometry.Direction;
import simmerpoint.geometry.Vec;

/** Panels made better than anyone could: bent to the paraboloid, holes filled, everything else as it was. */
class PerfectedSurfaceTest {
    private static final double F = 0.5;
    private static final int PLACES = 4000;

    static List<Cut> cuts() {
        return List.of(
                new FlatRings(12, 3, RingSpacing.EQUAL_WIDTH),
                new BentStrips(12),
                Tiles.square(0.08),
                Tiles.hexagon(0.08),
                new Smooth());
    }

    private static MirrorSurface surface(Cut cut) {
        double gap = cut instanceof Smooth ? 0 : 0.006;
        return new DishPlan(1.2, F, 0.1, gap, cut).surface(Direction.Z);
    }

    private static MirrorSurface surface(Cut cut, boolean curved, boolean filled) {
        return surface(new Perfected(cut, curved, filled));
    }

    /** Textbook: light parallel to the axis goes through the focus from anywhere on a paraboloid. */
    @ParameterizedTest
    @MethodSource("cuts")
    void bentPanelsAreTheParaboloidWithinTheirOwnOutlines(Cut cut) {
        MirrorPoints flat = SurfaceSamples.places(surface(cut), PLACES, 81_001);
        MirrorSurface better = surface(cut, true, false);
        MirrorPoints bent = SurfaceSamples.places(better, PLACES, 81_001);
        assertArrayEquals(flat.x, bent.x);
        assertArrayEquals(flat.y, bent.y);
        assertArrayEquals(flat.panel, bent.panel);
        assertEquals(surface(cut).apertureArea(), better.apertureArea());
        assertEquals(surface(cut).panels(), better.panels());
        for (int i = 0; i < PLACES; i++) {
            Vec n = SurfaceSamples.normal(bent, i);
            assertEquals(1, n.length(), 1e-14);
            Vec out = n.times(2 * n.z()).minus(Direction.Z.vec());
            Vec toFocus = new Vec(0, 0, F).minus(SurfaceSamples.place(bent, i));
            assertEquals(0, out.cross(toFocus).length(), 1e-12);
            assertEquals(better.outlineArea(), bent.area[i] * bent.nz[i], 1e-12);
            assertEquals(bent.z[i], better.heightAt(bent.x[i], bent.y[i]), 1e-14);
        }
    }

    @ParameterizedTest
    @MethodSource("cuts")
    void filledDishesAreMirrorAllOver(Cut cut) {
        MirrorPoints holes = SurfaceSamples.places(surface(cut), PLACES, 81_002);
        MirrorSurface better = surface(cut, false, true);
        MirrorPoints filled = SurfaceSamples.places(better, PLACES, 81_002);
        assertTrue(IntStream.of(holes.panel).anyMatch(k -> k < 0));
        assertEquals(better.outlineArea(), better.apertureArea());
        for (int i = 0; i < PLACES; i++) {
            assertTrue(filled.panel[i] >= 0 && filled.panel[i] < better.panels(), "place " + i);
            if (holes.panel[i] >= 0) {
                assertEquals(holes.panel[i], filled.panel[i], "place " + i);
                assertEquals(holes.z[i], filled.z[i], 1e-14);
            }
        }
    }

    /** A slit lies in the plane of the panel beside it, so filling it goes on with that panel's normal. */
    @Test
    void aFilledSlitTakesTheNormalOfItsPanel() {
        Cut cut = new FlatRings(12, 3, RingSpacing.EQUAL_WIDTH);
        MirrorPoints holes = SurfaceSamples.places(surface(cut), PLACES, 81_003);
        MirrorPoints filled = SurfaceSamples.places(surface(cut, false, true), PLACES, 81_003);
        Vec[] normals = new Vec[36];
        for (int i = 0; i < PLACES; i++) {
            if (holes.panel[i] >= 0) {
                normals[holes.panel[i]] = SurfaceSamples.normal(holes, i);
            }
        }
        int slits = 0;
        for (int i = 0; i < PLACES; i++) {
            boolean hub = filled.nz[i] == 1;
            if (holes.panel[i] < 0 && !hub) {
                slits++;
                Vec difference = SurfaceSamples.normal(filled, i).minus(normals[filled.panel[i]]);
                assertEquals(0, difference.length(), 1e-14);
            }
        }
        assertTrue(slits > 50, "only " + slits);
    }

    @Test
    void aMeshOrAPerfectedCutCannotBePerfected() {
        Cut once = new Perfected(new BentStrips(8), true, false);
        assertThrows(IllegalArgumentException.class, () -> new Perfected(once, true, true));
        assertThrows(IllegalArgumentException.class, () -> new Perfected(null, true, true));
    }
}
