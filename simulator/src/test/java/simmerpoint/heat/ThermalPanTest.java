package simmerpoint.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import simmerpoint.pan.Finish;
import simmerpoint.pan.GrazingAbsorptance;
import simmerpoint.pan.Pan;

class ThermalPanTest {
    @Test
    void everyMaterialHasItsFiguresAndASource() {
        assertEquals(7, PanMaterial.all().size());
        for (PanMaterial material : PanMaterial.all()) {
            assertTrue(material.source().length() > 20, material.name());
            assertEquals(
                    material,
                    PanMaterial.find(material.name().toUpperCase(java.util.Locale.ROOT))
                            .orElseThrow());
        }
        assertTrue(PanMaterial.find("cardboard").isEmpty());
    }

    /** Dulong and Petit: a metal stores close to 24.9 J/(K mol), so specific heat × molar mass is nearly the same. */
    @Test
    void metalsStoreWhatDulongAndPetitSay() {
        assertEquals(24.9, PanMaterial.find("aluminium").orElseThrow().specificHeat() * 0.02698, 1.3);
        assertEquals(24.9, PanMaterial.find("copper").orElseThrow().specificHeat() * 0.06355, 1.3);
        assertEquals(24.9, PanMaterial.find("steel").orElseThrow().specificHeat() * 0.05585, 1.3);
    }

    @Test
    void skinTakesTheEmissivityOfItsFinish() {
        assertEquals(new SurfaceOptics(0.93, 0.87), SurfaceOptics.of(new Finish("black enamel", 0.93)));
        assertEquals(new SurfaceOptics(0.38, 0.17), SurfaceOptics.of(new Finish("polished stainless steel", 0.38)));
        assertEquals(
                SurfaceOptics.USUAL_EMISSIVITY,
                SurfaceOptics.of(new Finish("soot", 0.97)).emissivity());
    }

    /** Derived: 2 kg stand 44.2 mm high in a pan 24 cm wide, which holds 4.98 kg. */
    @Test
    void waterStandsAsHighAsItsVolumeSays() {
        ThermalPan vessel = Pans.teaPan(true);
        assertEquals(0.04421, vessel.waterLineMetres(2), 1e-5);
        assertEquals(4.976, vessel.brimfulKilograms(), 1e-3);
        assertTrue(new PanContents(4.9, 20).fitsIn(vessel));
        assertFalse(new PanContents(5.1, 20).fitsIn(vessel));
    }

    /**
     * Heat and Mass Transfer Data Book and Mechanical Engineers' Handbook 4, table 1: density, specific heat, conductivity. Steels
     * of one name differ from alloy to alloy, and aluminium's conductivity is 204 to 237 by source.
     */
    @ParameterizedTest
    @CsvSource({
        "steel, 7833, 465, 53.6, 0.04",
        "cast iron, 7272, 420, 52.0, 0.10",
        "aluminium, 2707, 896, 204.2, 0.03",
        "copper, 8933, 385, 401, 0.02"
    })
    void materialsAreAsInHandbooks(
            String name, double density, double specificHeat, double conductivity, double within) {
        PanMaterial material = PanMaterial.find(name).orElseThrow();
        assertEquals(density, material.density(), within * density);
        assertEquals(specificHeat, material.specificHeat(), within * specificHeat);
        assertEquals(conductivity, material.conductivity(), within * conductivity);
    }

    /** Derived: 4 mm of copper under 24 cm weigh 1.616 kg; 1.4 kg of steel are left for wall and lid, 0.1282 m². */
    @Test
    void anUndersideOfItsOwnIsNotCountedTwice() {
        ThermalPan plain = Pans.teaPan(true);
        UndersidePlate copper = new UndersidePlate(PanMaterial.find("copper").orElseThrow(), 0.004);
        ThermalPan pan = new ThermalPan(
                plain.pan(),
                plain.material(),
                1.4 + copper.kilograms(plain.levelArea()),
                plain.underside(),
                plain.wetWall(),
                plain.dryWall(),
                plain.lid(),
                true,
                0,
                Optional.of(copper));
        assertEquals(1.616, copper.kilograms(plain.levelArea()), 1e-3);
        assertEquals(1.4 / (7850 * 0.12818), pan.sheetThickness(), 1e-6);
        assertEquals(1.4 * 450 + 1.616 * 385, pan.heatCapacity(), 0.5);
        assertEquals(copper, pan.plate());
        assertEquals(plain.sheetThickness(), plain.plate().thicknessMetres(), 0);
    }

