package simmerpoint.answer.budget;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.sampling.Estimate;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.file.ExampleScenario;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.study.budget.BudgetResult;
import simmerpoint.study.budget.Budgets;
import simmerpoint.study.budget.FlawCost;
import simmerpoint.study.budget.Parameter;
import simmerpoint.study.budget.ParameterStep;
import simmerpoint.study.budget.Sensitivity;
import simmerpoint.units.UnitSystem;

/** The words for a budget made up of round figures. */
class BudgetAnswerTest {
    private static Scenario tea;

    @BeforeAll
    static void read() throws Exception {
        tea = ScenarioReader.parse("example", ExampleScenario.text(), Path.of(""))
                .scenario();
    }

    private static Estimate e(double value, double error) {
        return new Estimate(value, error);
    }

    private static BudgetResult budget(Estimate leftInTurn, Estimate leftAlone, Sensitivity... steps) {
        List<FlawCost> costs = List.of(
                new FlawCost(Budgets.flaw("reflectance"), e(110, 0.2), e(130, 0.2)),
                new FlawCost(Budgets.flaw("slope-error"), e(12, 0.1), e(0.2, 0.1)),
                new FlawCost(Budgets.flaw("dust"), e(0.06, 0.05), e(5, 0.01)),
                new FlawCost(Budgets.flaw("turn"), e(-4, 0.1), e(3, 0.1)));
        return new BudgetResult(
                tea,
                e(700, 1),
                e(900, 1),
                e(200, 0.5),
                costs,
                leftInTurn,
                leftAlone,
                List.of(Budgets.flaw("drift"), Budgets.flaw("jitter")),
                List.of(Budgets.flaw("pan-place")),
                List.of(steps),
                new BudgetResult.Run(1, 1 << 17, 60, 2, 1));
    }

    private static String text(BudgetResult result, UnitSystem system) {
        return BudgetAnswer.of(result, system).sections().stream()
                .flatMap(s -> s.items().stream())
                .map(Object::toString)
                .collect(Collectors.joining("\n"))
                .replace(FigureFormat.NBSP, " ");
    }

    private static void says(String text, String words) {
        assertTrue(text.contains(words), words + " is not in\n" + text);
    }

    @Test
    void theFirstSentenceNamesTheDearest() {
        String text = text(budget(e(82, 0.5), e(67, 0.5)), UnitSystem.METRIC);
        says(
                text,
                "Perfect mirrors in this size would bring 900 W into the water; yours bring 700 W; the most costly is "
                        + "reflectance of 85 % (−110 W).");
    }

    @Test
    void theTableTellsNoiseAndGains() {
        String text = text(budget(e(82, 0.5), e(67, 0.5)), UnitSystem.METRIC);
        says(text, "[reflectance 85 %, 110.00 ± 0.20 W, 12 %, 130.00 ± 0.20 W, 14 %]");
        says(text, "[slope error 5.0 mrad, 12.00 ± 0.10 W, 1.3 %, 0.20 ± 0.10 W, not sure]");
        says(text, "[dust 3.0 %, 0.06 ± 0.05 W, none, 5.00 ± 0.01 W, 0.6 %]");
        says(text, "[turn 0.50°, −4.00 ± 0.10 W, −0.4 %, 3.00 ± 0.10 W, 0.3 %]");
        says(text, "Not sure: within 3 standard errors of nothing");
        says(text, "Below nothing: it brings watts");
        says(text, "Not there, so nothing is lost by it: drift, jitter.");
        says(text, "would stand in the mirror: pan out of place.");
    }

    @Test
    void whatFlawsDoTogetherIsSaidEitherWayOrNotAtAll() {
        String more = text(budget(e(82, 0.5), e(67, 0.5)), UnitSystem.METRIC);
        says(
                more,
                "All flaws together cost 200.0 ± 0.5 W: 82.0 ± 0.5 W more than the left column adds up to, which come");
        says(more, "and 67.0 ± 0.5 W more than the right column adds up to");
        String less = text(budget(e(-5, 0.5), e(-6, 0.5)), UnitSystem.METRIC);
        says(less, "5.0 ± 0.5 W less than the left column");
        says(less, "6.0 ± 0.5 W less than the right column");
        says(text(budget(e(0.1, 0.5), e(0, 0)), UnitSystem.METRIC), "All flaws together cost 200.0 ± 0.5 W.");
    }

