package simmerpoint.workshop;

import java.util.Optional;
import java.util.OptionalDouble;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.units.UnitSystem;

/**
 * What a cooker costs, whole sheets and rolls.
 *
 * @param currency any words; may be empty
 * @param ribs sheets for ribs
 * @param panels sheets for panels
 * @param film rolls or sheets of film
 * @param stand tripod and mount
 * @param rest all else
 */
public record BuildCost(String currency, double ribs, double panels, double film, double stand, double rest) {
    /** Of a scenario that gives prices and can be built, of sheets and film usual in those units. */
    public static Optional<BuildCost> of(CheckedScenario read, UnitSystem units) {
        return of(read.scenario(), CuttingStock.of(UsualStock.in(read.values(), units)));
    }

    /** Of a scenario that gives prices and can be built. */
    public static Optional<BuildCost> of(CheckedScenario read) {
        return of(read.scenario(), CuttingStock.of(read.values()));
    }

    /** Of a cooker made of that stock, if prices are known and it can be built. */
    public static Optional<BuildCost> of(Scenario scenario, CuttingStock stock) {
        if (stock.prices().isEmpty()) {
            return Optional.empty();
        }
        try {
            return CutPlan.of(scenario, stock, UnitSystem.METRIC).cost();
        } catch (CuttingException e) {
            return Optional.empty();
        }
    }

    /** All together. */
    public double total() {
        return ribs + panels + film + stand + rest;
    }

    /** For each watt; empty if there are none. */
    public OptionalDouble perWatt(double watts) {
        return watts > 0 ? OptionalDouble.of(total() / watts) : OptionalDouble.empty();
    }
}
