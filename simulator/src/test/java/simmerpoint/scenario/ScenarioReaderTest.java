package simmerpoint.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import simmerpoint.dish.cut.BentStrips;
import simmerpoint.dish.cut.FlatRings;
import simmerpoint.dish.cut.RingSpacing;
import simmerpoint.dish.cut.Smooth;
import simmerpoint.dish.mirror.Mirror;
import simmerpoint.pan.Pan;
import simmerpoint.pan.Plane;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.scenario.file.ExampleScenario;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.scenario.keys.Key;
import simmerpoint.scenario.keys.ValueReader;
import simmerpoint.setup.Aim;
import simmerpoint.setup.Stand;
import simmerpoint.units.QuantityException;

class ScenarioReaderTest {
    private static final Path HERE = Path.of("src/test/resources");
    private static final String SMALLEST = "dish: {diameter: 1.2 m, focal-length: 0.8 m, surface: {cut: smooth}}\n";

    private static Scenario read(String text) throws ScenarioException {
        return ScenarioReader.parse("t.yaml", text, HERE).scenario();
    }

    @Test
    void theBuiltInExampleIsTheTeaKitchen() throws Exception {
        assertEquals(Files.readString(Path.of("../scenarios/tea-kitchen.yaml")), ExampleScenario.text());
        CheckedScenario read = ScenarioReader.builtIn();
        assertEquals(ExampleScenario.text(), read.sourceText());
        assertEquals(List.of(), read.warnings());
        Scenario s = read.scenario();
        assertEquals("Tea kitchen at the lake hut", s.title());
        assertEquals(1.2, s.dish().diameterMetres());
        assertEquals(0.8, s.dish().focalLengthMetres());
        assertEquals(0.06, s.dish().hubMetres());
        assertEquals(new FlatRings(24, 6, RingSpacing.EQUAL_WIDTH), s.dish().cut());
        assertEquals(
                new Mirror("aluminised polyester film", 0.85, 0.02, 0.005, 0.001, 0.05, 0.02, 0.03, 0.004), s.mirror());
        assertEquals(Math.toRadians(50), s.sun().elevationRadians(), 1e-15);
        assertEquals(850, s.sun().beamWattsPerSquareMetre());
        assertEquals(0.00465, s.sun().shape().largestAngle(), 1e-12);
        assertEquals(new Aim(Math.toRadians(0.5), 0, 0, 0, 0, 0.05, Aim.PanCarrier.STAND), s.aim());
        assertEquals(Stand.AT_FOCUS, s.stand());
        Pan pan = (Pan) s.target();
        assertEquals("black enamel", pan.finish().name());
        assertEquals(0.24, pan.diameterMetres());
        assertEquals(0.11, pan.heightMetres());
    }

    static Stream<Path> scenarioFiles() throws Exception {
        try (Stream<Path> files = Files.list(Path.of("../scenarios"))) {
            return files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList().stream();
        }
    }

    /** No dish of ours is as wide as its focal length. */
    @ParameterizedTest
    @MethodSource("scenarioFiles")
    void everyScenarioIsReadWithoutWarningAndHasASizeOfItsOwn(Path file) throws Exception {
        CheckedScenario read = ScenarioReader.read(file);
        assertEquals(List.of(), read.warnings(), file.toString());
        double share = read.scenario().dish().focalLengthMetres()
                / read.scenario().dish().diameterMetres();
        assertTrue(Math.abs(share - 1) > 0.1, file + ": focal length / diameter " + share);
        assertFalse(read.scenario().title().isBlank());
        assertTrue(read.sourceText().startsWith("#"), file + " does not begin with a comment");
    }

    @Test
    void thereAreEightScenariosWithTitlesOfTheirOwnAndSevenCuts() throws Exception {
        List<Path> files = scenarioFiles().toList();
        long titles = 0;
        java.util.Set<Object> seen = new java.util.HashSet<>();
        for (Path file : files) {
            Scenario s = ScenarioReader.read(file).scenario();
            titles += seen.add(s.title()) ? 1 : 0;
            seen.add(s.dish().cut().kind());
        }
        assertEquals(8, titles);
        assertEquals(15, seen.size());
    }

