package simmerpoint.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import simmerpoint.scenario.file.ExampleScenario;
import simmerpoint.scenario.keys.Key;
import simmerpoint.scenario.keys.Keys;
import simmerpoint.scenario.keys.NearestWord;
import simmerpoint.scenario.keys.ValueReader;
import simmerpoint.scenario.keys.ZoneKeys;

class KeysTest {
    @Test
    void everyKeyIsFullyDescribed() throws Exception {
        Set<String> paths = new HashSet<>();
        for (Key key : Keys.all()) {
            assertTrue(paths.add(key.path()), key.path() + " twice");
            assertTrue(key.sentence().matches("[A-Z].*\\."), key.path() + ": " + key.sentence());
            assertTrue(key.path().matches("[a-z]+(-[a-z]+)*(\\.[a-z]+(-[a-z]+)*)*"), key.path());
            ValueReader.read(key, key.example());
            assertTrue(!key.allowed().isBlank(), key.path());
            if (key.defaultIsValue()) {
                ValueReader.read(key, key.defaultText());
            }
        }
    }

    @Test
    void onlyDishPlaceDateMeasuredBeamNamesOfFilesAndPlacesOfThingsHaveNoDefault() {
        List<String> required = Keys.all().stream()
                .filter(Key::required)
                .map(Key::path)
                .filter(path -> ZoneKeys.zoneOf(path).isEmpty())
                .toList();
        assertEquals(
                List.of(
                        "dish.diameter",
                        "dish.focal-length",
                        "dish.surface.cut",
                        "dish.surface.sectors",
                        "dish.surface.rings",
                        "dish.surface.tile",
                        "dish.surface.width",
                        "dish.surface.height",
                        "dish.surface.depth",
                        "dish.surface.file",
                        "dish.surface.unit",
                        "dish.rim.sides",
                        "dish.covered.width",
                        "as-built.ribs",
                        "sun.shape.file",
                        "place.latitude",
                        "place.longitude",
                        "place.zone",
                        "when.date",
                        "sky.beam",
                        "look-at.bracket.towards-sun",
                        "look-at.bracket.height",
                        "look-at.arm.towards-sun",
                        "look-at.arm.height",
                        "look-at.handle.towards-sun",
                        "look-at.handle.height",
                        "look-at.wall.towards-sun",
                        "look-at.wall.height",
                        "look-at.grass.towards-sun",
                        "look-at.bench.towards-sun",
                        "look-at.bench.height"),
                required);
    }

    @Test
    void theExampleShowsEveryKeyAndEveryCutAndSun() {
        String text = ExampleScenario.text();
        for (Key key : Keys.all()) {
            assertTrue(text.contains(key.name() + ":"), key.path() + " is not in the example");
        }
        Keys.get("dish.surface.cut").words().forEach(cut -> assertTrue(text.contains("cut: " + cut), cut));
        List.of("equal-width", "equal-depth-step", "equal-length")
                .forEach(spacing -> assertTrue(text.contains(spacing), spacing));
        Keys.get("sun.shape.kind").words().forEach(kind -> assertTrue(text.contains("kind: " + kind), kind));
        Keys.get("dish.covered.part").words().forEach(part -> assertTrue(text.contains(part), part));
        Keys.get("sky.kind").words().forEach(kind -> assertTrue(text.contains("kind: " + kind), kind));
        Keys.find("sky.setting").orElseThrow().words().forEach(word -> assertTrue(text.contains(word), word));
        Keys.find("pan.material").orElseThrow().words().forEach(word -> assertTrue(text.contains(word), word));
    }

    @Test
    void sectionsAndNames() {
        assertEquals(
                List.of(
                        "title",
                        "dish",
                        "mirror",
                        "workmanship",
                        "shape",
                        "as-built",
                        "build",
                        "sun",
                        "aim",
                        "pan",
                        "plane",
                        "stand",
                        "place",
                        "when",
                        "sky",
                        "air",
                        "heat-levels",
                        "look-at"),
                Keys.namesIn(""));
        assertEquals(List.of("elevation", "beam", "shape"), Keys.namesIn("sun"));
        assertTrue(Keys.isSection("dish.surface") && Keys.isSection("aim.turn") && !Keys.isSection("dish.hub"));
        assertEquals("dish.surface", Keys.find("dish.surface.cut").orElseThrow().section());
    }

    /** Distances by hand; a swap of neighbours counts once (Damerau 1964). */
    @ParameterizedTest
    @CsvSource({
        "hub, hub, 0",
        "hub, hbu, 1",
        "slope-error, slop-eror, 2",
        "'', hub, 3",
        "ca, abc, 3",
        "pan, plane, 2",
        "kitten, sitting, 3"
    })
    void countsEdits(String a, String b, int edits) {
        assertEquals(edits, NearestWord.distance(a, b));
        assertEquals(edits, NearestWord.distance(b, a));
    }
}
