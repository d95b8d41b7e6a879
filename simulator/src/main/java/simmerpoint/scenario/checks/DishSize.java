package simmerpoint.scenario.checks;

import simmerpoint.dish.Cut;
import simmerpoint.dish.OwnSize;
import simmerpoint.scenario.values.ScenarioValues;

/** How large a dish is: by its cut where that knows, else by {@code dish.diameter} and {@code dish.focal-length}. */
final class DishSize {
    private DishSize() {}

    /** Of a dish cut so. */
    static OwnSize of(ScenarioValues v, Cut cut) {
        return cut.ownSize().orElseGet(() -> new OwnSize(v.number("dish.diameter"), v.number("dish.focal-length")));
    }
}
