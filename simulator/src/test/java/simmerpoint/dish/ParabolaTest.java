package simmerpoint.dish;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ParabolaTest {
    /**
     * I. L. Mohammed 2013, IJERA 3(4) 1179-1186: a dish of 1.8 m, 29.0 cm deep, has its focus at 69.8 cm. To the half
     * millimetre to which the paper rounds.
     */
    @Test
    void depthOfAPublishedDish() {
        Parabola p = new Parabola(0.698);
        assertEquals(0.290, p.height(0.9), 0.5e-3);
        assertEquals(65.6197, Math.toDegrees(p.rimAngle(0.9)), 1e-4);
    }

    /** J. Solar Energy 2015, article 326536, table 1, cm; to 0.1 cm, since the row at 126.6 is off by 0.07 in print. */
    @ParameterizedTest
    @CsvSource({"31.67, 1.12", "63.33, 4.43", "95.00, 9.97", "126.6, 17.78", "158.3, 27.7", "190.0, 39.9"})
    void heightsOfAPublishedTable(double x, double z) {
        assertEquals(z, new Parabola(226.190).height(x), 0.1);
    }

    /** Common practice, no source: 36 in wide with 36 in of focal length is 2.25 in deep, a sixteenth. */
    @Test
    void aDishAsWideAsItsFocalLengthIsASixteenthDeep() {
        assertEquals(2.25, new Parabola(36).height(18), 1e-12);
    }

    /** Rim angle by focal length over diameter: tan(rim) = 8k/(16k² − 1), evaluated elsewhere; textbook geometry. */
    @ParameterizedTest
    @CsvSource({
        "0.25, 90.0000",
        "0.30, 79.6111",
        "0.40, 64.0108",
        "0.45, 58.1092",
        "0.50, 53.1301",
        "0.60, 45.2397",
        "0.603553, 45.0000",
        "0.80, 34.7081",
        "1.00, 28.0725",
        "1.50, 18.9246"
    })
    void rimAngles(double focalOverDiameter, double degrees) {
        assertEquals(degrees, Math.toDegrees(new Parabola(focalOverDiameter).rimAngle(0.5)), 1e-4);
    }

    /** Derived: a mirror point is f + z from the focus, and at that distance times the sine of its angle off the axis. */
    @Test
    void distanceToTheFocusIsFocalLengthPlusHeight() {
        Parabola p = new Parabola(0.5);
        assertEquals(0.68, Math.hypot(0.6, 0.5 - p.height(0.6)), 1e-12);
        assertEquals(0.6, 0.68 * Math.sin(p.rimAngle(0.6)), 1e-12);
        assertEquals(30.9638, Math.toDegrees(p.rimAngle(0.6) / 2), 1e-4);
    }

    /** Common practice, exact: string from focus to pencil and on, parallel to the axis, to a bar keeps one length. */
    @Test
    void theStringKeepsItsLength() {
        Parabola p = new Parabola(0.8);
        for (double r = 0; r <= 0.9; r += 0.05) {
            double toFocus = Math.hypot(r, 0.8 - p.height(r));
            assertEquals(0.8 + 1.5, toFocus + 1.5 - p.height(r), 1e-12);
        }
    }

    /** D 1.2, f 0.5: 1.22736 m² and 0.634270 m from the integrals, evaluated elsewhere to six digits. */
    @Test
    void curvedAreaAndRibLength() {
        Parabola p = new Parabola(0.5);
        assertEquals(1.22736, p.curvedArea(0.6), 5e-6);
        assertEquals(0.634270, p.arcLength(0.6), 5e-7);
    }

    /** Against quadrature of √(1 + slope²) by Commons Math, flat and deep. */
    @ParameterizedTest
    @CsvSource({"0.5, 0.6", "2, 0.1", "0.2, 1.5", "10, 0.001"})
    void lengthAndAreaAreIntegrals(double f, double r) {
        Parabola p = new Parabola(f);
        IterativeLegendreGaussIntegrator quadrature = new IterativeLegendreGaussIntegrator(16, 1e-13, 1e-16);
        double length = quadrature.integrate(100_000, t -> Math.hypot(1, p.slope(t)), 0, r);
        double area = quadrature.integrate(100_000, t -> 2 * Math.PI * t * Math.hypot(1, p.slope(t)), 0, r);
        assertEquals(length, p.arcLength(r), 1e-10 * length);
        assertEquals(area, p.curvedArea(r), 1e-6 * area);
        assertEquals(r, p.radiusAtArcLength(length), 1e-10 * r);
    }

    @Test
    void slopeIsTheDerivativeOfHeight() {
        Parabola p = new Parabola(0.7);
        assertEquals((p.height(0.4 + 1e-5) - p.height(0.4 - 1e-5)) / 2e-5, p.slope(0.4), 1e-9);
    }
}
