package simmerpoint.scenario;

import static simmerpoint.scenario.BadInput.assertRefused;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Wrong places, times and skies: line, key and the words that help. */
class BadOutdoorsTest {
    /** Line 1 dish, 2 place, 3 latitude, 4 longitude, 5 altitude, 6 zone, 7 when, 8 date, 9 time, 10 sky, 11 setting. */
    private static final String GOOD = """
            dish: {diameter: 1.2 m, focal-length: 0.8 m, surface: {cut: smooth}}
            place:
              latitude: 47.3° N
              longitude: 8.5° E
              altitude: 420 m
              zone: UTC+1
            when:
              date: 2026-06-21
              time: 09:30
            sky:
              setting: rural
            """;

    @Test
    void theGoodOneIsRead() throws Exception {
        BadInput.read(GOOD);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "latitude: 47.3° N|latitude: 97.3° N|3|place.latitude|97.3° N is out of range; allowed is -90° to 90°",
                "latitude: 47.3° N|latitude: 47.3° E|3|place.latitude|47.3° E is not a latitude, which ends in N or S; write for instance 47.3° N",
                "latitude: 47.3° N|latitude: 47.3|3|place.latitude|47.3 has no unit",
                "latitude: 47.3° N|latitude: 47,3°|3|place.latitude|write 47.3°",
                "longitude: 8.5° E|longitude: 200° E|4|place.longitude|200° E is out of range; allowed is -180° to 180°",
                "longitude: 8.5° E|longitude: -8.5° W|4|place.longitude|has a sign and a letter; keep one of them",
                "altitude: 420 m|altitude: 9500 m|5|place.altitude|9500 m is out of range; allowed is -500 m to 9000 m",
                "zone: UTC+1|zone: Europe/Zurick|6|place.zone|Europe/Zurick is not a known time zone; did you mean Europe/Zurich?",
                "zone: UTC+1|zone: Nairobi|6|place.zone|did you mean Africa/Nairobi?",
                "zone: UTC+1|zone: Nairobbi|6|place.zone|did you mean Africa/Nairobi?",
                "zone: UTC+1|zone: summer|6|place.zone|write a name such as Europe/Berlin or Africa/Nairobi, or hours from UTC such as UTC+1",
                "zone: UTC+1|zone: CEST|6|place.zone|CEST is not a known time zone",
                "zone: UTC+1|zone: UTC+15|6|place.zone|UTC+15 is out of range; clocks go from UTC-12 to UTC+14",
                "zone: UTC+1|zone: UTC+1:70|6|place.zone|is out of range",
                "zone: UTC+1|zone: Etc/GMT+1|6|place.zone|counts its hours the other way round; write hours from UTC such as UTC+1",
                "zone: UTC+1|zone: ''|6|place.zone|an empty name is not a known time zone",
                "date: 2026-06-21|date: 2026-02-30|8|when.date|2026-02-30 is not a date: the days of February 2026 are 1 to 28",
                "date: 2026-06-21|date: 2026-13-01|8|when.date|2026-13-01 is not a date: its month is 13, allowed is 1 to 12",
                "date: 2026-06-21|date: 2026-06-00|8|when.date|the days of June 2026 are 1 to 30",
                "date: 2026-06-21|date: 21.6.2026|8|when.date|21.6.2026 is not a date; write year, month and day, for instance 2026-06-21",
                "date: 2026-06-21|date: 2526-06-21|8|when.date|2526-06-21 is out of range; years from 1900 to 2199 are known",
                "date: 2026-06-21|date: today|8|when.date|today is not a date",
                "time: 09:30|time: 24:00|9|when.time|24:00 is not a time of day; write hours and minutes from 00:00 to 23:59, for instance 09:30",
                "time: 09:30|time: 9.30|9|when.time|9.30 is not a time of day",
                "time: 09:30|time: 9:30 pm|9|when.time|is not a time of day",
                "time: 09:30|time: [9, 30]|9|when.time|a list stands here",
                "time: 09:30|time: 23:00|9|when.time|23:00 on 2026-06-21: the sun is ",
                "setting: rural|setting: town|11|sky.setting|town is not known here; allowed are local, mountains, rural, city, industrial",
                "setting: rural|turbidity: 0.3|11|sky.turbidity|0.3 is out of range; allowed is 1 to 20",
                "setting: rural|turbidity: 3 %|11|sky.turbidity|3 % is not a plain number",
                "setting: rural|kind: cloudy|11|sky.kind|cloudy is not known here; allowed are clear, measured",
                "setting: rural|kind: measured|10|sky.beam|this key is missing; write for instance beam: 850 W/m²",
                "setting: rural|beam: 850 W/m²|11|sky.beam|beam does not belong to kind clear, only to measured",
                "setting: rural|`setting: rural\n  turbidity: 3`|12|sky.turbidity|setting and turbidity both say how clear the air is",
                "setting: rural|`kind: measured\n  beam: 1300 W/m²`|12|sky.beam|no air without clouds gives a beam of 1300 W/m² while the sun stands",
                "setting: rural|`kind: measured\n  beam: 2 W/m²`|12|sky.beam|check beam, date and time",
                "`  zone: UTC+1\n`|``|2|place.zone|this key is missing; write for instance zone: UTC+1",
                "`  latitude: 47.3° N\n`|``|2|place.latitude|this key is missing",
                "`  date: 2026-06-21\n`|``|7|when.date|this key is missing; write for instance date: 2026-06-21",
                "`place:`|`plaec:`|2|plaec|did you mean place?"
            })
    void isRefusedWithLineAndKey(String line, String replacement, int at, String key, String words) {
        assertRefused(GOOD.replace(line, replacement), at, key, words);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "sun: {elevation: 50°}|sun.elevation|place and when say where the sun stands; leave elevation out, or leave when out",
                "sun: {beam: 850 W/m²}|sun.beam|sky says how strong the sunlight is; leave beam out, or leave sky out"
            })
    void theSunIsSaidOnce(String section, String key, String words) {
        assertRefused(GOOD + section + "\n", 12, key, words);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"when: {date: 2026-06-21}|when", "sky: {setting: city}|sky"})
    void timeAndSkyNeedAPlace(String section, String key) {
        assertRefused(
                GOOD.lines().findFirst().orElseThrow() + "\n" + section + "\n",
                2,
                key,
                "the sun cannot be looked up without a place; add place: {latitude: ");
    }

    @Test
    void aMeasuredBeamNeedsItsTime() {
        String text = GOOD.replace("when:\n  date: 2026-06-21\n  time: 09:30\n", "")
                .replace("setting: rural", "{kind: measured, beam: 800 W/m²}")
                .replace("sky:\n  {", "sky: {");
        assertRefused(text, 7, "sky.beam", "when was it measured? add when: {date: 2026-06-21, time: 09:30}");
    }

    /** Clocks of the EU go forward at 1:00 UTC on the last Sunday of March, 29 March 2026 (directive 2000/84/EC). */
    @Test
    void anHourThatTheClockLeftOutIsRefused() {
        String text = GOOD.replace("UTC+1", "Europe/Berlin")
                .replace("2026-06-21", "2026-03-29")
                .replace("09:30", "02:30");
        assertRefused(
                text,
                9,
                "when.time",
                "02:30 did not exist on 2026-03-29 in Europe/Berlin: the clock went forward from 02:00 to 03:00");
    }

    /** The sun stays down on 21 December north of 90° − 23.4° + 0.8° = 67.4° (obliquity and refraction, handbooks). */
    @Test
    void thePolarNightIsNamed() {
        String text = GOOD.replace("47.3° N", "73° N").replace("2026-06-21", "2026-12-21");
        assertRefused(text, 9, "when.time", "below the horizon; it does not rise there all day; choose another date");
    }

    /**
     * On the equator at the equinox the sun rises near 5:56:40 and sets near 18:03:20 apparent solar time, plus 7 minutes of the
     * equation of time (handbooks), with longitude 0° on the clock of UTC: 6:04 and 18:10.
     */
    @Test
    void sunriseAndSunsetAreTold() {
        String text = GOOD.replace("47.3° N", "0° N")
                .replace("8.5° E", "0° E")
                .replace("UTC+1", "UTC")
                .replace("2026-06-21", "2026-03-20")
                .replace("09:30", "03:00");
        assertRefused(text, 9, "when.time", "choose a time after 06:04 and before 18:10; it stands highest at 12:07");
    }

    /** The sun that has drifted still has to shine. */
    @Test
    void aSunThatDriftsBelowTheHorizonIsRefused() {
        String text =
                "dish: {diameter: 1.2 m, focal-length: 0.45 m, surface: {cut: smooth}}\nsun: {elevation: 3°, beam: 300 W/m²}\naim: {drift: {up: -4°}}\n";
        assertRefused(text, 3, "aim.drift.up", "the sun, 3° high, would have drifted below the horizon");
    }
}
