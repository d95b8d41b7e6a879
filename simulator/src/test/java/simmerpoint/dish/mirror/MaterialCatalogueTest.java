package simmerpoint.dish.mirror;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;

class MaterialCatalogueTest {
    @Test
    void everyRowNamesASourceAndItsQuality() {
        for (Material material : MaterialCatalogue.all()) {
            assertTrue(material.source().length() > 30, material.name() + " has no source");
            boolean admitsGuess = material.source().contains("from memory")
                    || material.source().contains("guess")
                    || material.source().contains("judgement");
            assertTrue(material.measured() || admitsGuess, material.name() + " claims more than it knows");
        }
    }

    @Test
    void opaqueMirrorsReflectWhatTheyDoNotAbsorb() {
        long checked = MaterialCatalogue.all().stream()
                .filter(m -> m.absorptance().isPresent())
                .peek(m -> assertEquals(1, m.reflectance() + m.absorptance().getAsDouble(), 1e-12, m.name()))
                .count();
        assertTrue(checked >= 2, "rows with both figures: " + checked);
    }

    @Test
    void figuresStandAsTheirSourcesGiveThem() {
        // aluminium foil, absorptance 0.192: table of thermal coatings, Scientific Research Publishing, paper 88555
        assertEquals(
                1 - 0.192,
                MaterialCatalogue.find("kitchen foil on card").orElseThrow().reflectance(),
                0.005);
        // Brogren et al. 2004, abstract: total 0.82 and specular 0.77 new, 0.75 and 0.42 after damp heat
        assertSpecular("polymer-laminated aluminised steel", 0.82, 0.77);
        assertSpecular("aged polymer-laminated aluminised steel", 0.75, 0.42);
        // clean polished stainless 0.657, aluminium 0.893 (NASA TN D-5353 with ASTM G173 direct): upper limits
        assertTrue(
                MaterialCatalogue.find("polished stainless steel").orElseThrow().reflectance() < 0.657);
        assertTrue(
                MaterialCatalogue.find("polished aluminium sheet").orElseThrow().reflectance() < 0.893);
    }

    private static void assertSpecular(String name, double total, double specular) {
        Material material = MaterialCatalogue.find(name).orElseThrow();
        assertEquals(total, material.reflectance(), 1e-9);
        assertEquals(specular, material.reflectance() * (1 - material.scattered()), 0.001);
        assertTrue(material.measured());
    }

    @Test
    void namesAreUniqueFoundInAnyCaseAndFitIntoAFile() {
        Set<String> names = new HashSet<>();
        for (Material material : MaterialCatalogue.all()) {
            assertTrue(names.add(material.name()), material.name() + " twice");
            assertFalse(material.name().matches(".*[,:#{}\\[\\]].*"), material.name() + " needs quotes in YAML");
            assertEquals(
                    material,
                    MaterialCatalogue.find(material.name().toUpperCase(Locale.ROOT))
                            .orElseThrow());
            assertNotNull(material.mirror(0.03, 0.004));
        }
        assertTrue(names.size() >= 10 && names.contains("aluminised polyester film"), names.toString());
        assertTrue(MaterialCatalogue.find("gold leaf").isEmpty());
    }
}
