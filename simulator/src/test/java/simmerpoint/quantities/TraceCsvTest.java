package simmerpoint.quantities;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import simmerpoint.report.SampleResults;
import simmerpoint.study.trace.TraceResult;

class TraceCsvTest {
    private static List<String> lines(TraceResult result) {
        return new String(TraceQuantities.DOCUMENT.csv(result), StandardCharsets.UTF_8)
                .lines()
                .toList();
    }

    private static Map<String, Double> power(TraceResult result) {
        Map<String, Double> sums = new HashMap<>();
        boolean head = true;
        for (String line : lines(result)) {
            if (line.startsWith("#")) {
                continue;
            }
            String[] cells = line.split(",", -1);
            assertEquals(5, cells.length, line);
            if (!head) {
                sums.merge(cells[0], Double.parseDouble(cells[3]), Double::sum);
            }
            head = false;
        }
        return sums;
    }

    /** Flux times the area of a cell, added up, is the power of the ledger (six digits are written). */
    @Test
    void cellsAddUpToTheLedger() {
        TraceResult result = SampleResults.lopsided();
        double cell =
                result.maps().caught().cellWidth() * result.maps().caught().cellHeight();
        double wallCell = result.maps().wall().orElseThrow().cellWidth()
                * result.maps().wall().orElseThrow().cellHeight();
        Map<String, Double> sums = power(result);
        double underside = result.ledger().underside().value();
        assertEquals(underside, sums.get("underside") * cell, 2e-6 * underside);
        double wall = result.ledger().wall().value();
        assertEquals(wall, sums.get("wall") * wallCell, 2e-6 * wall);
        assertEquals(0, sums.get("lid"));
    }

    @Test
    void axesAreThoseOfTheGrid() {
        List<String> rows = lines(SampleResults.tight()).stream()
                .filter(l -> l.startsWith("plane,"))
                .toList();
        assertEquals(120 * 120, rows.size());
        assertTrue(rows.get(0).startsWith("plane,-0.2023,-0.2023,"), rows.get(0));
        assertTrue(rows.get(1).startsWith("plane,-0.1989,-0.2023,"), rows.get(1));
        assertTrue(rows.get(120).startsWith("plane,-0.2023,-0.1989,"), rows.get(120));
    }

    @Test
    void commentsStayInOneCell() {
        List<String> lines = lines(SampleResults.with("a, b\n=1+1", 0.02, 100));
        assertTrue(lines.contains("# title: a; b =1+1"), lines.subList(0, 4).toString());
        assertTrue(lines.stream().filter(l -> l.startsWith("#")).noneMatch(l -> l.contains(",")));
    }

    @Test
    void aDiscHasNoWall() {
        assertEquals(
                java.util.Set.of("plane", "disc"), power(SampleResults.disc()).keySet());
    }
}
