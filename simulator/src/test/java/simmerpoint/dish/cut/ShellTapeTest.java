package simmerpoint.dish.cut;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Tape measures of shells that were cut from a known paraboloid z = r²/4f by a circle of diameter d whose middle is y₀ off the axis.
 * J. A. R. Legon's formula for offset dishes gives f back; tilt, depth and strings derived from the plane of the rim.
 */
class ShellTapeTest {
    /** The lengths by plain geometry: the rim's ends, the plane through them, the deepest point under it. */
    private static ShellTape cut(double d, double f, double y0) {
        double near = y0 - d / 2;
        double far = y0 + d / 2;
        double rise = (far * far - near * near) / (4 * f);
        double height = Math.hypot(d, rise);
        // Below the chord, the parabola is farthest where its slope is the chord's: at y₀.
        double gap = (near * near + far * far) / (8 * f) - y0 * y0 / (4 * f);
        return new ShellTape(d, height, gap * d / height);
    }

    @ParameterizedTest
    @CsvSource({
        "0.9, 0.54, 0.5, 24.8424, 0.99177, 0.08508, 0.45650, 0.54116, 0.95782",
        "1.0, 0.6, 0.55, 24.6236, 1.10003, 0.09469, 0.50661, 0.60104, 1.05937",
        "0.8, 0.5, 0.45, 24.2277, 0.87727, 0.07295, 0.40581, 0.50125, 0.86125"
    })
    void workedShells(
            double d,
            double f,
            double y0,
            double tilt,
            double height,
            double depth,
            double deepest,
            double near,
            double far) {
        ShellTape tape = cut(d, f, y0);
        assertEquals(height, tape.height(), 1e-5);
        assertEquals(depth, tape.depth(), 1e-5);
        assertEquals(f, tape.focalLength(), 1e-9);
        assertEquals(y0, tape.offset(), 1e-9);
        assertEquals(tilt, Math.toDegrees(tape.tilt()), 1e-4);
        assertEquals(deepest, tape.deepestAt(), 1e-5);
        assertEquals(near, tape.nearString(), 1e-5);
        assertEquals(far, tape.farString(), 1e-5);
    }

    /** A shell as wide as high is a dish about its axis: f = D²/16h. */
    @Test
    void aRoundRimIsADishAboutItsAxis() {
        ShellTape tape = new ShellTape(1.2, 1.2, 0.1125);
        assertEquals(0.8, tape.focalLength(), 1e-12);
        assertEquals(0, tape.offset(), 1e-12);
        assertEquals(0.6, tape.deepestAt(), 1e-12);
        assertEquals(tape.nearString(), tape.farString(), 1e-12);
    }

    /** Area by the closed form along rings about the axis, cut by the circle: 8πf²/3·((1 + r²/4f²)^1.5 − 1) is that of whole ones. */
    @Test
    void mirrorArea() {
        double f = 0.54;
        double y0 = 0.5;
        double radius = 0.45;
        int steps = 20_000;
        double area = 0;
        for (int k = 0; k < steps; k++) {
            double r = y0 - radius + 2 * radius * (k + 0.5) / steps;
            double half = Math.acos((r * r + y0 * y0 - radius * radius) / (2 * r * y0));
            area += 2 * half * r * Math.sqrt(1 + r * r / (4 * f * f)) * 2 * radius / steps;
        }
        assertEquals(area, cut(0.9, f, y0).mirrorArea(), 4e-3 * area);
    }

    /** f moves by 3δW/W − δh/h − δH/H (the logarithm's differential); tilt by differences. */
    @Test
    void doubts() {
        ShellTape tape = cut(0.9, 0.54, 0.5);
        double mm = 0.001;
        ShellDoubt depth = new ShellDoubt(tape, new ShellTape(0, 0, mm));
        assertEquals(0.54 * mm / tape.depth(), depth.of(ShellTape::focalLength), 1e-7);
        assertEquals(0, depth.of(ShellTape::tilt), 1e-12);
        ShellDoubt all = new ShellDoubt(tape, new ShellTape(mm, mm, mm));
        double share = Math.sqrt(
                Math.pow(3 * mm / tape.width(), 2) + Math.pow(mm / tape.depth(), 2) + Math.pow(mm / tape.height(), 2));
        assertEquals(0.54 * share, all.of(ShellTape::focalLength), 1e-6);
        double width = new ShellTape(0.9 + mm, tape.height(), tape.depth()).tilt() - tape.tilt();
        double height = new ShellTape(0.9, tape.height() + mm, tape.depth()).tilt() - tape.tilt();
        assertEquals(Math.hypot(width, height), all.of(ShellTape::tilt), 2e-5);
        ShellDoubt round = new ShellDoubt(new ShellTape(1.2, 1.2, 0.1), new ShellTape(0, mm, 0));
        assertEquals(1.2 * 1.2 / 1.6 / 1.2 * mm, round.of(ShellTape::focalLength), 1e-6);
    }
}
