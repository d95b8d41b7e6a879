package simmerpoint.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import simmerpoint.dish.built.BuildErrors;
import simmerpoint.scenario.file.ScenarioReader;

class WorkmanshipReadingTest {
    private static Scenario read(Map<String, String> keys) throws ScenarioException {
        return ScenarioReader.builtIn().with(keys).scenario();
    }

    @Test
    void nothingSaidIsBuiltExactly() throws ScenarioException {
        Scenario s = read(Map.of());
        assertEquals(BuildErrors.NONE, s.workmanship());
        assertEquals(s.mirror(), s.built().mirror());
        assertEquals(s.dish(), s.built().layout());
    }

    /** Errors add in squares; slits plainly. Bubbles by hand: 2·0.3/30·√0.1 = 6.325 mrad per axis. */
    @Test
    void tolerancesAddToTheMirrorsOwnErrors() throws ScenarioException {
        Scenario s = read(Map.of(
                "workmanship.bubble-height", "0.3 mm",
                "workmanship.bubbled", "10 %",
                "workmanship.panel-edge", "2 mm",
                "mirror.slope-error", "5 mrad"));
        assertEquals(
                Math.hypot(0.005, 0.02 * Math.sqrt(0.1)), s.built().mirror().slopeErrorRadians(), 1e-12);
        assertEquals(0.001 / Math.sqrt(Math.PI), s.built().layout().gapMetres(), 1e-12);
        assertEquals(0.005, s.mirror().slopeErrorRadians(), 1e-12);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "dish.surface.cut=smooth,mirror.panel-tilt=0 mrad,workmanship.sag=1 mm|has no ribs",
                "dish.surface.cut=square-tiles,dish.surface.tile=50 mm,workmanship.rib-cut=1 mm|has no ribs",
                "dish.surface.cut=smooth,mirror.panel-tilt=0 mrad,dish.gap=0 mm,workmanship.panel-edge=1 mm|no panels",
                "workmanship.rib-set=9°|no longer a mirror",
                "workmanship.rib-cut=-1 mm|workmanship.rib-cut"
            })
    void whatMakesNoSenseIsRefused(String keys, String words) {
        Map<String, String> map = new java.util.TreeMap<>();
        for (String each : keys.split(",")) {
            map.put(each.split("=")[0], each.split("=")[1]);
        }
        ScenarioException e = assertThrows(ScenarioException.class, () -> read(map));
        assertTrue(
                String.join(" ", e.sentences()).contains(words), e.sentences().toString());
    }
}
