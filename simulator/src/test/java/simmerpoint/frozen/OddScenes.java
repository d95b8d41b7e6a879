package simmerpoint.frozen;

import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.file.ScenarioReader;

/** Scenes in which between them every sort of cut, sun, error, move and target occurs. Made up; nobody would build them. */
public final class OddScenes {
    private static final String DISH =
            "dish: {diameter: 1.2 m, focal-length: 70 cm, hub: 10 cm, gap: 3 mm, surface: {%s}}\n";
    private static final String TILTED =
            "aim: {turn: {up: 0.6°, side: -0.4°}, drift: {up: 0.5°, side: 0.3°}, jitter: 3 mrad, mount: 10 cm}\n";
    private static final String MOVED = "stand: {pull-back: 3 cm, side: 1 cm, raise: 2 cm}\n";
    private static final String LEVEL = "pan: {diameter: 24 cm, height: 11 cm}\n";

    private static final Map<String, String> TEXTS = Map.of(
            "rings-level",
            DISH.formatted("cut: flat-rings, sectors: 12, rings: 4")
                    + "mirror: {slope-error: 4 mrad, beam-spread: 2 mrad, panel-tilt: 6 mrad, dust: 3 %}\n"
                    + "sun: {elevation: 40°, shape: {kind: limb-darkened}}\n" + TILTED + MOVED + LEVEL,
            "strips-grate",
            DISH.formatted("cut: bent-strips, sectors: 16")
                    + "mirror: {slope-error: 5 mrad, wide-share: 0.2, wide-spread: 30 mrad, scattered: 0.04}\n"
                    + "sun: {elevation: 62°, shape: {kind: gaussian}}\n"
                    + "stand: {grate: {bars: 5, width: 8 mm, ring: 20 cm, turn: 20°}, arm: {width: 3 cm, from: 90°}}\n"
                    + LEVEL,
            "hexagons-disc",
            DISH.formatted("cut: hexagon-tiles, tile: 12 cm")
                    + "sun: {elevation: 55°, shape: {kind: circumsolar, ratio: 0.1}}\n" + TILTED
                    + "plane: {disc: 12 cm, lean: 20°}\n",
            "squares-low-sun",
            DISH.formatted("cut: square-tiles, tile: 15 cm")
                    + "sun: {elevation: 14°}\naim: {pan-carried-by: dish}\n" + MOVED
                    + "pan: {diameter: 30 cm, height: 18 cm, lid: no}\n",
            "smooth-perfect",
            "dish: {diameter: 1.2 m, focal-length: 70 cm, surface: {cut: smooth}}\n"
                    + "mirror: {slope-error: 0 mrad, beam-spread: 0 mrad}\n"
                    + "sun: {elevation: 90°}\nplane: {disc: 4 cm}\n",
            "mesh",
            "dish: {diameter: 1 m, focal-length: 58 cm, surface: {cut: from-file, file: triangle-dish.obj, unit: mm}}\n"
                    + "sun: {elevation: 35°}\n" + TILTED + LEVEL,
            "blocked",
            "dish: {diameter: 40 in, focal-length: 20 in, surface: {cut: from-file, file: blocked.obj, unit: in}}\n"
                    + "sun: {elevation: 50°}\naim: {turn: {up: 2°, side: 0°}, jitter: 5 mrad}\n" + LEVEL);

    private OddScenes() {}

    /** Every scene by its name. */
    public static Map<String, Scenario> all() {
        Map<String, Scenario> scenes = new TreeMap<>();
        TEXTS.forEach((name, text) -> scenes.put(name, read(name, text)));
        return scenes;
    }

    private static Scenario read(String name, String text) {
        Path folder = name.equals("blocked")
                ? Path.of("src/test/resources/simmerpoint/frozen/scenarios")
                : Path.of("../scenarios");
        try {
            return ScenarioReader.parse(name, text, folder).scenario();
        } catch (ScenarioException e) {
            throw new IllegalStateException(String.join("; ", e.sentences()), e);
        }
    }
}
