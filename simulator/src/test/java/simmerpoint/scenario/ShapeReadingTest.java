package simmerpoint.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import simmerpoint.dish.MirrorSurface;
import simmerpoint.dish.shape.ShapeError;
import simmerpoint.dish.shape.ShapeErrors;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.study.light.LightKey;

/** The keys under shape. */
class ShapeReadingTest {
    private static Scenario read(Map<String, String> keys) throws ScenarioException {
        return ScenarioReader.builtIn().with(keys).scenario();
    }

    @Test
    void aPlainFileHasTheShapeAsPlanned() throws ScenarioException {
        assertEquals(ShapeErrors.NONE, read(Map.of()).shape());
        assertEquals(
                read(Map.of()),
                read(Map.of("shape.twist", "0 mm", "shape.sheet-sag", "0 mm", "shape.springback", "0 mm")));
    }

    @ParameterizedTest
    @EnumSource
    void everyErrorHasItsKey(ShapeError error) throws ScenarioException {
        Scenario s = read(Map.of("shape." + error.key(), "3 mm"));
        assertEquals(ShapeErrors.NONE.with(error, 0.003), s.shape());
        assertEquals(s.shape(), s.built().shape());
        assertNotEquals(LightKey.of(read(Map.of())), LightKey.of(s));
        assertEquals(LightKey.of(s), LightKey.of(read(Map.of("shape." + error.key(), "0.3 cm"))));
    }

    /**
     * Aluminium of 0.5 mm between 12 ribs of a dish of 1.2 m, 2·0.6·sin 15° = 0.31058 m apart: 5qL⁴/384EI with q = 2702·0.0005·9.80665
     * N/m², EI = 70e9·0.0005³/12 N·m gives 2.2014 mm, worked out apart from this project.
     */
    @Test
    void flatSheetHangsByItsMaterial() throws ScenarioException {
        Map<String, String> keys = new TreeMap<>(Map.of(
                "dish.surface.sectors", "12",
                "shape.sheet-weight", "on",
                "build.panel-material", "aluminium",
                "build.panel-thickness", "0.5 mm"));
        assertEquals(2.2014e-3, read(keys).shape().of(ShapeError.SHEET_SAG), 1e-7);
        keys.put("shape.sheet-sag", "1 mm");
        assertEquals(3.2014e-3, read(keys).shape().of(ShapeError.SHEET_SAG), 1e-7);
    }

    /**
     * An evenly stretched membrane under a pressure p and a tension T is the paraboloid of f = T/p: 100 Pa and 80 N/m for the example's 0.8 m.
     * Strips then hang back by R²·sin²(π/n)/4f; with no pressure film stands out as far, but for tan²(π/n).
     */
    @Test
    void filmUnderPressureIsTheParaboloid() throws ScenarioException {
        Map<String, String> keys = new TreeMap<>(Map.of(
                "dish.surface.cut", "bent-strips",
                "shape.film-tension", "80 N/m",
                "shape.film-pressure", "100 Pa"));
        Scenario film = read(keys);
        double chord = 0.36 * Math.pow(Math.sin(Math.PI / 24), 2) / (4 * 0.8);
        assertEquals(-chord, film.shape().of(ShapeError.SHEET_BULGE), 1e-12);
        MirrorSurface surface = film.built().surface(film.setup().sunInDish());
        for (double x = -0.4; x <= 0.4; x += 0.07) {
            assertEquals((x * x + 0.04) / 3.2, surface.heightAt(x, 0.2), 1e-12);
        }
        keys.put("shape.film-pressure", "0 Pa");
        double tan = Math.tan(Math.PI / 24);
        double alone = chord * (1 + tan * tan) / (1 - tan * tan);
        assertEquals(alone, read(keys).shape().of(ShapeError.SHEET_BULGE), 1e-12);
        keys.put("shape.sheet-bulge", "1 mm");
        assertEquals(alone + 1e-3, read(keys).shape().of(ShapeError.SHEET_BULGE), 1e-12);
    }

    /** Only what hangs by its weight changes as the dish points higher. */
    @ParameterizedTest
    @EnumSource
    void whatHangsDependsOnTheSunsHeight(ShapeError error) throws ScenarioException {
        Scenario low = read(Map.of("shape." + error.key(), "3 mm", "sun.elevation", "30°"));
        Scenario high = read(Map.of("shape." + error.key(), "3 mm", "sun.elevation", "60°"));
        double lower = low.built().surface(low.setup().sunInDish()).heightAt(0.05, 0.5);
        double higher = high.built().surface(high.setup().sunInDish()).heightAt(0.05, 0.5);
        assertEquals(error.byWeight(), lower != higher);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "dish.surface.cut=smooth,mirror.panel-tilt=0 mrad,shape.sheet-sag=1 mm|has no ribs",
                "dish.surface.cut=square-tiles,dish.surface.tile=50 mm,shape.sheet-bulge=-1 mm|has no ribs",
                "shape.sheet-sag=-1 mm|0 mm to 50 mm",
                "shape.film-tension=80 N/m|lies on bent ribs",
                "dish.surface.cut=bent-strips,shape.film-pressure=20 Pa|how tightly",
                "dish.surface.cut=bent-strips,dish.surface.sectors=4,shape.film-tension=80 N/m|5 or more",
                "dish.surface.cut=smooth,mirror.panel-tilt=0 mrad,shape.film-tension=80 N/m|has no ribs",
                "dish.surface.cut=bent-strips,shape.film-tension=1 N/m,shape.film-pressure=2000 Pa|is stretched by it",
                "dish.surface.cut=bent-strips,shape.sheet-weight=on|stiffened by their bend",
                "dish.surface.cut=smooth,mirror.panel-tilt=0 mrad,shape.sheet-weight=on|has no ribs",
                "build.panel-material=foam board,shape.sheet-weight=on|is not known",
                "shape.springback=60 mm|-50 mm to 50 mm"
            })
    void whatMakesNoSenseIsRefused(String keys, String words) {
        Map<String, String> map = new TreeMap<>();
        for (String each : keys.split(",")) {
            map.put(each.split("=")[0], each.split("=")[1]);
        }
        ScenarioException e = assertThrows(ScenarioException.class, () -> read(map));
        assertTrue(
                String.join(" ", e.sentences()).contains(words), e.sentences().toString());
    }
}
