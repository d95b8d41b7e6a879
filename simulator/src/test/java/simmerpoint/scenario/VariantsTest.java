package simmerpoint.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import simmerpoint.dish.cut.Smooth;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.scenario.values.ScenarioValues;
import simmerpoint.scenario.variants.DifferingKey;
import simmerpoint.scenario.variants.Variant;
import simmerpoint.scenario.variants.Variants;
import simmerpoint.scenario.variants.VariedKey;

class VariantsTest {
    private static final String DISH = "dish: {diameter: 1.2 m, focal-length: 0.8 m, gap: 1 mm, "
            + "surface: {cut: flat-rings, sectors: 24, rings: 6}}\n";

    @TempDir
    Path folder;

    private Path file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }

    private static List<Variant> read(List<Path> files, String... typed) throws ScenarioException {
        List<VariedKey> keys = new ArrayList<>();
        for (String each : typed) {
            keys.add(VariedKey.parse(each));
        }
        List<ScenarioValues> scenarios = new ArrayList<>();
        for (Path file : files) {
            scenarios.add(ScenarioReader.values(file));
        }
        return Variants.of(scenarios, keys);
    }

    private static void assertRefused(String words, List<Path> files, String... typed) {
        ScenarioException e = assertThrows(ScenarioException.class, () -> read(files, typed));
        assertTrue(e.getMessage().contains(words), e.getMessage());
    }

    @Test
    void everyFileWithEveryCombination() throws Exception {
        Path a = file("a.yaml", "title: A\n" + DISH);
        Path b = file("b.yaml", "title: B\n" + DISH);
        List<Variant> all = read(List.of(a, b), "dish.hub=1 cm,2 cm", "pan.diameter=20 cm,24 cm,30 cm");
        assertEquals(12, all.size());
        assertEquals("A", all.get(0).source());
        assertEquals(
                Map.of("dish.hub", "1 cm", "pan.diameter", "24 cm"), all.get(1).varied());
        assertEquals("B", all.get(11).source());
        assertEquals(0.02, all.get(11).scenario().dish().hubMetres(), 1e-12);
        assertEquals(0.15, all.get(11).scenario().target().radiusMetres(), 1e-12);
        assertEquals("dish.hub=2 cm, pan.diameter=30 cm", all.get(11).assignments());
    }

    @Test
    void filesWithoutTitlesOfTheirOwnAreCalledByTheirNames() throws Exception {
        Path a = file("a.yaml", DISH);
        Path b = file("b.yaml", "title: B\n" + DISH);
        assertEquals("a.yaml", read(List.of(a, b)).get(0).source());
        Path other = Files.createDirectory(folder.resolve("other"));
        Path again = Files.writeString(other.resolve("a.yaml"), DISH);
        assertEquals(again.toString(), read(List.of(a, again)).get(1).source());
    }

    @Test
    void keysThatDoNotBelongToAVariedCutAreLeftOutOnce() throws Exception {
        Path a = file(
                "a.yaml",
                DISH + "mirror: {panel-tilt: 4 mrad}\nworkmanship: {rib-cut: 1 mm, panel-edge: 1 mm, sag: 1 mm}\n");
        List<Variant> all =
                read(List.of(a), "dish.surface.cut=Smooth,flat-rings,bent-strips", "dish.surface.sectors=12,24");
        assertEquals(
                List.of(
                        Map.of("dish.surface.cut", "Smooth"),
                        Map.of("dish.surface.cut", "flat-rings", "dish.surface.sectors", "12"),
                        Map.of("dish.surface.cut", "flat-rings", "dish.surface.sectors", "24"),
                        Map.of("dish.surface.cut", "bent-strips", "dish.surface.sectors", "12"),
                        Map.of("dish.surface.cut", "bent-strips", "dish.surface.sectors", "24")),
                all.stream().map(Variant::varied).toList());
        assertTrue(all.get(0).scenario().dish().cut() instanceof Smooth);
        assertEquals(0, all.get(0).scenario().mirror().panelTiltRadians(), "a smooth dish has no panels to tilt");
        assertEquals(0.004, all.get(1).scenario().mirror().panelTiltRadians(), 1e-12);
    }

    @Test
    void anotherMaterialBringsItsOwnFigures() throws Exception {
        Path a = file(
                "a.yaml",
                DISH
                        + "mirror: {material: aluminised polyester film, reflectance: 0.5, slope-error: 9 mrad, dust: 0.1}\n");
        List<Variant> all = read(
                List.of(a),
                "mirror.material=aluminised polyester film,household mirror,own figures",
                "pan.height=9 cm");
        assertEquals(0.5, all.get(0).scenario().mirror().reflectance(), 0, "the file's figures are those of its film");
        double glass = all.get(1).scenario().mirror().reflectance();
        assertTrue(glass > 0.6, "reflectance " + glass);
        assertEquals(0.1, all.get(1).scenario().mirror().dust(), 0, "dust comes with no material");
        assertEquals(0.5, all.get(2).scenario().mirror().reflectance(), 0);
        List<Variant> both = read(List.of(a), "mirror.material=household mirror", "mirror.reflectance=0.7,0.8");
        assertEquals(0.7, both.get(0).scenario().mirror().reflectance(), 0);
    }

    @Test
    void whatDiffersIsNamed() throws Exception {
        Path a = file("a.yaml", "title: A\n" + DISH + "pan: {diameter: 240 mm, water: 1 l}\n");
        Path b = file("b.yaml", "title: B\n" + DISH + "plane: {disc: 20 cm}\nmirror: {dust: 2 %}\n");
        Map<String, List<String>> told = DifferingKey.of(read(List.of(a, b))).stream()
                .collect(Collectors.toMap(d -> d.key().path(), DifferingKey::values));
        assertEquals(List.of("1 l", DifferingKey.NOTHING), told.get("pan.water"));
        assertEquals(List.of("0", "2 %"), told.get("mirror.dust"));
        assertEquals(List.of(DifferingKey.NOTHING, "20 cm"), told.get("plane.disc"));
        assertTrue(!told.containsKey("title") && !told.containsKey("dish.diameter"), told.toString());
        List<DifferingKey> hub = DifferingKey.of(read(List.of(a), "dish.hub=0 mm,1 cm", "pan.diameter=24 cm"));
        assertEquals(1, hub.size(), "24 cm and 240 mm are the same: " + hub);
    }

    @Test
    void impossibleProductsAreRefused() throws Exception {
        Path a = file("a.yaml", DISH);
        List<Path> one = List.of(a);
        assertRefused("a.yaml: there is nothing to compare this one with; name a second file, or vary a key", one);
        assertRefused("nothing to compare", one, "dish.hub=1 cm");
        assertRefused("--vary, dish.hub: this key is varied twice", one, "dish.hub=1 cm,2 cm", "dish.hub=3 cm");
        assertRefused("this file is named twice", List.of(a, folder.resolve(".").resolve("a.yaml")));
        assertRefused("a.yaml: 2 m is not smaller than the dish", one, "dish.hub=1 cm,2 m", "pan.height=9 cm,8 cm");
        assertRefused("--vary dish.hub=2 m in ", one, "dish.hub=1 cm,2 m", "pan.height=9 cm,8 cm");
        String many = IntStream.rangeClosed(3, 100).mapToObj(String::valueOf).collect(Collectors.joining(","));
        assertRefused(
                "--vary: these are 9604 cookers, the product of all values and files; at most 1000",
                one,
                "dish.surface.sectors=" + many,
                "dish.surface.rings=" + many);
        assertRefused("no such file", List.of(a, folder.resolve("none.yaml")));
    }

    @Test
    void aFileWithoutATimeNeedsOne() throws Exception {
        Path a = file("a.yaml", DISH + "place: {latitude: 47°, longitude: 9°, zone: UTC+1}\nsky: {setting: rural}\n");
        assertRefused("a place alone does not say where the sun stands", List.of(a), "dish.hub=1 cm,2 cm");
        List<Variant> timed = read(List.of(a), "when.date=2026-06-21", "when.time=10:00,12:00");
        assertEquals(2, timed.size());
        assertRefused("the sun is", List.of(a), "when.date=2026-06-21", "when.time=10:00,23:30");
    }
}
