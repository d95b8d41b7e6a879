package simmerpoint.study.day;

import java.util.EnumMap;
import java.util.Map;
import java.util.function.Supplier;
import simmerpoint.heat.AbsorbedLight;
import simmerpoint.heat.BoilingOutcome;
import simmerpoint.heat.HeatLevel;
import simmerpoint.heat.balance.CookingModel;
import simmerpoint.heat.losses.LossFactors;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.trace.HeatResult;
import simmerpoint.study.trace.LazyValue;

/**
 * What the light of one instant does to the pan's water if it stayed so, with every figure as given. Worked out when asked for: a year
 * has 150 instants and wants little of each.
 */
public final class HourHeat {
    private final HeatResult heat;
    private final Supplier<BoilingOutcome> boil;
    private final Supplier<Map<HeatLevel, Double>> begins;

    HourHeat(HeatResult heat, CookingModel cooking) {
        this.heat = heat;
        boil = new LazyValue<>(() -> boil(cooking, heat.absorbed()));
        begins = new LazyValue<>(() -> begins(heat));
    }

    private static BoilingOutcome boil(CookingModel cooking, AbsorbedLight absorbed) {
        return BoilingOutcome.exact(
                cooking.likelyBoilSeconds(absorbed), () -> cooking.settlingCelsius(absorbed, LossFactors.LIKELY));
    }

    private static Map<HeatLevel, Double> begins(HeatResult heat) {
        Map<HeatLevel, Double> begins = new EnumMap<>(HeatLevel.class);
        for (HeatLevel level : HeatLevel.values()) {
            begins.put(level, heat.beginsWithPowerLikely(level));
        }
        return begins;
    }

    /** What the faces of the pan take up. */
    public AbsorbedLight faces() {
        return heat.absorbed();
    }

    /** Net heat into the water at 50 K above the air, see {@link HeatResult#cookingPower}, W. */
    public Estimate power() {
        return heat.cookingPower();
    }

    /** Heat level. */
    public HeatLevel level() {
        return heat.level();
    }

    /** Watts beyond what a simmer takes; below 0 it does not simmer. */
    public double simmerSpareWatts() {
        return heat.spareWatts(HeatLevel.SIMMER);
    }

    /** When the water boils, without its range. */
    public BoilingOutcome boil() {
        return boil.get();
    }

    /**
     * Cooking power with which {@code level} begins for light that is shared between the faces as here, likely losses, W; infinite where
     * such light never gets there.
     */
    public double begins(HeatLevel level) {
        return begins.get().get(level);
    }
}
