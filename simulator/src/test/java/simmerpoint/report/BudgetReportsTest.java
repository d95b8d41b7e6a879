package simmerpoint.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import simmerpoint.drawing.output.PngFile;
import simmerpoint.quantities.BudgetQuantities;
import simmerpoint.quantities.Schemas;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.file.ExampleScenario;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.study.budget.BudgetResult;
import simmerpoint.study.budget.BudgetStudy;
import simmerpoint.study.budget.Budgets;
import simmerpoint.study.trace.Progress;
import simmerpoint.units.UnitSystem;

class BudgetReportsTest {
    private static final int WHITE = 0xFFFFFF;
    private static Scenario tea;
    private static BudgetResult budget;

    @BeforeAll
    static void study() throws Exception {
        tea = ScenarioReader.parse("example", ExampleScenario.text(), Path.of(""))
                .scenario();
        budget = Budgets.of(tea, 1 << 13);
    }

    private static String withoutRun(BudgetResult result) {
        String json = new String(BudgetQuantities.DOCUMENT.json(result), StandardCharsets.UTF_8);
        return json.substring(0, json.indexOf("\"run\""));
    }

    @Test
    void theJsonHoldsWhatTheStudyFound() throws IOException {
        JsonNode root = Schemas.read(BudgetQuantities.DOCUMENT, budget);
        assertEquals("cooking", root.get("power").asText());
        assertEquals(budget.perfect().value(), root.get("perfect_power_W").asDouble());
        assertEquals(budget.costs().size(), root.get("flaws").size());
        for (int k = 0; k < budget.costs().size(); k++) {
            JsonNode flaw = root.get("flaws").get(k);
            assertEquals(budget.costs().get(k).flaw().key(), flaw.get("flaw").asText());
            assertEquals(
                    budget.costs().get(k).onAlone().standardError(),
                    flaw.get("on_alone_cost_W_se").asDouble());
            assertEquals(
                    budget.costs().get(k).offInTurn().value() / budget.perfect().value(),
                    flaw.get("off_in_turn_share").asDouble(),
                    1e-12);
        }
        assertEquals("rib-curve", root.get("absent").get(0).get("flaw").asText());
        JsonNode turn = root.get("sensitivities").get(8);
        assertEquals("turn", turn.get("figure").asText());
        assertEquals(0.1, turn.get("step").asDouble());
        assertEquals("deg", turn.get("unit").asText());
        assertEquals(8, turn.get("steps").size());
        List<String> names = new ArrayList<>();
        root.fieldNames().forEachRemaining(names::add);
        assertEquals("run", names.get(names.size() - 1));
    }

    @Test
    void theSameBytesOnOneThreadAndOnTwo() {
        BudgetResult alone = BudgetStudy.run(tea, Budgets.options(1 << 13).withThreads(1), Progress.NONE);
        assertEquals(withoutRun(budget), withoutRun(alone));
        assertEquals(
                new String(BudgetQuantities.DOCUMENT.csv(budget), StandardCharsets.UTF_8),
                new String(BudgetQuantities.DOCUMENT.csv(alone), StandardCharsets.UTF_8));
    }

    @Test
    void theTableHasOneRowForEveryFigure() {
        List<String> rows = new String(BudgetQuantities.DOCUMENT.csv(budget), StandardCharsets.UTF_8)
                .lines()
                .filter(line -> !line.startsWith("#"))
                .toList();
        int steps =
                budget.sensitivities().stream().mapToInt(s -> s.steps().size()).sum();
        assertEquals(1 + 2 + 2 * (budget.costs().size() + 2) + steps, rows.size());
        assertTrue(rows.stream().allMatch(row -> row.split(",", -1).length == 8));
        assertTrue(rows.get(1).startsWith("power,perfect,,,,,"), rows.get(1));
        assertTrue(rows.stream().anyMatch(row -> row.startsWith("step,drift,up right,0.1,deg,")));
        assertFalse(String.join("", rows).contains("NaN"));
    }

    @Test
    void nothingRunsOverTheEdgeOfThePicture() throws Exception {
        Scenario evening = ScenarioReader.read(Path.of("../scenarios/lake-hut-evening.yaml"))
                .scenario();
        for (BudgetResult result : List.of(budget, Budgets.of(evening, 1 << 10))) {
            BufferedImage image = PngFile.image(BudgetPicture.sheet(result, UnitSystem.INCH));
            for (int y = 0; y < image.getHeight(); y++) {
                for (int edge = 0; edge < 16; edge++) {
                    assertEquals(WHITE, image.getRGB(edge, y) & WHITE, "left at " + y);
                    assertEquals(WHITE, image.getRGB(1399 - edge, y) & WHITE, "right at " + y);
                }
            }
        }
    }
}
