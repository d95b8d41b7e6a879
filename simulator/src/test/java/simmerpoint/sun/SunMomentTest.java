package simmerpoint.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SunMomentTest {
    private static final ZoneId UTC = ZoneOffset.UTC;

    /** Spencer's series forgets leap years, up to 0.75 day or 0.3°, over all latitudes, months and hours (derived). */
    @ParameterizedTest
    @ValueSource(doubles = {-65, -34, -5, 0, 12, 47, 70})
    void agreesWithShortFormulasAllYear(double latitude) {
        Site site = Site.ofDegrees(latitude, 33, 0, UTC);
        for (int month = 1; month <= 12; month++) {
            for (int hour = 0; hour < 24; hour += 5) {
                ZonedDateTime time = ZonedDateTime.of(2026, month, 1 + 7 * month % 28, hour, 7, 0, 0, UTC);
                SunPosition position = SunMoment.at(site, time).position();
                double sine = ShortFormulas.sineOfElevation(
                        site.latitudeRadians(),
                        ShortFormulas.declination(ShortFormulas.day(time)),
                        ShortFormulas.hourAngle(site, time));
                assertEquals(
                        Math.toDegrees(Math.asin(sine)),
                        Math.toDegrees(position.geometricElevationRadians()),
                        0.3,
                        time.toString());
            }
        }
    }

    /**
     * Spencer's formulas at the worked example of Reda and Andreas: zenith 49.78649°, azimuth 194.48925° (computed
     * apart from this program); so these tests would see a day or an hour gone astray. Cooper's declination is worth
     * 1.1° there.
     */
    @Test
    void shortFormulasAreWhatTheyShouldBe() {
        double declination = ShortFormulas.declination(290);
        assertEquals(-8.9591, Math.toDegrees(declination), 1e-4);
        assertEquals(14.8247, ShortFormulas.equationOfTime(290), 1e-4);
        double hour = Math.toRadians(11.15257);
        assertEquals(hour, ShortFormulas.hourAngle(EphemerisTest.GOLDEN, EphemerisTest.EXAMPLE), 1e-3);
        double latitude = EphemerisTest.GOLDEN.latitudeRadians();
        double zenith = Math.acos(ShortFormulas.sineOfElevation(latitude, declination, hour));
        assertEquals(49.78649, Math.toDegrees(zenith), 1e-4);
        assertEquals(194.48925 - 360, Math.toDegrees(ShortFormulas.azimuth(latitude, declination, hour)), 1e-4);
        double cooper = 23.45 * Math.sin(Math.toRadians(360.0 * (284 + 290) / 365));
        double byCooper = Math.acos(ShortFormulas.sineOfElevation(latitude, Math.toRadians(cooper), hour));
        assertEquals(90 - Math.toDegrees(byCooper), seenAtExample(), 1.1);
    }

    private static double seenAtExample() {
        return Math.toDegrees(SunMoment.at(EphemerisTest.GOLDEN, EphemerisTest.EXAMPLE)
                .position()
                .elevationRadians());
    }

    /**
     * J. A. Duffie and W. A. Beckman, Solar Engineering of Thermal Processes, chapter 1 (from memory): latitude 43°,
     * solar time 09:30 on 13 February and 18:30 on 1 July. The book's declination of −14° is Cooper's, 0.7° from the
     * true one; hence 0.8°.
     */
    @ParameterizedTest
    @CsvSource({"2026-02-13, -150, 66.5, -40.0", "2026-07-01, 390, 79.6, 112.0"})
    void meetsTextbookExamples(LocalDate date, int minutesFromNoon, double zenith, double azimuthFromSouth) {
        Site site = Site.ofDegrees(43, -89.4, 0, ZoneId.of("UTC-6"));
        ZonedDateTime time = SunDay.of(site, date).solarNoon().plusMinutes(minutesFromNoon);
        SunPosition position = SunMoment.at(site, time).position();
        assertEquals(90 - zenith, Math.toDegrees(position.geometricElevationRadians()), 0.8);
        assertEquals(180 + azimuthFromSouth, Math.toDegrees(position.azimuthRadians()), 0.8);
    }

    /**
     * Distance: 1 ∓ 0.0167 au (the eccentricity) early in January and July; the Moon and planets shift it by up to
     * 1e-4.
     */
    @Test
    void distanceSwingsWithTheYear() {
        Site site = Site.ofDegrees(0, 0, 0, UTC);
        double near = SunMoment.at(site, ZonedDateTime.of(2026, 1, 4, 0, 0, 0, 0, UTC))
                .position()
                .distanceAstronomicalUnits();
        double far = SunMoment.at(site, ZonedDateTime.of(2026, 7, 5, 0, 0, 0, 0, UTC))
                .position()
                .distanceAstronomicalUnits();
        assertEquals(0.9833, near, 1.1e-4);
        assertEquals(1.0167, far, 1.1e-4);
    }

    /** Refraction lifts a sun on the true horizon by about half a degree (29' to 34', almanacs), one at 45° by 1'. */
    @Test
    void airLiftsALowSun() {
        Site site = Site.ofDegrees(47, 8, 0, UTC);
        SunDay day = SunDay.of(site, LocalDate.of(2026, 4, 10));
        SunPosition low =
                SunMoment.at(site, day.sunrise().orElseThrow().plusMinutes(5)).position();
        double lift = low.elevationRadians() - low.geometricElevationRadians();
        assertEquals(30, 60 * Math.toDegrees(lift), 5);
        SunPosition noon = SunMoment.at(site, day.solarNoon()).position();
        assertEquals(0.9, 60 * Math.toDegrees(noon.elevationRadians() - noon.geometricElevationRadians()), 0.2);
    }

    @Test
    void clockOfThePlaceIsUsed() {
        Site site = Site.ofDegrees(47, 8, 0, ZoneId.of("Europe/Zurich"));
        SunMoment moment = SunMoment.at(site, ZonedDateTime.of(2026, 6, 30, 23, 30, 0, 0, UTC));
        assertEquals(LocalDate.of(2026, 7, 1), moment.date());
        assertTrue(!moment.position().isUp());
    }

    @ParameterizedTest
    @ValueSource(ints = {1899, 2200, -5})
    void refusesFarYears(int year) {
        Site site = Site.ofDegrees(47, 8, 0, UTC);
        ZonedDateTime time = ZonedDateTime.of(year, 6, 1, 0, 0, 0, 0, UTC);
        String message = assertThrows(IllegalArgumentException.class, () -> SunMoment.at(site, time))
                .getMessage();
        assertTrue(message.contains("1900 to 2199"), message);
    }

    @ParameterizedTest
    @CsvSource({"90.1, 0, 0, latitude", "NaN, 0, 0, latitude", "0, 181, 0, longitude", "0, 0, 9001, altitude"})
    void refusesPlacesOffTheEarth(double latitude, double longitude, double altitude, String word) {
        String message = assertThrows(
                        IllegalArgumentException.class, () -> Site.ofDegrees(latitude, longitude, altitude, UTC))
                .getMessage();
        assertTrue(message.startsWith(word), message);
    }
}