    @Test
    void everythingButTheDishHasADefault() throws Exception {
        Scenario s = read(SMALLEST);
        assertEquals("", s.title());
        assertEquals(0, s.dish().hubMetres());
        assertEquals(0, s.dish().gapMetres());
        assertEquals("aluminised polyester film", s.mirror().material());
        assertEquals(0, s.mirror().dust());
        assertEquals(0, s.mirror().panelTiltRadians());
        assertEquals(Math.toRadians(50), s.sun().elevationRadians(), 1e-15);
        assertEquals(850, s.sun().beamWattsPerSquareMetre());
        assertEquals(Aim.PERFECT, s.aim());
        assertEquals(Stand.AT_FOCUS, s.stand());
        assertEquals("black enamel", ((Pan) s.target()).finish().name());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "cut: flat-rings, sectors: 16, rings: 3, spacing: equal-length|FlatRings[sectors=16, rings=3, spacing=EQUAL_LENGTH, curve=PARABOLA]",
                "cut: flat-rings, sectors: 16, rings: 3, spacing: equal-depth-step|FlatRings[sectors=16, rings=3, spacing=EQUAL_DEPTH_STEP, curve=PARABOLA]",
                "cut: bent-strips, sectors: 32|BentStrips[sectors=32, curve=PARABOLA]",
                "cut: bent-strips, sectors: 32, curve: hanging-chain|BentStrips[sectors=32, curve=HANGING_CHAIN]",
                "cut: square-tiles, tile: 2 in|Tiles[shape=SQUARE, tileMetres=0.0508, atRim=LEFT_OUT]",
                "cut: hexagon-tiles, tile: 50 mm|Tiles[shape=HEXAGON, tileMetres=0.05, atRim=LEFT_OUT]",
                "cut: smooth, curve: circle|Smooth[curve=CIRCLE]",
                "cut: smooth|Smooth[curve=PARABOLA]"
            })
    void readsEveryCut(String surface, String cut) throws Exception {
        assertEquals(
                cut, read(SMALLEST.replace("cut: smooth", surface)).dish().cut().toString());
    }

    @Test
    void figuresInTheFileOverrideTheMaterials() throws Exception {
        Mirror foil = read(SMALLEST + "mirror: {material: Kitchen foil on card, slope-error: 0.5°, dust: 4 %}\n")
                .mirror();
        assertEquals(
                new Mirror("kitchen foil on card", 0.81, 0.1, Math.toRadians(0.5), 0.005, 0.2, 0.04, 0.04, 0), foil);
        Mirror own = read(SMALLEST + "mirror: {material: own figures, reflectance: 90 %, slope-error: 3 mrad}\n")
                .mirror();
        assertEquals(Mirror.plain(0.9, 0.003), own);
    }

    @Test
    void aPlaneStandsInForThePan() throws Exception {
        assertEquals(
                new Plane(0.2, 0), read(SMALLEST + "plane: {disc: 20 cm}\n").target());
        assertEquals(
                new Plane(0.4, Math.toRadians(-10)),
                read(SMALLEST + "plane: {disc: 40 cm, lean: −10°}\n").target());
    }

    @Test
    void readsAimAndStand() throws Exception {
        Scenario s = read(SMALLEST
                + "aim: {turn: {up: 1 mrad, side: -2 mrad}, drift: {up: 3 mrad, side: 4 mrad}, jitter: 5 mrad,"
                + " mount: -6 cm, pan-carried-by: dish}\n"
                + "stand: {pull-back: 1 cm, slide: 2 cm, raise: -3 cm, side: 4 cm}\n");
        assertEquals(new Aim(0.001, -0.002, 0.003, 0.004, 0.005, -0.06, Aim.PanCarrier.DISH), s.aim());
        assertEquals(new Stand(0.01, 0.02, -0.03, 0.04), s.stand());
    }

    @ParameterizedTest
    @CsvSource({
        "uniform-disc, UniformDiscSun",
        "limb-darkened, LimbDarkenedSun",
        "gaussian, GaussianSun",
        "circumsolar, CircumsolarSun"
    })
    void everyKindOfSunHasDefaults(String kind, String type) throws Exception {
        Scenario s = read(SMALLEST + "sun: {shape: {kind: " + kind + "}}\n");
        assertEquals(type, s.sun().shape().getClass().getSimpleName());
    }

    @Test
    void wordsAndNumbersStayWhatWasTyped() throws Exception {
        assertEquals("no", read("title: no\n" + SMALLEST).title());
        assertEquals("0x1F", read("title: 0x1F\n" + SMALLEST).title());
        assertEquals("2026-05-01", read("title: 2026-05-01\n" + SMALLEST).title());
        assertEquals("null", read("title: 'null'\n" + SMALLEST).title());
        assertEquals("two lines", read("title: |\n  two\n  lines\n" + SMALLEST).title());
        assertEquals(1000, read(SMALLEST + "sun: {beam: 1e3 W/m²}\n").sun().beamWattsPerSquareMetre());
        assertEquals(0.9144, read(SMALLEST.replace("1.2 m", "36\"")).dish().diameterMetres());
        assertEquals(0.9144, read(SMALLEST.replace("1.2 m", "\"36 in\"")).dish().diameterMetres());
    }

    @Test
    void aLeadingDocumentMarkAndVersionAreRead() throws Exception {
        assertEquals(
                "a", read("%YAML 1.1\n---\ntitle: a\n" + SMALLEST + "...\n").title());
    }

    @ParameterizedTest
    @CsvSource({"on, true", "off, false", "yes, true", "no, false", "'On', true", "NO, false", "true, true"})
    void switchesTakeOnAndOff(String typed, boolean on) throws Exception {
        Key key =
                new Key("t", Key.Kind.SWITCH, null, "on", null, null, List.of(), "on", java.util.Set.of(), "A switch.");
        assertEquals(on, ValueReader.read(key, typed));
        assertThrows(QuantityException.class, () -> ValueReader.read(key, "maybe"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "sun: {beam: 1200 W/m²}|sun.beam",
                "sun: {elevation: 5°, beam: 300 W/m²}|sun.elevation",
                "pan: {diameter: 60 cm, finish: black paint} + stand: {pull-back: -59 cm}|stand:",
                "stand: {side: 25 cm}|stand.side: 25 cm is more than the width of the pan",
                "aim: {turn: {up: 4°, side: 4°}}|aim.turn: the dish points 5.7° off",
                "aim: {drift: {side: -6°}}|aim.drift: the sun has moved 6° off",
                "mirror: {slope-error: 5°}|5° is 87 mrad: was mrad meant?",
                "mirror: {dust: 40 %}|mirror.dust: 40 %",
                "pan: {diameter: 80 cm, finish: black paint}|pan.diameter: the pan is 80 cm wide",
                "pan: {height: 40 cm, finish: black paint}|pan.height",
                "sun: {elevation: 10°, beam: 850 W/m²}|sun.beam: 850 W/m² is more than even very clear air",
                "sun: {elevation: 30°, beam: 1000 W/m²}|sun.beam: 1000 W/m² is more than even very clear air",
                "sun: {elevation: 30°, beam: 971 W/m²}|sun.beam: 971 W/m² is more than even very clear air",
                "sun: {elevation: 75°, beam: 1100 W/m²} + stand: {highest-pan: 1.5 m}|sun.beam: 1100 W/m² is more than even very clear air",
                "place: {latitude: 40°, longitude: 0, zone: UTC} + when: {date: 2026-01-21} + sun: {beam: 1000 W/m²}|sky: 1000 W/m² is more than",
                "sun: {elevation: 89°, beam: 1200 W/m²} + stand: {highest-pan: 1.5 m}|sun.beam",
                "stand: {highest-pan: 110 cm}|stand: the pan stands too high to cook at, above 110 cm (121 cm above the ground)",
                "stand: {lowest-pan: 125 cm}|stand: the pan stands too low to cook at, below 125 cm (121 cm above the ground)",
                "mirror: {wide-share: 0.1, wide-spread: 0 mrad}|mirror.wide-spread",
                "plane: {disc: 5 mm}|the sun's image alone is 7.4 mm wide"
            })
    void saysWhatIsProbablyNotMeant(String section, String words) throws Exception {
        List<String> warnings = ScenarioReader.parse("t.yaml", SMALLEST + section.replace(" + ", "\n") + "\n", HERE)
                .warnings();
        assertEquals(1, warnings.size(), warnings.toString());
        assertTrue(warnings.get(0).contains(words), warnings.toString());
    }

    private static List<String> warningsOf(String dish) throws ScenarioException {
        String text = "dish: {diameter: 1.2 m, focal-length: 0.8 m, " + dish + "}\n";
        return ScenarioReader.parse("t.yaml", text, Path.of("../scenarios")).warnings();
    }

    @Test
    void warnsOfDishesWithMoreGapThanMirror() throws Exception {
        List<String> tiles = warningsOf("gap: 30 mm, surface: {cut: square-tiles, tile: 50 mm}");
        assertTrue(tiles.get(0).startsWith("dish.gap: gaps of 30 mm beside panels of 50 mm"), tiles.toString());
        assertTrue(tiles.get(1).startsWith("dish: mirrors cover only "), tiles.toString());
        List<String> rings = warningsOf("gap: 60 mm, surface: {cut: flat-rings, sectors: 24, rings: 6}");
        assertTrue(rings.get(0).startsWith("dish.gap: "), rings.toString());
    }

    @Test
    void saysWhichSectionsAreDefaults() throws Exception {
        assertEquals(
                List.of("mirror", "aim", "stand", "air", "heat-levels"),
                ScenarioReader.parse("t.yaml", SMALLEST + "sun: {beam: 800 W/m²}\npan: {lid: off}\n", HERE)
                        .defaults());
    }

    @Test
    void warnsOfAVeryDeepDish() throws Exception {
        CheckedScenario deep = ScenarioReader.parse("t.yaml", SMALLEST.replace("0.8 m", "0.25 m"), HERE);
        assertTrue(
                deep.warnings().toString().contains("very deep"),
                deep.warnings().toString());
    }

    @Test
    void valuesBesideTheFileReplaceItsOwn() throws Exception {
        Scenario s = ScenarioReader.parse("t.yaml", SMALLEST, HERE)
                .with(Map.of("mirror.dust", "5 %", "aim.turn.up", "1 mrad", "dish.diameter", "1 m"))
                .scenario();
        assertEquals(0.05, s.mirror().dust());
        assertEquals(0.001, s.aim().turnUpRadians());
        assertEquals(1.0, s.dish().diameterMetres());
    }

    @Test
    void anotherCutLeavesOutTheKeysItHasNoUseFor() throws Exception {
        String rings = SMALLEST.replace("cut: smooth", "cut: flat-rings, sectors: 24, rings: 6");
        assertEquals(
                new BentStrips(24),
                ScenarioReader.parse("t.yaml", rings, HERE)
                        .with(Map.of("dish.surface.cut", "bent-strips"))
                        .scenario()
                        .dish()
                        .cut());
        assertEquals(
                new Smooth(),
                ScenarioReader.parse("t.yaml", rings, HERE)
                        .with(Map.of("dish.surface.cut", "smooth"))
                        .scenario()
                        .dish()
                        .cut());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "dish.surface.sektors|12|t.yaml, dish.surface.sektors: this key is not known; did you mean dish.surface.sectors?",
                "look-at.shed|1|t.yaml, look-at.shed: this key is not known; known in look-at are bracket, arm, handle, wall, grass, bench",
                "look-at.shed.height|1|t.yaml, look-at.shed.height: this key is not known; known in look-at are bracket, arm, handle, wall, grass, bench",
                "dish.surface|12|t.yaml, dish.surface: this key is not known; it is a section",
                "mirror.dust|5 mm|t.yaml, mirror.dust: 5 mm is not a share",
                "dish.hub|2 m|dish.hub: 2 m is not smaller than the dish"
            })
    void wrongValuesBesideTheFileAreRefused(String key, String value, String words) {
        ScenarioException e = assertThrows(
                ScenarioException.class,
                () -> ScenarioReader.parse("t.yaml", SMALLEST, HERE).with(Map.of(key, value)));
        assertTrue(e.getMessage().contains(words), e.getMessage());
    }
}
