package simmerpoint.viewer.editing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import simmerpoint.dish.cut.FlatRings;
import simmerpoint.dish.cut.FromFile;
import simmerpoint.dish.mirror.Material;
import simmerpoint.dish.mirror.MaterialCatalogue;
import simmerpoint.pan.Plane;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.keys.Key;
import simmerpoint.scenario.keys.Keys;
import simmerpoint.viewer.ScriptedAsks;
import simmerpoint.viewer.document.ScenarioDocument;

class ChoiceEditsTest {
    private final ScenarioDocument document = new ScenarioDocument();
    private final ScriptedAsks asks = new ScriptedAsks();
    private final ChoiceEdits choosing = new ChoiceEdits(document, asks);

    private static Key key(String path) {
        return Keys.find(path).orElseThrow();
    }

    private Scenario scenario() {
        assertEquals(List.of(), document.state().problems());
        return document.readProperty().get().scenario();
    }

    private void cut(String word) {
        choosing.choose(key("dish.surface.cut"), word);
    }

    /** What a maker says of ribs and panels must not stand beside a cut that has none. */
    @Test
    void everyCutWorksWithWorkmanshipGiven() {
        document.change(
                Map.of("workmanship.rib-cut", "1 mm", "workmanship.sag", "1 mm", "workmanship.panel-edge", "1 mm"));
        document.change(Map.of("dish.gap", "1 mm", "workmanship.rib-set", "0.2°", "workmanship.bubbled", "5 %"));
        for (String word : List.of("hexagon-tiles", "smooth", "flat-rings")) {
            cut(word);
            scenario();
            assertEquals(Optional.of("5 %"), document.state().typed("workmanship.bubbled"));
        }
        assertEquals(Optional.empty(), document.state().typed("workmanship.sag"));
    }

    /** The example has panel-tilt, which a smooth dish cannot have. */
    @Test
    void everyCutWorksAtOnceAndTheOldOneComesBackAsItWas() {
        String before = document.state().values().sourceText();
        for (String word : List.of("smooth", "square-tiles", "hexagon-tiles", "bent-strips", "flat-rings")) {
            cut(word);
            assertEquals(word, ChosenWord.word(document.state(), "dish.surface.cut"));
            scenario();
        }
        FlatRings rings = (FlatRings) scenario().dish().cut();
        assertEquals(24, rings.sectors());
        assertEquals(6, rings.rings());
        for (int k = 0; k < 5; k++) {
            document.undo();
        }
        assertEquals(before, document.state().values().sourceText());
    }

    /** Nothing is wrong before a file was named: without one the cut stays what it was. */
    @Test
    void aDishFromAFileAsksForTheFile() {
        cut("from-file");
        assertEquals(1, asks.asked.size());
        assertEquals("flat-rings", ChosenWord.word(document.state(), "dish.surface.cut"));
        scenario();
        asks.file = Optional.of(Path.of("..", "scenarios", "triangle-dish.obj"));
        cut("from-file");
        assertEquals(Optional.empty(), document.state().wrongAt("dish.surface.file"));
        assertEquals(Optional.empty(), document.state().typed("dish.hub"));
        assertTrue(KeyApplicability.whyNot(key("dish.surface.rings"), document.state())
                .isPresent());
        assertEquals(Optional.empty(), KeyApplicability.whyNot(key("dish.surface.unit"), document.state()));
        assertTrue(scenario().dish().cut() instanceof FromFile);
        cut("flat-rings");
        assertTrue(scenario().dish().cut() instanceof FlatRings);
    }

    @Test
    void ownFiguresBeginWithThoseOfTheMaterial() {
        document.reset("mirror.reflectance");
        document.reset("mirror.slope-error");
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
        document.undo();
        document.undo();
        assertEquals(0.85, scenario().mirror().reflectance());
    }

    @Test
    void aBareDiscTakesThePansPlaceAndThePanComesBack() {
        Scenario before = scenario();
        choosing.takeDisc();
        assertEquals(new Plane(0.24, 0), scenario().target());
        choosing.takePan();
        assertEquals(before.target(), scenario().target());
        assertEquals(before.cooking(), scenario().cooking());
    }

    @Test
    void theSunOfADayBeginsAtAUsualPlaceAndGoesBackToWhereItStood() {
        Scenario before = scenario();
        choosing.takeDay(LocalDate.of(2026, 6, 21));
        assertEquals(List.of(), document.state().problems(), "nothing is wrong before anything was typed");
        document.change(Map.of("place.latitude", "47.3° N", "place.longitude", "8.6° E", "place.zone", "UTC+1"));
        Scenario noon = scenario();
        assertTrue(noon.site().isPresent());
        assertTrue(noon.sun().elevationRadians() > Math.toRadians(60));
        choosing.takeGivenSun();
        assertEquals(noon.sun().elevationRadians(), scenario().sun().elevationRadians(), Math.toRadians(0.051));
        assertEquals(Optional.of("47.3° N"), document.state().typed("place.latitude"));
        document.undo();
        document.undo();
        document.undo();
        assertEquals(before.sun(), scenario().sun());
    }

    @Test
    void aDayWithoutAPlaceCanBeTakenBack() {
        Scenario before = scenario();
        choosing.takeDay(LocalDate.of(2026, 6, 21));
        assertTrue(scenario().site().isPresent());
        document.undo();
        assertEquals(before, scenario());
    }

    @Test
    void onlyKeysWithAMeaningBelong() {
        assertTrue(KeyApplicability.whyNot(key("dish.surface.tile"), document.state())
                .orElseThrow()
                .contains("square-tiles"));
        assertTrue(KeyApplicability.whyNot(key("plane.disc"), document.state()).isPresent());
        assertTrue(KeyApplicability.whyNot(key("when.time"), document.state()).isPresent());
        assertTrue(KeyApplicability.whyNot(key("sky.kind"), document.state()).isPresent());
        assertEquals(Optional.empty(), KeyApplicability.whyNot(key("dish.surface.rings"), document.state()));
        choosing.takeDisc();
        assertTrue(KeyApplicability.whyNot(key("pan.water"), document.state()).isPresent());
        assertTrue(KeyApplicability.whyNot(key("air.wind"), document.state()).isPresent());
        cut("smooth");
        assertTrue(KeyApplicability.whyNot(key("dish.gap"), document.state()).isPresent());
        document.change(Map.of("dish.gap", "2 mm"));
        assertEquals(Optional.empty(), KeyApplicability.whyNot(key("dish.gap"), document.state()));
    }
}
