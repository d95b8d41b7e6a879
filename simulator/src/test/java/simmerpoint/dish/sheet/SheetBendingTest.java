package simmerpoint.dish.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Bent sheet against worked values (E and Y beside them) and against fibres summed up one by one. */
class SheetBendingTest {
    private static SheetBending sheet(double gigapascals, double megapascals, double millimetres) {
        SheetMaterial material = new SheetMaterial("", 0, "", 1e9 * gigapascals, "", 1e6 * megapascals, "");
        return new SheetBending(material, 1e-3 * millimetres);
    }

    /** 0.5 mm sheet: R = Et/2Y. */
    @ParameterizedTest
    @CsvSource({"70, 105, 0.1667", "70, 145, 0.1207", "205, 250, 0.205"})
    void keepsABendOnlyBelowItsElasticRadius(double modulus, double yield, double radius) {
        SheetBending sheet = sheet(modulus, yield, 0.5);
        assertEquals(radius, sheet.elasticRadius(), 1e-4);
        assertTrue(sheet.springsBackFully(0.8), "any dish");
        assertEquals(Double.POSITIVE_INFINITY, sheet.radiusLeft(0.8), 0);
        assertFalse(sheet.springsBackFully(0.99 * sheet.elasticRadius()));
    }

    /** Bent round a radius of 50 mm and let go (Gardiner's form): X 0.15 and 0.20714. */
    @ParameterizedTest
    @CsvSource({"105, 0.5635, 88.73", "145, 0.41411, 120.74"})
    void sharperBendsSpringBackInPart(double yield, double ratio, double radius) {
        SheetBending sheet = sheet(70, yield, 0.5);
        assertEquals(radius, 1000 * sheet.radiusLeft(0.05), 5e-3);
        assertEquals(ratio, 0.05 / sheet.radiusLeft(0.05), 2e-5);
    }

    /** Moment of fibres that yield at Y, summed over the thickness, let go by the elastic curvature M/EI: the radius that is left. */
    @Test
    void fibresThatYieldLeaveThatRadius() {
        SheetBending sheet = sheet(70, 105, 0.5);
        double bent = 0.05;
        double thick = 0.5e-3;
        double moment = 0;
        int fibres = 100_000;
        for (int i = 0; i < fibres; i++) {
            double y = thick * ((i + 0.5) / fibres - 0.5);
            double stress = Math.max(-105e6, Math.min(105e6, 70e9 * y / bent));
            moment += stress * y * thick / fibres;
        }
        double left = 1 / bent - moment / (70e9 * Math.pow(thick, 3) / 12);
        assertEquals(1 / left, sheet.radiusLeft(bent), 1e-6);
    }

    /** Et³/12(1 − ν²)R, ν 0.3: 0.5 mm of aluminium and 3 mm of plywood at 1 m. */
    @Test
    void momentThatHoldsIt() {
        assertEquals(0.801, sheet(70, 105, 0.5).moment(1), 1e-3);
        assertEquals(19.8, sheet(8, 0, 3).moment(1), 0.05);
        assertFalse(sheet(8, 0, 3).yields());
        assertTrue(sheet(8, 0, 3).springsBackFully(0.1));
    }
}
