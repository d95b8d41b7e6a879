package simmerpoint.scenario;

import static simmerpoint.scenario.BadInput.assertRefused;
import static simmerpoint.scenario.BadInput.with;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each wrong value: its line, its key, and the words that help. */
class BadValuesTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "diameter: 1.2 m|diameter: 12 kg|3|dish.diameter|12 kg is not a length; write for instance 1.20 m",
                "diameter: 1.2 m|diameter: 1.2|3|dish.diameter|1.2 has no unit",
                "diameter: 1.2 m|diameter: 1,2 m|3|dish.diameter|write 1.2 m",
                "diameter: 1.2 m|diameter: .nan|3|dish.diameter|.nan is not a finite number",
                "diameter: 1.2 m|diameter: NaN m|3|dish.diameter|is not a finite number",
                "diameter: 1.2 m|diameter: -1.2 m|3|dish.diameter|-1.2 m is out of range; allowed is 1 cm to 100 m",
                "diameter: 1.2 m|diameter: 0 m|3|dish.diameter|0 m is out of range; allowed is 1 cm to 100 m",
                "diameter: 1.2 m|diameter: 0x1F m|3|dish.diameter|is not a decimal number",
                "diameter: 1.2 m|diameter: [1.2 m]|3|dish.diameter|a list stands here",
                "diameter: 1.2 m|diameter: {m: 1.2}|3|dish.diameter|a section stands here",
                "diameter: 1.2 m|diameter:|3|dish.diameter|there is no value; write for instance 1.20 m",
                "diameter: 1.2 m|diameter: null|3|dish.diameter|there is no value",
                "diameter: 1.2 m|diameter: ~|3|dish.diameter|there is no value",
                "diameter: 1.2 m|diameter: ''|3|dish.diameter|there is nothing here",
                "diameter: 1.2 m|diameter: yes|3|dish.diameter|yes is not a length",
                "hub: 60 mm|hub: -6 mm|5|dish.hub|-6 mm is out of range; allowed is 0 mm to 100 m",
                "hub: 60 mm|hub: 1.3 m|5|dish.hub|1.3 m is not smaller than the dish, which is 1.2 m wide",
                "focal-length: 0.8 m|focal-length: 17 cm|4|dish.focal-length|at least 0.15 times the diameter, here 18 cm",
                "gap: 0 mm|gap: 10 cm|6|dish.gap|leaves nothing of the panels; the narrowest side is 95 mm",
                "sectors: 24|sectors: 2|7|dish.surface.sectors|2 is out of range; allowed is 3 to 10000",
                "sectors: 24|sectors: 2.7|7|dish.surface.sectors|2.7 is not a whole number",
                "sectors: 24|sectors: 24 mm|7|dish.surface.sectors|24 mm is not a whole number",
                "rings: 6}|rings: 0}|7|dish.surface.rings|0 is out of range; allowed is 1 to 10000",
                "sectors: 24, rings: 6|sectors: 5000, rings: 5000|7|dish.surface.sectors|25000000 panels",
                "cut: flat-rings|cut: flat-ring|7|dish.surface.cut|did you mean flat-rings?",
                "cut: flat-rings|cut: origami|7|dish.surface.cut|allowed are flat-rings, bent-strips",
                "cut: flat-rings, sectors: 24, rings: 6|cut: hexagon-tiles, tile: 110 cm|7|dish.surface.tile|no whole tile of 110 cm fits between the hub",
                "cut: flat-rings, sectors: 24, rings: 6|cut: square-tiles, tile: 60 cm|7|dish.surface.tile|no whole tile of 60 cm",
                "slope-error: 5 mrad|slope-error: 2 rad|9|mirror.slope-error|2 rad is out of range; allowed is 0 rad to 0.2 rad",
                "slope-error: 5 mrad|slope-error: 5 mm|9|mirror.slope-error|5 mm is not an angle",
                "slope-error: 5 mrad|reflectance: 85|9|mirror.reflectance|85 is out of range; allowed is 0 to 1; did you mean 85 %?",
                "slope-error: 5 mrad|dust: 100 %|9|mirror.dust|100 % is out of range; allowed is 0 % to below 100 %",
                "slope-error: 5 mrad|reflectance: 500 %|9|mirror.reflectance|500 % is out of range; allowed is 0 % to 100 %",
                "diameter: 1.2 m|diameter: 0.1 in|3|dish.diameter|0.1 in is out of range; allowed is 0.3938 in to 3937 in",
                "diameter: 1.2 m|diameter: 400 ft|3|dish.diameter|400 ft is out of range; allowed is 0.03281 ft to 328 ft",
                "slope-error: 5 mrad|material: aluminized polyester film|9|mirror.material|did you mean aluminised polyester film?",
                "slope-error: 5 mrad|material: gold|9|mirror.material|gold is not known here; allowed are",
                "elevation: 50°|elevation: -5°|11|sun.elevation|out of range; allowed is above 0° to 90°; the sun must stand above the horizon",
                "elevation: 50°|elevation: 95°|11|sun.elevation|95° is out of range",
                "beam: 850 W/m²|beam: 0 W/m²|12|sun.beam|0 W/m² is out of range; allowed is above 0 W/m² to 1500 W/m²",
                "beam: 850 W/m²|beam: 850 W|12|sun.beam|850 W is not an irradiance",
                "diameter: 24 cm|diameter: 1.3 m|14|pan.diameter|is not smaller than the dish, which is 1.2 m wide",
                "diameter: 24 cm|finish: black|14|pan.finish|black is not known here; nearest are black paint, matt black stove paint, black enamel",
                "diameter: 24 cm|finish: pink|14|pan.finish|pink is not known here",
                "pull-back: 0 cm|pull-back: -90 cm|16|stand.pull-back|into or behind the mirror",
                "title: test|title: |1|title|there is no value",
                "title: test|title: ''|1|title|there is nothing here",
                "title: test|title: [a, b]|1|title|a list stands here",
                "title: test|title: \"a\\eb\"|1|title|cannot be printed"
            })
    void isRefusedWithLineAndKey(String line, String replacement, int at, String key, String words) {
        assertRefused(with(line, replacement), at, key, words);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "aim: {turn: {up: 31°}}|aim.turn.up|31° is out of range; allowed is -30° to 30°",
                "aim: {drift: {side: -40°}}|aim.drift.side|-40° is out of range; allowed is -30° to 30°",
                "aim: {jitter: -1 mrad}|aim.jitter|-1 mrad is out of range; allowed is 0 mrad to 200 mrad",
                "aim: {pan-carried-by: donkey}|aim.pan-carried-by|allowed are stand, dish",
                "aim: {turn: 5°}|aim.turn|5° stands here, but a section is needed; its keys are up, side",
                "aim: {turn: [5°]}|aim.turn|a list stands here, but a section is needed",
                "aim:|aim|there is nothing under it; its keys are turn, drift, by-hand, jitter, mount, pan-carried-by",
                "plane: {disc: 20 cm}|plane|pan and plane are both given; keep one of them"
            })
    void isRefusedInFurtherSections(String section, String key, String words) {
        assertRefused(BadInput.GOOD + section + "\n", 17, key, words);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "shape: {kind: uniform-disc, half-angle: 60 mrad}|sun.shape.half-angle|out of range; allowed is above 0 mrad to 50 mrad",
                "shape: {kind: gaussian, sigma: 0 mrad}|sun.shape.sigma|0 mrad is out of range",
                "shape: {kind: circumsolar, ratio: 0.9}|sun.shape.ratio|0.9 is out of range; allowed is 0.01 to 0.6",
                "shape: {kind: square}|sun.shape.kind|allowed are uniform-disc, limb-darkened",
                "shape: {kind: table}|sun.shape.file|this key is missing; write for instance file: sun.csv",
                "shape: {sigma: 2 mrad}|sun.shape.sigma|sigma does not belong to kind uniform-disc, only to gaussian",
                "shape: {kind: table, file: none.csv}|sun.shape.file|none.csv"
            })
    void sunShapesAreCheckedByKind(String shape, String key, String words) {
        assertRefused(with("beam: 850 W/m²", shape), 12, key, words);
    }
}
