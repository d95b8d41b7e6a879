package simmerpoint.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AirMassTest {
    /** Kasten and Young, Applied Optics 28 (1989) 4735: their formula evaluated apart from this program. */
    @ParameterizedTest
    @CsvSource({
        "90, 0.999712",
        "60, 1.153992",
        "45, 1.412595",
        "30, 1.994293",
        "20, 2.903147",
        "10, 5.586036",
        "5, 10.305791",
        "2, 19.433245",
        "1, 26.310555",
        "0, 37.919608"
    })
    void meetsKastenAndYoung(double degrees, double mass) {
        assertEquals(mass, AirMass.relative(Math.toRadians(degrees)), 1e-6);
    }

    /** Thin air: exp(−1500/8434.5) = 0.837075, derived from the scale height of Rigollier, Bauer and Wald (2000). */
    @Test
    void thinsWithHeight() {
        assertEquals(0.837075 * 1.994293, AirMass.absolute(Math.toRadians(30), 1500), 3e-6);
    }

    @Test
    void refusesASunBelowTheHorizon() {
        assertThrows(IllegalArgumentException.class, () -> AirMass.relative(-0.01));
        assertThrows(IllegalArgumentException.class, () -> AirMass.relative(Double.NaN));
    }
}
