package simmerpoint.study.budget;

import java.util.List;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.paired.PairedStudy;
import simmerpoint.study.paired.PairedWatts;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;

/** Budgets and their parts for tests. */
public final class Budgets {
    private Budgets() {}

    /** A budget with so many rays, on two threads. */
    public static BudgetResult of(Scenario scenario, long rays) {
        return BudgetStudy.run(scenario, options(rays), Progress.NONE);
    }

    /** Seed 71, two threads. */
    public static TraceOptions options(long rays) {
        return TraceOptions.defaults().withRays(rays).withSeed(71).withThreads(2);
    }

    /** The flaw of that key. */
    public static Flaw flaw(String key) {
        return Flaws.ALL.stream().filter(f -> f.key().equals(key)).findFirst().orElseThrow();
    }

    /** The parameter of that key in a scenario. */
    public static Parameter parameter(Scenario scenario, String key) {
        return SensitivityParameters.of(scenario).stream()
                .filter(k -> k.key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    /** What the flaw of that key costs. */
    public static FlawCost cost(BudgetResult budget, String key) {
        return budget.costs().stream()
                .filter(c -> c.flaw().key().equals(key))
                .findFirst()
                .orElseThrow(() -> new AssertionError(key + " is not among " + keys(budget)));
    }

    /** How watts change with the figure of that key. */
    public static Sensitivity sensitivity(BudgetResult budget, String key) {
        return budget.sensitivities().stream()
                .filter(s -> s.parameter().key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    /** Keys of the flaws that are there, in the budget's order. */
    public static List<String> keys(BudgetResult budget) {
        return budget.costs().stream().map(c -> c.flaw().key()).toList();
    }

    /** Watts of a scenario and of the same without one flaw, with the same samples. */
    public static List<PairedWatts> pair(Scenario scenario, String flaw, long rays) {
        return PairedStudy.watts(List.of(scenario, flaw(flaw).mended(scenario)), options(rays), Progress.NONE);
    }
}
