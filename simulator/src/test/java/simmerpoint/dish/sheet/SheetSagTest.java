package simmerpoint.dish.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sag and slope of simply supported sheets, worked out apart from this project by two methods (beam formula, finite differences). */
class SheetSagTest {
    @ParameterizedTest
    @CsvSource({
        "aluminium, 70, 2700, 0.5, 0.3, 1.9149, 20.426, 14.235",
        "aluminium, 70, 2700, 0.5, 0.2, 0.3783, 6.052, 4.218",
        "steel, 205, 7850, 0.5, 0.3, 1.9011, 20.278, 14.133",
        "plywood, 8, 600, 3, 0.3, 0.1034, 1.103, 0.769",
        "plywood, 8, 600, 4, 0.3, 0.0582, 0.621, 0.433",
        "hardboard, 4, 950, 3, 0.3, 0.3275, 3.494, 2.435",
        "glass, 70, 2500, 3, 0.3, 0.0493, 0.525, 0.366",
        "acrylic, 3.2, 1190, 3, 0.3, 0.5128, 5.470, 3.812"
    })
    void sagsAsABeamDoes(
            String name,
            double modulus,
            double density,
            double thick,
            double span,
            double sag,
            double end,
            double mean) {
        SheetSag found = SheetSag.betweenRibs(material(name, modulus, density), 1e-3 * thick, span);
        assertEquals(sag, 1000 * found.depth(), 1e-4);
        assertEquals(end, 1000 * found.slope(), 1e-3);
        assertEquals(mean, 1000 * found.meanSlope(), 1e-3);
    }

    private static SheetMaterial material(String name, double modulus, double density) {
        return new SheetMaterial(name, density, "", 1e9 * modulus, "", 0, "");
    }

    /** Discs held at their edge: 0.5 mm of aluminium 30 cm wide and 3 mm of plywood 60 cm wide, ν 0.3, worked out apart from this project. */
    @ParameterizedTest
    @CsvSource({"70, 2700, 0.5, 0.3, 0.53283, 5.3618", "8, 600, 3, 0.6, 0.46047, 2.3168"})
    void sagsAsADiscDoes(double modulus, double density, double thick, double wide, double sag, double edge) {
        SheetSag found = SheetSag.ofDisc(material("", modulus, density), 1e-3 * thick, wide);
        assertEquals(sag, 1000 * found.depth(), 1e-4 * sag);
        assertEquals(edge, 1000 * found.slope(), 1e-4 * edge);
        // The plate's slope, square by square of its radius: ρ(k − ρ²) with k = 3.3/1.3.
        double squares = 0;
        int steps = 10_000;
        for (int i = 0; i < steps; i++) {
            double rho2 = (i + 0.5) / steps;
            squares += rho2 * Math.pow((3.3 / 1.3 - rho2) / (3.3 / 1.3 - 1), 2) / steps;
        }
        assertEquals(Math.sqrt(squares) * found.slope(), found.meanSlope(), 1e-7 * found.slope());
    }
}
