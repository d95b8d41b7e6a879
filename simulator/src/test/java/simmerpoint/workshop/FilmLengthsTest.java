package simmerpoint.workshop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import simmerpoint.geometry.Polygon;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.units.UnitSystem;

class FilmLengthsTest {
    private static final String TILES =
            "dish: {diameter: 1 m, focal-length: 50 cm, surface: {cut: square-tiles, tile: 20 cm}}\n";
    private static final String STRIPS =
            "dish: {diameter: 1.2 m, focal-length: 60 cm, hub: 10 cm, surface: {cut: bent-strips, sectors: 16}}\n";

    private static CutPlan plan(String text) throws Exception {
        return CutPlan.of(ScenarioReader.parse("test", text, Path.of("")), UnitSystem.METRIC);
    }

    /** Counted by hand: tape of 5 cm covers 5, 9.5, 14, 18.5 and 20 cm of a tile of 20 cm when each lies 5 mm over the last. */
    @Test
    void aTileTakesAsManyLengthsAsCoverIt() throws Exception {
        CutPlan plan = plan(TILES + "build: {film-width: 5 cm, film-length: 50 m}\n");
        FilmLengths lengths = plan.filmLengths().get(0);
        assertEquals(5, lengths.lengths().size());
        for (int k = 0; k < 4; k++) {
            assertEquals(0.05, lengths.lengths().get(k).height(), 1e-9);
            assertEquals(0.20, lengths.lengths().get(k).width(), 1e-9);
        }
        assertEquals(0.02, lengths.lengths().get(4).height(), 1e-9);
        int tiles = plan.panels().get(0).count();
        assertEquals(5 * tiles, lengths.count());
        assertEquals(
                5 * tiles,
                plan.filmSheets().sheets().stream()
                        .mapToInt(sheet -> sheet.placed().size())
                        .sum());
    }

    /** Sheets of 15 × 15 cm: two by two of them, 5 mm over each other, are needed for 20 cm. */
    @Test
    void aSheetSmallerBothWaysIsLaidBothWays() throws Exception {
        FilmLengths lengths = plan(TILES + "build: {film-width: 15 cm, film-length: 15 cm}\n")
                .filmLengths()
                .get(0);
        assertEquals(4, lengths.lengths().size());
        lengths.lengths().forEach(each -> assertTrue(each.width() <= 0.15 + 1e-9 && each.height() <= 0.15 + 1e-9));
        assertEquals(
                0.205 * 0.205,
                lengths.lengths().stream().mapToDouble(Polygon::area).sum(),
                1e-9);
    }

    /** The lengths of a strip cover at least its area and no more than the box around it and the overlaps. */
    @Test
    void lengthsFollowTheStrip() throws Exception {
        CutPlan plan = plan(STRIPS + "build: {film-width: 4 cm, film-length: 50 m}\n");
        FilmLengths lengths = plan.filmLengths().get(0);
        Polygon strip = lengths.film().outline();
        double area = lengths.lengths().stream().mapToDouble(Polygon::area).sum();
        double overlaps = (lengths.lengths().size() - 1) * FilmLengths.OVERLAP * strip.width();
        assertTrue(area > strip.area() && area < strip.width() * strip.height() + overlaps, area + " m²");
        assertTrue(lengths.lengths().get(0).width() < strip.width(), "an edge of a strip is shorter than its middle");
    }

    /** Ribs and panels are cut from the same sheets whatever the film, and a cutter gets no film that is laid by hand. */
    @Test
    void ribsAndPanelsDoNotMindTheFilm() throws Exception {
        CutPlan wide = plan(STRIPS);
        CutPlan narrow = plan(STRIPS + "build: {film-width: 5 cm, film-length: 50 m}\n");
        assertEquals(wide.sheets(), narrow.sheets());
        assertTrue(wide.filmLengths().isEmpty());
        List<CutterSheets.Layer> layers = CutterSheets.of(narrow).layers();
        assertTrue(layers.get(0).cuts().size() > 1 && layers.get(1).cuts().size() == 16);
        assertTrue(layers.get(2).cuts().isEmpty());
        assertEquals(16, CutterSheets.of(wide).layers().get(2).cuts().size());
    }
}
