package simmerpoint.workshop;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import simmerpoint.dish.sheet.SheetMaterial;
import simmerpoint.workshop.CuttingStock.Sheeting;

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
        SheetMaterial material = new SheetMaterial(name, density, "", 1e9 * modulus, "");
        SheetSag found = SheetSag.of(new Sheeting(material, 1e-3 * thick), span);
        assertEquals(sag, 1000 * found.depth(), 1e-4);
        assertEquals(end, 1000 * found.slope(), 1e-3);
        assertEquals(mean, 1000 * found.meanSlope(), 1e-3);
    }
}
