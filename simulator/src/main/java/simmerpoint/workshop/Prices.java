package simmerpoint.workshop;

import java.util.Optional;
import java.util.stream.Stream;
import simmerpoint.scenario.values.ScenarioValues;

/**
 * What things cost, all in one currency.
 *
 * @param currency its name, any words; may be empty
 * @param ribSheet a sheet for ribs
 * @param panelSheet a sheet for panels
 * @param film a roll or sheet of film
 * @param stand tripod and mount
 * @param rest all else
 */
public record Prices(String currency, double ribSheet, double panelSheet, double film, double stand, double rest) {
    private static final String SECTION = "build.prices.";

    /** What a scenario says; empty if it gives no price. */
    static Optional<Prices> of(ScenarioValues v) {
        boolean any =
                Stream.of("rib-sheet", "panel-sheet", "film", "stand", "rest").anyMatch(name -> v.has(SECTION + name));
        return any
                ? Optional.of(new Prices(
                        v.has(SECTION + "currency") ? v.text(SECTION + "currency") : "",
                        v.number(SECTION + "rib-sheet"),
                        v.number(SECTION + "panel-sheet"),
                        v.number(SECTION + "film"),
                        v.number(SECTION + "stand"),
                        v.number(SECTION + "rest")))
                : Optional.empty();
    }

    /** Cost of so many sheets and rolls. */
    BuildCost cost(int ribSheets, int panelSheets, int films) {
        return new BuildCost(currency, ribSheets * ribSheet, panelSheets * panelSheet, films * film, stand, rest);
    }
}
