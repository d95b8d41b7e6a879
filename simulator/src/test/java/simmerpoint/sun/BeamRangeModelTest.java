package simmerpoint.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class BeamRangeModelTest {
    private static final LocalDate JULY = LocalDate.of(2026, 7, 16);

    private static BeamRange range(ClearSky sky, double elevation, double altitude) {
        return BeamRangeModel.around(sky).at(MadeUpSky.moment(elevation, altitude, JULY));
    }

    /** For the open country the ends are the extremes of the four models themselves, derived from the definition. */
    @Test
    void endsAreTheExtremesOfTheModels() {
        SunMoment moment = MadeUpSky.moment(30, 0, JULY);
        BeamRange range = BeamRangeModel.around(EsraSky.of(AirType.RURAL)).at(moment);
        double likely = EsraSky.of(AirType.RURAL).beamWattsPerSquareMetre(moment);
        assertEquals(likely, range.likelyWattsPerSquareMetre(), 1e-12);
        List<ClearSky> others = List.of(new MeinelSky(), AshraeSky.edition2005(), new HottelSky());
        double least = likely;
        double most = likely;
        for (ClearSky sky : others) {
            least = Math.min(least, sky.beamWattsPerSquareMetre(moment));
            most = Math.max(most, sky.beamWattsPerSquareMetre(moment));
        }
        assertEquals(least, range.lowWattsPerSquareMetre(), 1e-9);
        assertEquals(most, range.highWattsPerSquareMetre(), 1e-9);
        assertTrue(least < 0.95 * likely && most > 1.01 * likely, range.toString());
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
