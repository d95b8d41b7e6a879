package simmerpoint.study.design;

import java.util.Optional;
import java.util.OptionalDouble;
import simmerpoint.dish.PanelSize;
import simmerpoint.sampling.Estimate;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.aim.AimAgain;
import simmerpoint.study.trace.LikelyResult;

/**
 * One dish of the front, traced anew with a seed and with rays that the search has not seen.
 *
 * @param candidate the dish
 * @param scenario the file's scenario with it
 * @param watts its cooking power (of a bare disc, caught), W
 * @param absorbed taken up by the pan (caught by a bare disc), W
 * @param peakFlux hottest place of underside or disc, W/m²
 * @param largestPanel size of its largest panel
 * @param panHeightMetres height of the pan's underside above the ground, m
 * @param again when it is to be aimed again, a tenth lost
 * @param likely what is likely of it over all doubts
 * @param cost what it costs, if prices are known and it can be built
 */
public record DesignChoice(
        DishCandidate candidate,
        Scenario scenario,
        Estimate watts,
        Estimate absorbed,
        Estimate peakFlux,
        Optional<PanelSize> largestPanel,
        double panHeightMetres,
        AimAgain again,
        LikelyResult likely,
        OptionalDouble cost) {
    /** Cost for each of its watts. */
    public OptionalDouble costPerWatt() {
        return cost.isPresent() && watts.value() > 0
                ? OptionalDouble.of(cost.getAsDouble() / watts.value())
                : OptionalDouble.empty();
    }

    /** Cooking power, W; empty for a bare disc. */
    public Optional<Estimate> cookingPower() {
        return Optional.of(watts).filter(w -> scenario.cooking().isPresent());
    }
}
