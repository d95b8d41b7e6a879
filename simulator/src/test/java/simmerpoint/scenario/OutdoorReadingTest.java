package simmerpoint.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.scenario.keys.Key;
import simmerpoint.scenario.keys.Keys;
import simmerpoint.scenario.keys.ValueReader;
import simmerpoint.sun.AirType;
import simmerpoint.sun.BeamRangeModel;
import simmerpoint.sun.EsraSky;
import simmerpoint.sun.LinkeTurbidity;
import simmerpoint.sun.Site;
import simmerpoint.sun.SunMoment;
import simmerpoint.units.Dimension;
import simmerpoint.units.QuantityException;
import simmerpoint.units.QuantityParser;

/** What the file says of place, time and sky, and the sun that follows from it. */
class OutdoorReadingTest {
    private static final String DISH = "dish: {diameter: 1.2 m, focal-length: 0.8 m, surface: {cut: smooth}}\n";
    private static final String PLACE = "place: {latitude: 47.3° N, longitude: 8.5° E, altitude: 420 m, zone: UTC+1}\n";
    private static final String WHEN = "when: {date: 2026-06-21, time: 09:30}\n";
    private static final Site HILL = new Site(angle("47.3°"), angle("8.5°"), 420, ZoneId.of("UTC+1"));

    private static double angle(String text) {
        try {
            return QuantityParser.parse(text, Dimension.ANGLE);
        } catch (QuantityException e) {
            throw new IllegalArgumentException(e);
        }
    }

    private static CheckedScenario read(String sections) throws ScenarioException {
        return ScenarioReader.parse("t.yaml", DISH + sections, Path.of(""));
    }

    private static Scenario scenario(String sections) throws ScenarioException {
        return read(sections).atOneMoment();
    }

    private static SunMoment moment() {
        return SunMoment.at(HILL, LocalDate.of(2026, 6, 21).atTime(9, 30).atZone(HILL.zone()));
    }

    /**
     * I. Reda and A. Andreas, Solar position algorithm for solar radiation applications (NREL/TP-560-34302), table A5.1:
     * zenith angle 50.11162° at 820 mbar and 11 °C. The standard air of that height refracts it 0.0003° otherwise.
     */
    @Test
    void theSunStandsWhereThePublishedExampleSays() throws Exception {
        Scenario s =
                scenario("place: {latitude: 39.742476° N, longitude: 105.1786° W, altitude: 1830.14 m, zone: UTC-7}\n"
                        + "when: {date: 2003-10-17, time: '12:30:30'}\n");
        assertEquals(90 - 50.11162, Math.toDegrees(s.sun().elevationRadians()), 0.0005);
    }

    @Test
    void placeAndTimeSetElevationAndBeam() throws Exception {
        Scenario s = scenario(PLACE + WHEN + "sun: {shape: {kind: gaussian}}\n");
        SiteConditions o = s.site().orElseThrow();
        assertEquals(HILL, o.place());
        assertEquals(moment().time(), o.when());
        assertTrue(o.timed());
        assertEquals(moment().position().elevationRadians(), s.sun().elevationRadians());
        assertEquals(
                BeamRangeModel.centredOn(EsraSky.of(AirType.LOCAL)).at(moment()).likelyWattsPerSquareMetre(),
                s.sun().beamWattsPerSquareMetre());
        assertEquals("GaussianSun", s.sun().shape().getClass().getSimpleName());
        assertEquals(
                BeamRangeModel.centredOn(EsraSky.of(AirType.LOCAL)).at(moment()),
                o.sky().at(moment()));
        assertTrue(o.sky().at(moment()).lowWattsPerSquareMetre() < s.sun().beamWattsPerSquareMetre());
    }

    @ParameterizedTest
    @CsvSource({"local", "mountains", "rural", "city", "industrial"})
    void everySettingIsRead(String word) throws Exception {
        AirType setting = AirType.valueOf(word.toUpperCase(java.util.Locale.ROOT));
        assertEquals(
                setting == AirType.LOCAL
                        ? EsraSky.of(setting).beamWattsPerSquareMetre(moment())
                        : BeamRangeModel.around(EsraSky.of(setting))
                                .at(moment())
                                .likelyWattsPerSquareMetre(),
                scenario(PLACE + WHEN + "sky: {setting: " + word + "}\n").sun().beamWattsPerSquareMetre());
    }

    @Test
    void turbidityIsRead() throws Exception {
        assertEquals(
                new EsraSky(LinkeTurbidity.constant(3.2)).beamWattsPerSquareMetre(moment()),
                scenario(PLACE + WHEN + "sky: {kind: clear, turbidity: 3.2}\n")
                        .sun()
                        .beamWattsPerSquareMetre());
    }

