package simmerpoint.scenario;

import static simmerpoint.scenario.BadInput.GOOD;
import static simmerpoint.scenario.BadInput.assertRefused;
import static simmerpoint.scenario.BadInput.with;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Wrong pans, air and heat levels: line, key and the words that help. */
class BadKitchenTest {
    /** Brimful by hand: π/4·0.24²·0.11 = 0.00498 m³. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "water: 6 l|pan.water|6 l is more than the pan holds, 5.0 l to the brim by its outer size",
                "water: 0 l|pan.water|no water: the pan heats something; leave the key out",
                "water: 0 kg|pan.water|no water: ",
                "water: -1 l|pan.water|-1 l is out of range; allowed is above 0 l to 1000 l",
                "water: 2|pan.water|2 has no unit, and an amount of water needs one; write for instance 2 l",
                "water: 2 m|pan.water|2 m is not an amount of water",
                "water: none|pan.water|none is not an amount of water",
                "water-temperature: 120 °C|pan.water-temperature|120 °C is out of range; allowed is 0 °C to 100 °C",
                "water-temperature: 20|pan.water-temperature|20 has no unit",
                "lid: maybe|pan.lid|maybe is neither on nor off; write on, off, yes or no",
                "lid: {on: yes}|pan.lid|a section stands here",
                "material: iron|pan.material|did you mean cast iron?",
                "material: steal|pan.material|did you mean steel?",
                "lid-finish: gold|pan.lid-finish|gold is not known here; allowed are black paint",
                "{underside-thickness: 1 cm, mass: 1 kg}|pan.mass|1 kg is less than the underside weighs alone",
                "underside-material: gold|pan.underside-material|gold is not known here; allowed are stainless steel",
                "underside-thickness: 1 m|pan.underside-thickness|1 m is out of range; allowed is 0.05 mm to 5 cm",
                "{lid-material: glass, lid-finish: white paint}|pan.lid-finish|it has no finish",
                "lid-material: wood|pan.lid-material|wood is not known here; allowed are metal, glass",
                "mass: 1.5 l|pan.mass|1.5 l is not a mass; write for instance 1.4 kg",
                "watr: 2 l|pan.watr|did you mean water?"
            })
    void pansAreRefused(String line, String key, String words) {
        assertRefused(with("diameter: 24 cm", line), 14, key, words);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "air: {temperature: 80 °C}|air.temperature|80 °C is out of range; allowed is -30 °C to 60 °C",
                "air: {wind: 3}|air.wind|3 has no unit, and a speed needs one; write for instance 1 m/s",
                "air: {wind: -3 m/s}|air.wind|-3 m/s is out of range; allowed is 0 m/s to 20 m/s",
                "air: {humidity: 60}|air.humidity|did you mean 60 %?",
                "air: {sky: cloudy}|air.sky|cloudy is not known here; allowed are open, covered",
                "air: {altitude: 10000 m}|air.altitude|out of range; allowed is -500 m to 9000 m",
                "heat-levels: {hold: 20 °C}|heat-levels.hold|20 °C is out of range; allowed is 30 °C to 100 °C",
                "heat-levels: {hold: 95 °C}|heat-levels.hold|keep warm, from 95 °C, must begin below simmer, which begins at 94.0 °C, 6 K below local boiling",
                "heat-levels: {boil-steam: 25 kg/(h·m²)}|heat-levels.boil-steam|fast boil, from 20 kg/(h·m²), must begin above boil, which begins at 25 kg/(h·m²)",
                "heat-levels: {fast-boil-steam: 6 kg/(h·m²)}|heat-levels.fast-boil-steam|must begin above boil",
                "heat-levels: {boil-steam: 6 kg/h}|heat-levels.boil-steam|6 kg/h is not a rate of steam",
                "heat-level: {hold: 60 °C}|heat-level|did you mean heat-levels?",
                "boil-steam: 6 kg/(h·m²)|boil-steam|it belongs under heat-levels"
            })
    void airAndLevelsAreRefused(String section, String key, String words) {
        assertRefused(GOOD + section + "\n", 17, key, words);
    }

    /** At 3000 m water boils at 90 °C: standard atmosphere (ISO 2533) and steam tables. */
    @Test
    void waterCannotStartHotterThanItBoils() {
        String text = with("diameter: 24 cm", "water-temperature: 95 °C") + "air: {altitude: 3000 m}\n";
        assertRefused(text, 14, "pan.water-temperature", "where it boils at 90.");
    }

    @Test
    void twoAltitudesAreOneTooMany() {
        String text = with("elevation: 50°", "shape: {kind: uniform-disc}").replace("  beam: 850 W/m²\n", "")
                + "place: {latitude: 47°, longitude: 8°, altitude: 400 m, zone: UTC+1}\nwhen: {date: 2026-06-21}\n"
                + "air: {altitude: 800 m}\n";
        assertRefused(text, 18, "air.altitude", "800 m is not the altitude of the place, 400 m; keep one of them");
    }

    @ParameterizedTest
    @CsvSource({"air: {wind: 2 m/s}, air", "heat-levels: {hold: 65 °C}, heat-levels"})
    void nothingIsCookedOnAPlane(String section, String key) {
        String plane = with("pan:\n  diameter: 24 cm", "plane:\n  disc: 24 cm");
        assertRefused(plane + section + "\n", 17, key, "nothing is cooked on a bare disc; leave " + key + " out");
        assertRefused(plane + "pan: {water: 2 l}\n", 17, "plane", "pan and plane are both given; keep one of them");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "tripod-height: 0 cm|stand.tripod-height|out of range; allowed is 1 cm to 50 m",
                "lowest-pan: 1.4 m|stand.lowest-pan|the highest pan, 130 cm, must be above the lowest, 1.4 m",
                "highest-pan: 30 cm|stand.highest-pan|the highest pan, 30 cm, must be above the lowest, 40 cm"
            })
    void heightsAreRefused(String line, String key, String words) {
        assertRefused(with("pull-back: 0 cm", line), 16, key, words);
    }
}