    private static Sensitivity of(String key, Estimate slope, Estimate bend) {
        Parameter parameter = Budgets.parameter(tea, key);
        return new Sensitivity(
                parameter,
                List.of(
                        new Sensitivity.Step(ParameterStep.MORE, e(bend.value() + slope.value(), 0.1)),
                        new Sensitivity.Step(ParameterStep.LESS, e(bend.value() - slope.value(), 0.1))),
                Optional.of(slope),
                Optional.of(bend));
    }

    private static Sensitivity of(String key, List<String> ways, double... changes) {
        List<Sensitivity.Step> steps = new java.util.ArrayList<>();
        for (int k = 0; k < changes.length; k++) {
            steps.add(new Sensitivity.Step(ways.get(k), e(changes[k], 0.1)));
        }
        return new Sensitivity(Budgets.parameter(tea, key), steps, Optional.empty(), Optional.empty());
    }

    @Test
    void slopesBendsAndEnds() {
        BudgetResult result = budget(
                e(0, 0),
                e(0, 0),
                of("slope-error", e(-2, 0.1), e(-0.1, 0.1)),
                of("pull-back", e(-5, 0.1), e(-1, 0.1)),
                of("side", e(0.1, 0.1), e(-3, 0.1)),
                of("slide", e(1, 0.1), e(-3, 0.1)),
                of("raise", e(0.1, 0.2), e(0.1, 0.2)),
                of("jitter", e(0.1, 0.1), e(-0.01, 0.01)),
                of("gap", List.of(ParameterStep.MORE), -12),
                of("turn", List.of("up", "up right", "down left", "left"), -1, 2, -3, 0),
                of("drift", List.of("up", "right", "down", "left"), -1, -2.5, 2, -2));
        String text = text(result, UnitSystem.METRIC);
        says(text, "slope error, value=−2.00 ± 0.10 W per 1 mrad more]");
        says(text, "pull-back, value=−5.00 ± 0.10 W per 1 cm (away from the dish)]");
        says(text, "side, value=±1 cm costs 3.00 ± 0.10 W either way: it is at its best]");
        says(
                text,
                "slide, value=±1 cm costs 3.00 ± 0.10 W, a little more one way than the other: it is near its best]");
        says(text, "raise, value=1 cm either way changes nothing that this many rays can tell (+0.10 ± 0.20 W)]");
        says(text, "jitter, value=1 mrad either way changes next to nothing (+0.10 ± 0.10 W)]");
        says(text, "gap, value=−12.00 ± 0.10 W for the first 1 mm more]");
        says(text, "turn, value=−3.00 ± 0.10 W for 0.1° in the worst direction, the dish turned down and to the left]");
        says(text, "drift, value=−2.50 ± 0.10 W for 0.1° in the worst direction, the sun gone to the right]");
        String inch = text(result, UnitSystem.INCH);
        says(inch, "±3/8 in costs");
        assertFalse(inch.contains(" cm"), inch);
    }

    @Test
    void aDishWithoutFlawsAndOneWhoseFlawsCostNothing() {
        BudgetResult full = budget(e(0, 0), e(0, 0));
        BudgetResult none = new BudgetResult(
                tea,
                e(900, 1),
                e(900, 1),
                e(0, 0),
                List.of(),
                e(0, 0),
                e(0, 0),
                List.of(),
                List.of(),
                List.of(),
                full.run());
        says(text(none, UnitSystem.METRIC), "there is no flaw in this scenario that could be mended.");
        BudgetResult noise = new BudgetResult(
                tea,
                e(900, 1),
                e(900, 1),
                e(0, 0),
                List.of(new FlawCost(Budgets.flaw("turn"), e(0.1, 0.1), e(0, 0.1))),
                e(0, 0),
                e(0, 0),
                List.of(),
                List.of(),
                List.of(),
                full.run());
        says(text(noise, UnitSystem.METRIC), "mending any one flaw alone would bring next to nothing.");
    }

    @Test
    void namesFollowTheCut() throws Exception {
        Scenario tiles = ScenarioReader.parse(
                        "tiles",
                        "dish: {diameter: 1 m, focal-length: 1 m, surface: {cut: square-tiles, tile: 5 cm}}",
                        Path.of(""))
                .scenario();
        FlawWords words = new FlawWords(tiles, new FigureFormat(UnitSystem.METRIC));
        assertEquals("flat tiles", words.name(Budgets.flaw("flat-panels")));
        assertEquals("hub, gaps, bare edge", words.name(Budgets.flaw("hub-and-gaps")));
        assertEquals(
                "hub and gaps",
                new FlawWords(tea, new FigureFormat(UnitSystem.METRIC)).sized(Budgets.flaw("hub-and-gaps")));
    }
}
