package simmerpoint.pan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class FinishCatalogueTest {
    @Test
    void everyRowNamesASource() {
        for (CatalogueFinish row : FinishCatalogue.all()) {
            assertTrue(row.source().length() > 30, row.finish().name() + " has no source");
            boolean admits = row.source().contains("from memory");
            assertTrue(row.measured() || admits, row.finish().name() + " claims more than it knows");
        }
    }

    @Test
    void opaquePansAbsorbWhatTheyDoNotReflect() {
        long checked = FinishCatalogue.all().stream()
                .filter(row -> row.reflectance().isPresent())
                .peek(row -> assertEquals(
                        1, row.finish().absorptance() + row.reflectance().getAsDouble(), 1e-12))
                .count();
        assertTrue(checked >= 1, "rows with both figures: " + checked);
    }

    @Test
    void figuresStandAsTheirSourcesGiveThem() {
        // table of thermal coatings, Scientific Research Publishing, paper 88555
        assertEquals(0.975, FinishCatalogue.find("black paint").orElseThrow().absorptance());
        assertEquals(0.252, FinishCatalogue.find("White Enamel").orElseThrow().absorptance());
        // flat black paint or enamel 0.90 to 0.98: from memory of handbook tables
        double black = FinishCatalogue.find("black enamel").orElseThrow().absorptance();
        assertTrue(black >= 0.90 && black <= 0.98);
    }
}
