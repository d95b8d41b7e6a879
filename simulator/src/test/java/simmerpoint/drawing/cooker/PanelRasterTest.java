package simmerpoint.drawing.cooker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.PanelOutline;
import simmerpoint.geometry.Vec;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.file.ScenarioReader;

class PanelRasterTest {
    /** Area by the shoelace formula against dots counted: 0.5 % of all, and every panel's own middle is its own. */
    @ParameterizedTest
    @CsvSource({"flat-rings", "bent-strips", "square-tiles", "hexagon-tiles"})
    void dotsCoverThePanelsTheyBelongTo(String cut) throws ScenarioException {
        DishPlan dish = example(surface(cut)).dish();
        PanelRaster raster = PanelRaster.of(dish);
        double dot = 2 * raster.reachMetres() / PanelRaster.DOTS;
        double area = 0;
        double covered = 0;
        for (PanelOutline outline : dish.outlines()) {
            area += area(outline.edge());
            Vec m = middle(outline.edge());
            double across = (1 - m.y() / raster.reachMetres()) / 2;
            double down = (1 - m.x() / raster.reachMetres()) / 2;
            assertEquals(outline.panel(), raster.panelAt(across, down));
        }
        for (int j = 0; j < PanelRaster.DOTS; j++) {
            for (int i = 0; i < PanelRaster.DOTS; i++) {
                double share = PanelRaster.DOTS;
                covered += raster.panelAt((i + 0.5) / share, (j + 0.5) / share) >= 0 ? dot * dot : 0;
            }
        }
        assertEquals(area, covered, 0.005 * area);
    }

    private static Scenario example(Map<String, String> changes) throws ScenarioException {
        return ScenarioReader.builtIn().with(changes).scenario();
    }

    private static Map<String, String> surface(String cut) {
        Map<String, String> keys = new HashMap<>(Map.of("dish.surface.cut", cut));
        if (cut.endsWith("tiles")) {
            keys.put("dish.surface.tile", "8 cm");
        } else {
            keys.put("dish.surface.sectors", "24");
        }
        return keys;
    }

    private static Vec middle(List<Vec> edge) {
        return edge.stream().reduce(Vec.ZERO, Vec::plus).times(1.0 / edge.size());
    }

    private static double area(List<Vec> edge) {
        double twice = 0;
        for (int i = 0, j = edge.size() - 1; i < edge.size(); j = i++) {
            twice += edge.get(j).x() * edge.get(i).y()
                    - edge.get(i).x() * edge.get(j).y();
        }
        return twice / 2;
    }

    @Test
    void aPanelIsSeenInItsColourAndNothingBeyondTheDish() throws ScenarioException {
        PanelRaster raster = PanelRaster.of(example(Map.of()).dish());
        int[] colours = new int[144];
        Arrays.fill(colours, 0x102030);
        int[] picture = raster.picture(colours, 0x405060).argb();
        assertEquals(0, picture[0]);
        long plain = Arrays.stream(picture).filter(c -> c == 0xFF102030).count();
        assertTrue(plain > 0.6 * picture.length, "plain pixels: " + plain);
    }
}
