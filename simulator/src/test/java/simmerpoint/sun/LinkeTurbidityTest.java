package simmerpoint.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class LinkeTurbidityTest {
    private static final Site NORTH = Site.ofDegrees(47, 8, 400, ZoneId.of("UTC"));
    private static final Site SOUTH = Site.ofDegrees(-34, 20, 400, ZoneId.of("UTC"));

    /**
     * The yearly means printed beside the table (mild climate, northern hemisphere, manual of an open mapping
     * program).
     */
    @ParameterizedTest
    @CsvSource({"MOUNTAINS, 1.90", "RURAL, 2.75", "CITY, 3.75", "INDUSTRIAL, 5.00"})
    void monthsGiveThePrintedMean(AirType setting, double mean) {
        double[] months = MonthlyTable.read("linke-turbidity.tsv").values(setting.word());
        assertEquals(mean, Arrays.stream(months).average().orElseThrow(), 0.051);
        double days = 0;
        for (int day = 1; day <= 365; day++) {
            days += LinkeTurbidity.of(setting).on(LocalDate.ofYearDay(2026, day), NORTH);
        }
        assertEquals(mean, days / 365, 0.06);
    }

    /** Months of 31 days have their middle at noon of the 16th: printed January, July and October there. */
    @ParameterizedTest
    @CsvSource({"MOUNTAINS, 1.5, 2.3, 1.8", "RURAL, 2.1, 3.5, 2.6", "CITY, 3.1, 4.4, 3.6", "INDUSTRIAL, 4.1, 5.8, 4.9"})
    void tableStandsInTheMiddleOfTheMonth(AirType setting, double january, double july, double october) {
        LinkeTurbidity year = LinkeTurbidity.of(setting);
        assertEquals(january, year.on(LocalDate.of(2026, 1, 16), NORTH), 1e-12);
        assertEquals(july, year.on(LocalDate.of(2026, 7, 16), NORTH), 1e-12);
        assertEquals(october, year.on(LocalDate.of(2026, 10, 16), NORTH), 1e-12);
    }

    @ParameterizedTest
    @EnumSource(value = AirType.class, mode = EnumSource.Mode.EXCLUDE, names = "LOCAL")
    void southHasItsSummerInJanuary(AirType setting) {
        LinkeTurbidity year = LinkeTurbidity.of(setting);
        assertEquals(year.on(LocalDate.of(2026, 7, 16), NORTH), year.on(LocalDate.of(2026, 1, 16), SOUTH), 1e-12);
        assertEquals(year.on(LocalDate.of(2026, 1, 16), NORTH), year.on(LocalDate.of(2026, 7, 16), SOUTH), 1e-12);
    }

    @ParameterizedTest
    @EnumSource(value = AirType.class, mode = EnumSource.Mode.EXCLUDE, names = "LOCAL")
    void everyRowHasASource(AirType setting) {
        assertTrue(LinkeTurbidity.source(setting).contains("mild climates of the northern hemisphere"));
    }

    /** The world map's turbidity at stations (file of station constants, seen): in the middle of the month the very figure. */
    @ParameterizedTest
    @CsvSource({
        "40.05, -88.37, 230, 1, 3.1", "40.05, -88.37, 230, 7, 4.6", "40.13, -105.24, 1689, 1, 2.4",
        "28.42, 77.16, 259, 7, 9.8", "-30.67, 23.99, 1287, 1, 3.3", "8.53, 4.57, 350, 2, 8.7"
    })
    void usualAirAtAStationIsTheStations(double latitude, double longitude, double altitude, int month, double value) {
        Site site = Site.ofDegrees(latitude, longitude, altitude, ZoneId.of("UTC"));
        LinkeTurbidity local = LinkeTurbidity.of(AirType.LOCAL);
        int middle = month == 2 ? 14 : 16;
        assertEquals(value, local.on(LocalDate.of(2026, month, middle), site), 0.02);
        assertTrue(LinkeTurbidity.source(AirType.LOCAL).contains("Remund"));
    }

    /**
     * Tucson 32.1° N, 110.9° W, 730 m: April 2.85, May 2.95, June 3.0 (seen in the tests of a library for solar power). No station
     * is near: within a unit.
     */
    @ParameterizedTest
    @CsvSource({"4, 2.85", "5, 2.95", "6, 3.0"})
    void usualAirBetweenStationsIsNear(int month, double published) {
        Site tucson = Site.ofDegrees(32.1, -110.9, 730, ZoneId.of("UTC"));
        double ours = LinkeTurbidity.of(AirType.LOCAL).on(LocalDate.of(2026, month, 16), tucson);
        assertEquals(published, ours, 1);
    }

    /** Higher up the air is clearer, and never clearer than clean and dry. */
    @Test
    void usualAirClearsWithHeight() {
        double before = 10;
        for (double altitude = 0; altitude <= 9000; altitude += 500) {
            Site site = Site.ofDegrees(47, 8, altitude, ZoneId.of("UTC"));
            double now = LinkeTurbidity.of(AirType.LOCAL).on(LocalDate.of(2026, 7, 16), site);
            assertTrue(now < before && now > 1, altitude + " m: " + now);
            before = now;
        }
    }

    @Test
    void aConstantIsTheSameAllYear() {
        LinkeTurbidity three = LinkeTurbidity.constant(3);
        assertEquals(3, three.on(LocalDate.of(2028, 2, 29), SOUTH), 1e-12);
        assertEquals("Linke turbidity 3.0", three.describe());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.4, 21, Double.NaN, -3})
    void refusesAirThatIsNone(double value) {
        assertThrows(IllegalArgumentException.class, () -> LinkeTurbidity.constant(value));
    }
}
