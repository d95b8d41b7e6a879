package simmerpoint.scenario;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import simmerpoint.scenario.file.ScenarioReader;

/** Wrong zones and rims: their line, their key, and the words that help; and what is odd but allowed. */
class BadZonesTest {
    private static String with(String part) {
        return """
                dish:
                  diameter: 1.2 m
                  focal-length: 60 cm
                  hub: 6 cm
                  surface: {cut: bent-strips, sectors: 24}
                  %s
                pan: {diameter: 24 cm}
                """.formatted(part);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "zones: {middle: {}, middle: {}}|dish.zones.middle|this key is given twice, first in line 6",
                "zones: {mittle: {outer-diameter: 80 cm}}|dish.zones.mittle|did you mean middle?",
                "zones: {centre: {outer-diameter: 80 cm}}|dish.zones.centre|known in dish.zones are middle, ring, rim",
                "zones: {middle: {outer-diameter: 140 cm}}|dish.zones.middle.outer-diameter|140 cm is more than the dish has, which is 1.2 m wide",
                "zones: {rim: {inner-diameter: 130 cm}}|dish.zones.rim.inner-diameter|a zone from 130 cm to 1.2 m has no width",
                "zones: {rim: {inner-diameter: 80 cm, outer-diameter: 80 cm}}|dish.zones.rim.inner-diameter|a zone from 80 cm to 80 cm has no width",
                "zones: {middle: {outer-diameter: 5 cm}}|dish.zones.middle.outer-diameter|a zone from the hub, 6 cm, to 5 cm has no width",
                "zones: {upper: {from-angle: 20°, to-angle: 20°}}|dish.zones.upper.to-angle|a zone from 20° to 20° has no width",
                "zones: {middle: {outer-diameter: 80 cm, surface: {sectors: 12}}}|dish.zones.middle.surface.cut|this key is missing",
                "zones: {middle: {outer-diameter: 80 cm, gap: 50 cm}}|dish.zones.middle.gap|50 cm leaves nothing of the panels of this zone",
                "zones: {middle: {mirror: {material: own figures, slope-error: 5 mrad}}}|dish.zones.middle.mirror.reflectance|own figures need it",
                "zones: {rim: {inner-diameter: 110 cm, surface: {cut: square-tiles, tile: 8 cm}}}|dish.zones.rim|no whole panel fits into this zone",
                "rim: {shape: polygon, sides: 2}|dish.rim.sides|2 is out of range; allowed is 3 to 100",
                "rim: {shape: polygon}|dish.rim.sides|this key is missing; write for instance sides: 8",
                "rim: {shape: square, width: 2 m}|dish.rim.width|a rim 2 m wide cuts nothing off a dish 1.2 m wide",
                "rim: {shape: square, width: 5 cm}|dish.rim.width|5 cm leaves nothing of the mirror about the hub, which is 6 cm wide",
                "rim: {shape: square, width: 80 cm, corner-cut: 50 cm}|dish.rim.corner-cut|50 cm off each corner leaves no sides; it must be below 40 cm",
                "rim: {slot-width: 1.4 m}|dish.rim.slot-width|1.4 m is half of the dish or more, no slot",
                "rim: {slot-width: 4 cm, slot-length: 90 cm}|dish.rim.slot-length|90 cm is more than from rim to middle, 60 cm",
                "rim: {shape: square, width: 80 cm, slot-width: 4 cm, slot-length: 45 cm}|dish.rim.slot-length|45 cm is more than from rim to middle, 40 cm",
                "rim: {half: upper, slot-width: 4 cm}|dish.rim.slot-at|at 180° from the upper edge this dish has no mirror: only the upper half is there",
                "rim: {slot-length: 30 cm}|dish.rim.slot-length|a slot needs a width",
                "rim: {half: front}|dish.rim.half|front is not known here; allowed are whole, upper, lower, left, right",
            })
    void isRefused(String part, String key, String words) {
        BadInput.assertRefused(with(part), 6, key, words);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "zones: {middle: {outer-diameter: 80 cm}, ring: {outer-diameter: 80 cm}}|dish.zones.middle: 100 % of the mirrors of this zone lie under those of another; they are not counted",
                "zones: {rim: {inner-diameter: 60 cm, surface: {cut: square-tiles, tile: 12 cm}}}|dish.zones.rim: 43 % of this zone has no mirror; with at-rim: cut, or smaller tiles, less is",
                "rim: {shape: square, width: 100 cm}|dish.diameter: 1.2 m rounds off the corners of the rim; with diameter: 1415 mm they are whole",
                "rim: {shape: square, width: 60 cm}|dish.diameter: nothing of the mirror is as far out as 1.2 m; the corners of the rim are on a circle 849 mm wide: write diameter: 849 mm",
                "zones: {middle: {outer-diameter: 80 cm}}|dish.zones: the outermost zone ends 80 cm across, and the dish is 1.2 m wide; the rest is bare",
            })
    void isTold(String part, String warning) throws Exception {
        List<String> said =
                ScenarioReader.parse("test", with(part), Path.of("")).warnings();
        assertTrue(said.contains(warning), said.toString());
    }

    /** Where a rim has a width, the diameter that leaves its corners whole is known: 80 cm·√2, rounded up. */
    @Test
    void theDiameterThatIsMissingIsTold() {
        String text = with("rim: {shape: square, width: 80 cm}").replaceFirst("\n *diameter: 1.2 m", "");
        BadInput.assertRefused(
                text,
                text.substring(0, text.indexOf("dish:")).split("\n", -1).length,
                "dish.diameter",
                "the corners of this rim are on a circle 1132 mm wide: write diameter: 1132 mm");
    }
}
