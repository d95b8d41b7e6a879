package simmerpoint.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.stream.Stream;
import org.apache.commons.math3.stat.descriptive.rank.Percentile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class BeamRangeModelTest {
    private static final LocalDate JULY = LocalDate.of(2026, 7, 16);

    private static BeamRange range(ClearSky sky, double elevation, double altitude) {
        return BeamRangeModel.around(sky).at(MadeUpSky.moment(elevation, altitude, JULY));
    }

    /** For the open country the ends are the extremes of the four models themselves and the likely beam their median. */
    @Test
    void endsAreTheExtremesOfTheModels() {
        SunMoment moment = MadeUpSky.moment(30, 0, JULY);
        BeamRange range = BeamRangeModel.around(EsraSky.of(AirType.RURAL)).at(moment);
        double[] beams = Stream.of(EsraSky.of(AirType.RURAL), new MeinelSky(), AshraeSky.edition2005(), new HottelSky())
                .mapToDouble(sky -> sky.beamWattsPerSquareMetre(moment))
                .toArray();
        double likely = new Percentile().evaluate(beams, 50);
        assertEquals(likely, range.likelyWattsPerSquareMetre(), 1e-9);
        assertEquals(Arrays.stream(beams).min().orElseThrow(), range.lowWattsPerSquareMetre(), 1e-9);
        assertEquals(Arrays.stream(beams).max().orElseThrow(), range.highWattsPerSquareMetre(), 1e-9);
    }

    /**
     * 21 January, 40° N, sea level, sun 30° high. A fair clear noon by the sheet of Bird and Hulstrom: 817 W/m² at an aerosol
     * depth of 0.1, 885 at 0.05 and 709 at 0.2 (worked out from their formula). Here it is the middle, far below 971.
     */
    @ParameterizedTest
    @CsvSource({"-88.4", "5", "-5"})
    void aJanuaryNoonIsTheMiddleOfTheSheet(double longitude) {
        Site site = Site.ofDegrees(40, longitude, 0, ZoneId.of("UTC"));
        SunMoment noon = MadeUpSky.moment(site, 30, LocalDate.of(2026, 1, 21));
        BeamRange range = BeamRangeModel.centredOn(EsraSky.of(AirType.LOCAL)).at(noon);
        assertEquals(817, range.likelyWattsPerSquareMetre(), 60);
        assertTrue(range.lowWattsPerSquareMetre() < 760 && range.highWattsPerSquareMetre() > 850, range.toString());
    }

    /**
     * NSRDB 2023, 40.53 N 108.54 W, 2168 m, clear noons of all days: January 976 (least 943, most 1042), June 985 (923 to 1030):
     * the likely beam is no farther off than the models differ, a twelfth.
     */
    @ParameterizedTest
    @CsvSource({"1, 29.3, 976", "3, 49.8, 1032", "6, 72.9, 985", "9, 49.6, 1000", "12, 26.1, 966"})
    void aHighCleanSiteIsMet(int month, double elevation, double mean) {
        Site site = Site.ofDegrees(40.53, -108.54, 2168, ZoneId.of("UTC"));
        SunMoment noon = MadeUpSky.moment(site, elevation, LocalDate.of(2026, month, 21));
        BeamRange range = BeamRangeModel.centredOn(EsraSky.of(AirType.LOCAL)).at(noon);
        assertEquals(mean, range.likelyWattsPerSquareMetre(), mean / 12);
    }

    /** In August, with the sun 25° high at 53° N: between hazy and clear, no more than any model says. */
    @Test
    void aSummerEveningIsWithinTheModels() {
        Site site = Site.ofDegrees(53.1, 10.4, 90, ZoneId.of("UTC"));
        SunMoment evening = MadeUpSky.moment(site, 25, LocalDate.of(2026, 8, 14));
        BeamRange range = BeamRangeModel.centredOn(EsraSky.of(AirType.LOCAL)).at(evening);
        double[] beams = Stream.of(new MeinelSky(), AshraeSky.edition2005(), new HottelSky())
                .mapToDouble(sky -> sky.beamWattsPerSquareMetre(evening))
                .toArray();
        assertTrue(
                range.likelyWattsPerSquareMetre() < Arrays.stream(beams).max().orElseThrow(), range.toString());
        assertTrue(
                range.likelyWattsPerSquareMetre()
                        > 0.9 * Arrays.stream(beams).min().orElseThrow(),
                range.toString());
    }

    /** An overhead sun at sea level in the tropics: no 1100 W/m². */
    @Test
    void theTropicsAreHazy() {
        for (double longitude : new double[] {-60, 4.6, 40, 100}) {
            Site site = Site.ofDegrees(8.5, longitude, 0, ZoneId.of("UTC"));
            SunMoment noon = MadeUpSky.moment(site, 85, LocalDate.of(2026, 4, 10));
            BeamRange range =
                    BeamRangeModel.centredOn(EsraSky.of(AirType.LOCAL)).at(noon);
            assertTrue(range.likelyWattsPerSquareMetre() < 950, longitude + "°: " + range);
            assertTrue(range.likelyWattsPerSquareMetre() > 500, longitude + "°: " + range);
        }
    }

    /** Haze of a town lowers the whole range by one share; it is not called improbable by models of clean air. */
    @ParameterizedTest
    @EnumSource(AirType.class)
    void everySettingHasTheSameRelativeRange(AirType setting) {
        BeamRange range = range(EsraSky.of(setting), 45, 0);
        BeamRange rural = range(EsraSky.of(AirType.RURAL), 45, 0);
        double scale = range.likelyWattsPerSquareMetre() / rural.likelyWattsPerSquareMetre();
        assertEquals(scale * rural.lowWattsPerSquareMetre(), range.lowWattsPerSquareMetre(), 1e-9);
        assertEquals(scale * rural.highWattsPerSquareMetre(), range.highWattsPerSquareMetre(), 1e-9);
    }

    /** Models of sea level or of the first kilometres say nothing new about a high pass, and nothing wild either. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 1500, 4000, 9000})
    void rangeIsSoberAtAnyHeight(double altitude) {
        for (double elevation : new double[] {0.01, 1, 3, 5, 10, 20, 40, 90}) {
            BeamRange range = range(EsraSky.of(AirType.MOUNTAINS), elevation, altitude);
            double likely = range.likelyWattsPerSquareMetre();
            assertTrue(range.lowWattsPerSquareMetre() > 0.4 * likely, elevation + "°: " + range);
            assertTrue(range.highWattsPerSquareMetre() < 1.7 * likely, elevation + "°: " + range);
            assertTrue(range.highWattsPerSquareMetre() <= 1367, elevation + "°: " + range);
        }
    }

    @Test
    void givenBeamHasNoRange() {
        BeamRangeModel given = BeamRangeModel.exact(new FixedBeam(850));
        assertEquals(new BeamRange(850, 850, 850), given.at(MadeUpSky.moment(30, 0, JULY)));
        assertEquals(BeamRange.NONE, given.at(MadeUpSky.moment(-3, 0, JULY)));
        assertEquals("beam of 850 W/m² whenever the sun is up", given.describe());
    }

    @Test
    void saysWhatItComparesAndWhatItLeavesOut() {
        String words = BeamRangeModel.around(EsraSky.of(AirType.CITY)).describe();
        assertTrue(words.contains("city") && words.contains("Hottel") && words.contains("Haze"), words);
    }

    @Test
    void refusesARangeOutOfOrder() {
        assertThrows(IllegalArgumentException.class, () -> new BeamRange(2, 1, 3));
        assertThrows(IllegalArgumentException.class, () -> new BeamRange(-1, 1, 3));
        assertThrows(IllegalArgumentException.class, () -> new BeamRange(0, Double.NaN, 3));
        assertThrows(IllegalArgumentException.class, () -> new FixedBeam(Double.NaN));
    }
}
