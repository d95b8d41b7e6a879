package simmerpoint.quantities;

import java.util.List;
import java.util.OptionalDouble;
import simmerpoint.heat.BoilingOutcome;
import simmerpoint.heat.HeatLevel;
import simmerpoint.heat.HeatLevelRange;
import simmerpoint.uncertainty.LikelyRange;

/** What the water of a pan does. */
final class HeatQuantities {
    /** Whether and when it boils. */
    static final Fields<BoilingOutcome> BOIL = Fields.<BoilingOutcome>none()
            .text("boil", "whether the water boils", List.of("boils", "may boil", "never"), HeatQuantities::word)
            .number("boil_share", "share of such pans that boil", HeatQuantities::share)
            .number("boil_low_s", "time to boil: one pan in ten is sooner", outcome -> ends(outcome)[0])
            .number("boil_likely_s", "likely time to boil", outcome -> ends(outcome)[1])
            .number("boil_high_s", "time to boil: one pan in ten is later", outcome -> ends(outcome)[2]);

    /** The spread of its heat level. */
    static final Fields<HeatLevelRange> LEVEL_SPREAD = Fields.<HeatLevelRange>none()
            .word("heat_level_low", "heat level: one pan in ten does less", HeatLevel.class, HeatLevelRange::lowest)
            .word("heat_level_high", "heat level: one pan in ten does more", HeatLevel.class, HeatLevelRange::highest);

    /** Its heat level. */
    static final Fields<HeatLevelRange> LEVEL = Fields.<HeatLevelRange>none()
            .word("heat_level", "heat level with the likely losses", HeatLevel.class, HeatLevelRange::likely)
            .include(level -> level, LEVEL_SPREAD);

    /** Where it settles if it does not surely boil. */
    static final Fields<BoilingOutcome> SETTLES = Fields.<BoilingOutcome>none()
            .range("settles_*_C", "temperature it settles at unless it surely boils", HeatQuantities::settles);

    private HeatQuantities() {}

    private static String word(BoilingOutcome outcome) {
        return outcome instanceof BoilingOutcome.Boils
                ? "boils"
                : outcome instanceof BoilingOutcome.MayBoil ? "may boil" : "never";
    }

    private static double share(BoilingOutcome outcome) {
        return outcome instanceof BoilingOutcome.Boils
                ? 1
                : outcome instanceof BoilingOutcome.MayBoil may ? may.share() : 0;
    }

    /** Low, likely and high, s; NaN for what never comes. */
    private static double[] ends(BoilingOutcome outcome) {
        if (outcome instanceof BoilingOutcome.Boils boils) {
            LikelyRange seconds = boils.seconds();
            return new double[] {seconds.low(), seconds.likely(), seconds.high()};
        }
        if (outcome instanceof BoilingOutcome.MayBoil may) {
            OptionalDouble likely = may.likelySeconds();
            return new double[] {may.soonestSeconds(), likely.orElse(Double.NaN), Double.NaN};
        }
        return new double[] {Double.NaN, Double.NaN, Double.NaN};
    }

    private static LikelyRange settles(BoilingOutcome outcome) {
        return outcome instanceof BoilingOutcome.Never never
                ? never.settlesCelsius()
                : outcome instanceof BoilingOutcome.MayBoil may ? may.settlesCelsius() : null;
    }
}
