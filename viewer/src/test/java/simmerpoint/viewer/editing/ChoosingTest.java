package simmerpoint.viewer.editing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import simmerpoint.dish.cut.FlatRings;
import simmerpoint.dish.mirror.Material;
import simmerpoint.dish.mirror.MaterialCatalogue;
import simmerpoint.pan.Plane;
import simmerpoint.scenario.Key;
import simmerpoint.scenario.Keys;
import simmerpoint.scenario.Scenario;
import simmerpoint.viewer.document.ScenarioDocument;

class ChoosingTest {
    private final ScenarioDocument desk = new ScenarioDocument();
    private final Choosing choosing = new Choosing(desk);

    private static Key key(String path) {
        return Keys.find(path).orElseThrow();
    }

    private Scenario scenario() {
        assertEquals(List.of(), desk.state().problems());
        return desk.readProperty().get().scenario();
    }

    private void cut(String word) {
        choosing.choose(key("dish.surface.cut"), word);
    }

    /** What a maker says of ribs and panels must not stand beside a cut that has none. */
    @Test
    void everyCutWorksWithWorkmanshipGiven() {
        desk.change(Map.of("workmanship.rib-cut", "1 mm", "workmanship.sag", "1 mm", "workmanship.panel-edge", "1 mm"));
        desk.change(Map.of("dish.gap", "1 mm", "workmanship.rib-set", "0.2°", "workmanship.bubbled", "5 %"));
        for (String word : List.of("hexagon-tiles", "smooth", "flat-rings")) {
            cut(word);
            scenario();
            assertEquals(Optional.of("5 %"), desk.state().typed("workmanship.bubbled"));
        }
        assertEquals(Optional.empty(), desk.state().typed("workmanship.sag"));
    }

    /** The example has panel-tilt, which a smooth dish cannot have. */
    @Test
    void everyCutWorksAtOnceAndTheOldOneComesBackAsItWas() {
        String before = desk.state().values().sourceText();
        for (String word : List.of("smooth", "square-tiles", "hexagon-tiles", "bent-strips", "flat-rings")) {
            cut(word);
            assertEquals(word, Chosen.word(desk.state(), "dish.surface.cut"));
            scenario();
        }
        FlatRings rings = (FlatRings) scenario().dish().cut();
        assertEquals(24, rings.sectors());
        assertEquals(6, rings.rings());
        for (int k = 0; k < 5; k++) {
            desk.undo();
        }
        assertEquals(before, desk.state().values().sourceText());
    }

    @Test
    void aDishFromAFileAsksForTheFile() {
        cut("from-file");
        assertTrue(desk.state().wrongAt("dish.surface.file").isPresent());
        assertEquals(Optional.empty(), desk.state().typed("dish.hub"));
        assertTrue(Belonging.whyNot(key("dish.surface.rings"), desk.state()).isPresent());
        assertEquals(Optional.empty(), Belonging.whyNot(key("dish.surface.unit"), desk.state()));
        assertTrue(desk.readProperty().get().scenario().dish().cut() instanceof FlatRings);
    }

    @Test
    void ownFiguresBeginWithThoseOfTheMaterial() {
        desk.reset("mirror.reflectance");
        desk.reset("mirror.slope-error");
        Scenario film = scenario();
        choosing.choose(key("mirror.material"), "own figures");
        assertEquals(film.mirror().reflectance(), scenario().mirror().reflectance());
        assertEquals(film.mirror().slopeErrorRadians(), scenario().mirror().slopeErrorRadians(), 1e-12);
    }

    /** The example gives figures of its own beside the film; they must not hide those of another material. */
    @Test
    void anotherMaterialBringsItsOwnFigures() {
        for (String word : List.of("household mirror", "kitchen foil on card")) {
            choosing.choose(key("mirror.material"), word);
            Material material = MaterialCatalogue.find(word).orElseThrow();
            assertEquals(material.mirror(0.03, 0.004), scenario().mirror());
        }
        desk.undo();
        desk.undo();
        assertEquals(0.85, scenario().mirror().reflectance());
    }

    @Test
    void aBareDiscTakesThePansPlaceAndThePanComesBack() {
        Scenario before = scenario();
        choosing.takeDisc();
        assertEquals(new Plane(0.24, 0), scenario().target());
        choosing.takePan();
        assertEquals(before.target(), scenario().target());
        assertEquals(before.kitchen(), scenario().kitchen());
    }

    @Test
    void theSunOfADayAsksForThePlaceAndGoesBackToWhereItStood() {
        Scenario before = scenario();
        choosing.takeDay(LocalDate.of(2026, 6, 21));
        assertFalse(desk.state().problems().isEmpty());
        desk.change(Map.of("place.latitude", "47.3° N", "place.longitude", "8.5° E", "place.zone", "UTC+1"));
        Scenario noon = scenario();
        assertTrue(noon.outdoors().isPresent());
        assertTrue(noon.sun().elevationRadians() > Math.toRadians(60));
        choosing.takeGivenSun();
        assertEquals(noon.sun().elevationRadians(), scenario().sun().elevationRadians(), Math.toRadians(0.051));
        assertEquals(Optional.of("47.3° N"), desk.state().typed("place.latitude"));
        desk.undo();
        desk.undo();
        desk.undo();
        assertEquals(before.sun(), scenario().sun());
    }

    @Test
    void aDayWithoutAPlaceCanBeTakenBack() {
        Scenario before = scenario();
        choosing.takeDay(LocalDate.of(2026, 6, 21));
        choosing.takeGivenSun();
        assertEquals(before.sun(), scenario().sun());
    }

    @Test
    void onlyKeysWithAMeaningBelong() {
        assertTrue(Belonging.whyNot(key("dish.surface.tile"), desk.state())
                .orElseThrow()
                .contains("square-tiles"));
        assertTrue(Belonging.whyNot(key("plane.disc"), desk.state()).isPresent());
        assertTrue(Belonging.whyNot(key("when.time"), desk.state()).isPresent());
        assertTrue(Belonging.whyNot(key("sky.kind"), desk.state()).isPresent());
        assertEquals(Optional.empty(), Belonging.whyNot(key("dish.surface.rings"), desk.state()));
        choosing.takeDisc();
        assertTrue(Belonging.whyNot(key("pan.water"), desk.state()).isPresent());
        assertTrue(Belonging.whyNot(key("air.wind"), desk.state()).isPresent());
        cut("smooth");
        assertTrue(Belonging.whyNot(key("dish.gap"), desk.state()).isPresent());
        desk.change(Map.of("dish.gap", "2 mm"));
        assertEquals(Optional.empty(), Belonging.whyNot(key("dish.gap"), desk.state()));
    }
}