    /** Derived: 1.4 kg of steel over two discs and a wall, 0.1734 m², are 1.03 mm thick. */
    @Test
    void sheetIsAsThickAsItsMassSays() {
        assertEquals(1.03e-3, Pans.teaPan(true).sheetThickness(), 5e-6);
        assertEquals(630, Pans.teaPan(true).heatCapacity(), 1e-9);
    }

    /** The sun's shadow of a level cylinder: π R² sin + 2 R H cos (derived). */
    @Test
    void directSunAddsUpToTheShadow() {
        ThermalPan vessel = Pans.teaPan(true);
        for (double degrees : new double[] {0, 20, 50, 90}) {
            double e = Math.toRadians(degrees);
            PanLight light = PanLight.direct(vessel, 2, 850, e);
            double shadow = Math.PI * 0.0144 * Math.sin(e) + 0.24 * 0.11 * Math.cos(e);
            double sum = light.wetWall().watts()
                    + light.dryWall().watts()
                    + light.lid().watts();
            assertEquals(850 * shadow, sum, 1e-9);
        }
    }

    /** Light absorbed by the sunlit half of the wall and by the lid, against the sum over 100,000 narrow strips. */
    @Test
    void directSunIsAbsorbedAtTheAngleOfEachPlace() {
        ThermalPan vessel = Pans.teaPan(true);
        for (double degrees : new double[] {0, 20, 50, 80}) {
            double e = Math.toRadians(degrees);
            PanLight light = PanLight.direct(vessel, 2, 850, e);
            int strips = 100_000;
            double absorbed = 0;
            for (int k = 0; k < strips; k++) {
                double cosine = Math.cos(e) * Math.cos(Math.PI * ((k + 0.5) / strips - 0.5));
                absorbed += 850 * 0.12 * Math.PI / strips * cosine * GrazingAbsorptance.relativeAbsorptance(cosine);
            }
            FaceLight wall = light.wetWall().plus(light.dryWall());
            assertEquals(absorbed * 0.11, wall.watts() * wall.relativeAbsorptance(), 1e-6);
            assertEquals(
                    GrazingAbsorptance.relativeAbsorptance(Math.sin(e)),
                    light.lid().relativeAbsorptance(),
                    1e-12);
        }
    }

    @Test
    void faceTakesUpLessOfSlantingLight() {
        ThermalPan vessel = Pans.teaPan(true);
        PanLight light = new PanLight(
                new FaceLight(300, 0.9), new FaceLight(40, 0.3), new FaceLight(20, 0.3), new FaceLight(30, 0.7));
        AbsorbedLight absorbed = light.absorbedBy(vessel);
        assertEquals(300 * 0.93 * 0.9, absorbed.undersideWatts(), 1e-9);
        assertEquals(2, absorbed.wetWallWatts() / absorbed.dryWallWatts(), 1e-9);
        assertTrue(absorbed.dryWallWatts() < 0.93 * 20 * 0.9);
        assertEquals(
                30 * PanLight.OPEN_TOP_SHARE,
                light.absorbedBy(Pans.teaPan(false)).lidWatts(),
                1e-9);
        FaceLight sum = light.wetWall().plus(light.underside());
        assertEquals(340, sum.watts(), 1e-9);
        assertEquals((300 * 0.9 + 40 * 0.3) / 340, sum.relativeAbsorptance(), 1e-12);
    }

    @Test
    void nonsenseIsRefused() {
        Pan pan = new Pan(0.24, 0.11, Pans.BLACK);
        assertThrows(IllegalArgumentException.class, () -> ThermalPan.of(pan, Pans.STEEL, Double.NaN, true));
        assertThrows(IllegalArgumentException.class, () -> new PanContents(0, 20));
        assertThrows(IllegalArgumentException.class, () -> new PanContents(1, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> new Surroundings(20, -1, 0, 0.5, true));
        assertThrows(IllegalArgumentException.class, () -> new Surroundings(20, 1, 0, 50, true));
        assertThrows(IllegalArgumentException.class, () -> new AbsorbedLight(-1, 0, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> new AbsorbedLight(0, 0, Double.NaN, 0));
        assertThrows(IllegalArgumentException.class, () -> new SurfaceOptics(1.2, 0.9));
    }
}
