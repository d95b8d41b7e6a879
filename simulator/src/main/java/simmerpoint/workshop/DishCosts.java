package simmerpoint.workshop;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import simmerpoint.dish.DishPlan;
import simmerpoint.study.design.DesignLimits;

/** What dishes cost that a search tries: every dish is cut from the file's stock; what one costs is worked out once. */
public final class DishCosts {
    private DishCosts() {}

    /**
     * By the prices of a stock.
     *
     * @param most the most that one may cost; infinite if that does not matter
     * @return empty where no prices are known
     */
    public static Optional<DesignLimits.Cost> of(CuttingStock stock, double most) {
        Map<DishPlan, OptionalDouble> known = new HashMap<>();
        return stock.prices()
                .map(prices -> new DesignLimits.Cost(
                        scenario -> known.computeIfAbsent(
                                scenario.dish(),
                                dish -> BuildCost.of(scenario, stock).stream()
                                        .mapToDouble(BuildCost::total)
                                        .findFirst()),
                        prices.currency(),
                        most));
    }
}