    @ParameterizedTest
    @CsvSource({"'sky: {kind: measured, beam: 700 W/m²}'", "'sun: {beam: 700 W/m²}'"})
    void aMeasuredBeamHoldsThenAndSetsTheHazeOfTheDay(String section) throws Exception {
        Scenario s = scenario(PLACE + WHEN + section + "\n");
        assertEquals(700, s.sun().beamWattsPerSquareMetre(), 1e-9);
        BeamRangeModel sky = s.site().orElseThrow().sky();
        SunMoment noon = SunMoment.at(HILL, moment().time().plusHours(3));
        double later = sky.at(noon).likelyWattsPerSquareMetre();
        assertTrue(later > 730 && later < 900, "beam at noon " + later);
        assertEquals(later, sky.at(noon).lowWattsPerSquareMetre());
    }

    @Test
    void theTimeIsNoonIfTheDateStandsAlone() throws Exception {
        SiteConditions o = scenario(PLACE + "when: {date: 2026-06-21}\n").site().orElseThrow();
        assertEquals(LocalTime.NOON, o.when().toLocalTime());
    }

    @Test
    void aPlaceBesideAnElevationIsForDaysAndYears() throws Exception {
        CheckedScenario read = read(PLACE + "sun: {elevation: 40°, beam: 800 W/m²}\nsky: {turbidity: 4}\n");
        Scenario s = read.atOneMoment();
        assertEquals(Math.toRadians(40), s.sun().elevationRadians(), 1e-15);
        assertEquals(800, s.sun().beamWattsPerSquareMetre());
        SiteConditions o = s.site().orElseThrow();
        assertEquals(HILL, o.place());
        assertEquals(LocalDate.of(2026, 3, 21), o.when().toLocalDate());
        assertTrue(!o.timed());
        assertEquals(Optional.empty(), read.timeless());
    }

    @Test
    void aPlaceAloneIsReadButHasNoMoment() throws Exception {
        CheckedScenario read = read(PLACE);
        assertEquals(HILL, read.scenario().site().orElseThrow().place());
        ScenarioException e = assertThrows(ScenarioException.class, read::atOneMoment);
        assertEquals(
                "t.yaml, line 2, place: a place alone does not say where the sun stands; add when: {date: 2026-06-21,"
                        + " time: 09:30}, or sun.elevation",
                e.getMessage());
    }

    /** Central Europe's clocks went back from 3:00 to 2:00 on 25 October 2026 (EU directive 2000/84/EC). */
    @Test
    void anHourThatComesTwiceIsTheFirst() throws Exception {
        String pacific = "place: {latitude: 0°, longitude: 150° E, zone: Europe/Berlin}\n";
        SiteConditions o = scenario(pacific + "when: {date: 2026-10-25, time: 2:30}\n")
                .site()
                .orElseThrow();
        assertEquals("+02:00", o.when().getOffset().getId());
    }

    @ParameterizedTest
    @CsvSource({
        "UTC+1, UTC+01:00",
        "utc+1, UTC+01:00",
        "UTC−3:30, UTC-03:30",
        "'+05:30', UTC+05:30",
        "GMT+2, UTC+02:00",
        "UTC, UTC",
        "UTC+0, UTC",
        "Z, UTC",
        "UTC+14, UTC+14:00",
        "europe/berlin, Europe/Berlin",
        "America/New York, America/New_York"
    })
    void zonesAreReadByNameOrHours(String typed, String zone) throws Exception {
        Key key = Keys.find("place.zone").orElseThrow();
        assertEquals(ZoneId.of(zone), ValueReader.read(key, typed));
    }

    @Test
    void aClockFarFromTheSunIsNoted() throws Exception {
        String west = PLACE.replace("8.5° E", "121° W").replace("UTC+1", "UTC+8");
        List<String> warnings = read(west + "sun: {elevation: 50°}\n").warnings();
        assertEquals(1, warnings.size(), warnings.toString());
        assertTrue(warnings.get(0).startsWith("place: the sun would stand highest at 04:1"), warnings.toString());
        assertEquals(
                List.of(),
                read(west.replace("° W", "° E") + "sun: {elevation: 50°}\n").warnings());
    }

    @Test
    void placeAndTimeMayStandBesideTheFile() throws Exception {
        Scenario s = ScenarioReader.parse("t.yaml", DISH + PLACE + WHEN, Path.of(""))
                .with(Map.of("when.time", "10:30", "place.latitude", "47° N", "sky.turbidity", "3"))
                .atOneMoment();
        assertEquals(LocalTime.of(10, 30), s.site().orElseThrow().when().toLocalTime());
        assertEquals(Math.toRadians(47), s.site().orElseThrow().place().latitudeRadians(), 1e-15);
    }
}
