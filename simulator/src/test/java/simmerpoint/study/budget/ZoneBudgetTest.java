package simmerpoint.study.budget;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import simmerpoint.pan.Plane;
import simmerpoint.sampling.Estimate;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.study.paired.PairedStudy;
import simmerpoint.study.paired.PairedWatts;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.study.trace.TraceStudy;
import simmerpoint.target.ZoneLight;

/** The budget of a dish of zones, which knows the flaws of each by its name. */
class ZoneBudgetTest {
    private static final long RAYS = 1 << 13;
    private static final List<String> OF_ZONES =
            List.of("flat-panels", "slope-error", "panel-tilt", "beam-spread", "reflectance", "scatter", "dust");

    private static Scenario card;

    @BeforeAll
    static void read() throws Exception {
        card = ScenarioReader.read(Path.of("../scenarios/patched-card.yaml"))
                .with(Map.of("dish.zones.patches.mirror.dust", "10 %"))
                .scenario();
    }

    private static Scenario mended(String... keys) {
        Scenario out = card;
        for (String key : keys) {
            out = flaw(key).mended(out);
        }
        return out;
    }

    private static Flaw flaw(String key) {
        return Flaws.of(card).stream()
                .filter(flaw -> flaw.key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    private static List<PairedWatts> watts(Scenario... scenarios) {
        return PairedStudy.watts(List.of(scenarios), Budgets.options(RAYS), Progress.NONE);
    }

    @Test
    void aPlainDishHasTheFlawsItAlwaysHad() throws Exception {
        assertEquals(Flaws.ALL, Flaws.of(ScenarioReader.builtIn().scenario()));
    }

    /** Mended in one zone after the other a flaw is gone from the whole dish: the same watts, to rounding. */
    @Test
    void zonesTogetherAreTheWholeDish() {
        for (String key : OF_ZONES) {
            Scenario byZone = mended("middle." + key, "patches." + key);
            List<PairedWatts> both = watts(byZone, Budgets.flaw(key).mended(card));
            assertEquals(both.get(1).useful().value(), both.get(0).useful().value(), 1e-3, key + " in W of some 300");
        }
    }

    @Test
    void theOrderOfMendingDoesNotMatter() {
        List<Flaw> flaws = new ArrayList<>(Flaws.of(card));
        Scenario first = Flaws.mended(card, flaws);
        for (int seed = 0; seed < 5; seed++) {
            Collections.shuffle(flaws, new Random(seed));
            assertEquals(first, Flaws.mended(card, flaws));
        }
        flaws.forEach(flaw -> assertFalse(flaw.isIn(first), flaw.key()));
    }

    @Test
    void aFlawIsInTheZonesThatHaveIt() {
        assertFalse(flaw("middle.panel-tilt").isIn(card));
        assertTrue(flaw("patches.panel-tilt").isIn(card));
        assertEquals(0.02, flaw("middle.dust").size().apply(card).orElseThrow().value(), 1e-12);
        assertEquals(0.1, flaw("patches.dust").size().apply(card).orElseThrow().value(), 1e-12);
    }

    /** Dust on one zone takes its share of what that zone sends, so wiping brings caught · d ÷ (1 − d) (derived here), and nothing else moves. */
    @Test
    void wipingOneZoneBringsTheLightItsDustKept() {
        Scenario disc = card.withTarget(new Plane(0.2, 0)).withCooking(Optional.empty());
        TraceResult asBuilt = TraceStudy.run(disc, Budgets.options(RAYS), Progress.NONE);
        TraceResult wiped = TraceStudy.run(flaw("patches.dust").mended(disc), Budgets.options(RAYS), Progress.NONE);
        ZoneLight before = asBuilt.ledger().zones().get(1);
        ZoneLight after = wiped.ledger().zones().get(1);
        assertEquals(
                before.caught().value() * 0.1 / 0.9,
                after.caught().value() - before.caught().value(),
                1e-3);
        assertEquals(
                asBuilt.ledger().zones().get(0).caught().value(),
                wiped.ledger().zones().get(0).caught().value(),
                1e-3);
    }

    /** Total = the sum of all lines and what is left, and every flaw of a zone is told with its name. */
    @Test
    void theBudgetAddsUp() {
        BudgetResult budget = Budgets.of(card, RAYS);
        double sum = budget.costs().stream()
                .map(FlawCost::offInTurn)
                .mapToDouble(Estimate::value)
                .sum();
        assertEquals(budget.total().value(), sum + budget.leftInTurn().value(), 1e-9);
        List<String> keys = Budgets.keys(budget);
        Stream.of("middle.reflectance", "patches.reflectance", "patches.slope-error", "patches.panel-tilt")
                .forEach(key -> assertTrue(keys.contains(key), key + " in " + keys));
        assertFalse(keys.contains("reflectance"));
        assertTrue(budget.sensitivities().stream()
                .anyMatch(s -> s.parameter().key().equals("patches.dust")));
    }
}
