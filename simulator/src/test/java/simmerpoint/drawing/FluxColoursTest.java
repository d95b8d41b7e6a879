package simmerpoint.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class FluxColoursTest {
    /** CIE 1976 L*, a*, b* (CIE 15) of an sRGB colour (IEC 61966-2-1), white D65. */
    private static double[] lab(int rgb) {
        double r = linear(rgb >> 16 & 255);
        double g = linear(rgb >> 8 & 255);
        double b = linear(rgb & 255);
        double x = f((0.4124 * r + 0.3576 * g + 0.1805 * b) / 0.9505);
        double y = f(0.2126 * r + 0.7152 * g + 0.0722 * b);
        double z = f((0.0193 * r + 0.1192 * g + 0.9505 * b) / 1.089);
        return new double[] {116 * y - 16, 500 * (x - y), 200 * (y - z)};
    }

    private static double linear(int c) {
        double x = c / 255.0;
        return x <= 0.04045 ? x / 12.92 : Math.pow((x + 0.055) / 1.055, 2.4);
    }

    private static double f(double t) {
        return t > 216.0 / 24389 ? Math.cbrt(t) : (24389.0 / 27 * t + 16) / 116;
    }

    private static double[] at(int step) {
        return lab(FluxColours.rgb((step + 0.5) / FluxColours.STEPS));
    }

    /** A rise in lightness alone keeps the map readable in grey and for every kind of colour blindness. */
    @Test
    void lightnessRisesAllTheWay() {
        assertTrue(at(0)[0] < 5, "starts at " + at(0)[0]);
        assertTrue(at(255)[0] > 95, "ends at " + at(255)[0]);
        for (int k = 16; k < FluxColours.STEPS; k += 16) {
            double rise = at(k)[0] - at(k - 16)[0];
            assertTrue(rise > 2 && rise < 9, "at " + k + " lightness rises by " + rise + ", on average by 6");
        }
    }

    /** No edge is seen where the flux has none: a difference of 2.3 is about the least that is seen (common practice). */
    @Test
    void noStepJumps() {
        for (int k = 1; k < FluxColours.STEPS; k++) {
            double[] a = at(k - 1);
            double[] b = at(k);
            double step = Math.sqrt(Math.pow(a[0] - b[0], 2) + Math.pow(a[1] - b[1], 2) + Math.pow(a[2] - b[2], 2));
            assertTrue(step > 0.1 && step < 2.3, "at " + k + " a step of " + step);
        }
    }

    @Test
    void sharesBeyondTheScaleGetItsEnds() {
        assertEquals(FluxColours.rgb(0), FluxColours.rgb(-1));
        assertEquals(FluxColours.rgb(0), FluxColours.rgb(Double.NaN));
        assertEquals(FluxColours.rgb(0.9999), FluxColours.rgb(7));
    }
}
