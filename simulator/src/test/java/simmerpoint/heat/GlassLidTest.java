package simmerpoint.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import simmerpoint.heat.balance.CookingModel;

class GlassLidTest {
    private static ThermalPan pan(SurfaceOptics lid, double through) {
        ThermalPan tea = Pans.teaPan(true);
        return new ThermalPan(
                tea.pan(),
                tea.material(),
                tea.massKilograms(),
                tea.underside(),
                tea.wetWall(),
                tea.dryWall(),
                lid,
                true,
                through,
                Optional.empty());
    }

    private static double power(ThermalPan pan, double lidLight) {
        AbsorbedLight light = new AbsorbedLight(400, 0, 0, lidLight * pan.lid().absorptance());
        return new CookingModel(pan, new PanContents(2, 20), Pans.GARDEN).cookingPowerWatts(light);
    }

    /** Two surfaces of index 1.52 pass 0.918 with all reflections counted: the textbook's pane; the glass keeps 6 %. */
    @Test
    void aPanePassesWhatFresnelSays() {
        assertEquals(0.918 * 0.94, GlassLid.transmittance(), 1e-3);
        double taken = GlassLid.optics().absorptance();
        assertTrue(taken + 1 - GlassLid.transmittance() - 0.06 < 1, "more than all of the light");
        assertEquals(0.8 * GlassLid.transmittance(), GlassLid.throughShare() * taken, 1e-12);
    }

    /** Through glass nearly all of what gets in heats the water; a black lid loses most of its share to the air above it. */
    @Test
    void sunThroughGlassHeatsTheWater() {
        ThermalPan glass = pan(GlassLid.optics(), GlassLid.throughShare());
        ThermalPan black = Pans.teaPan(true);
        double water = 2 * PhysicalConstants.WATER_SPECIFIC_HEAT;
        double share = water / (water + glass.heatCapacity());
        double through = (power(glass, 44) - power(glass, 0)) / share;
        double under = (power(black, 44) - power(black, 0)) / share;
        double inside = 44 * 0.8 * GlassLid.transmittance();
        assertTrue(through > inside && through < inside + 0.06 * 44, "through glass " + through + " W");
        assertTrue(under < through, "under a black lid " + under + " W");
    }

    /** Glass that lets nothing through is a lid as any other. */
    @Test
    void withoutLightBothAreLids() {
        SurfaceOptics same = Pans.teaPan(true).lid();
        assertEquals(power(pan(same, 0), 0), power(pan(same, 0.9), 0), 1e-12);
    }
}
