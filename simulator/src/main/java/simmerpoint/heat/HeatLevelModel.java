package simmerpoint.heat;

import java.util.Collections;
import java.util.List;

/**
 * The heat level of light on one pan, and the watts at which the level changes for this pan, lid, wind and altitude.
 * Never a fixed watt: every border is a temperature to be held or steam to be made, and the balance says what that takes.
 */
public final class HeatLevelModel {
    private static final double HOUR = 3600;

    private final CookingModel cooking;
    private final HeatLevelThresholds table;

    /** For one pan and its weather, with this table. */
    public HeatLevelModel(CookingModel cooking, HeatLevelThresholds table) {
        this.cooking = cooking;
        this.table = table;
    }

    /** The level with the likely losses. */
    public HeatLevel level(AbsorbedLight absorbed) {
        return level(cooking.likely(), absorbed);
    }

    /** The level with its spread. */
    public HeatLevelRange levelWithSpread(AbsorbedLight absorbed) {
        HeatLevel likely = level(absorbed);
        List<HeatLevel> levels = LossSpread.all().stream()
                .map(f -> level(cooking.kettle(f), absorbed))
                .sorted()
                .toList();
        int tenth = levels.size() / 10;
        return new HeatLevelRange(
                Collections.min(List.of(likely, levels.get(tenth))),
                likely,
                Collections.max(List.of(likely, levels.get(levels.size() - 1 - tenth))));
    }

    private HeatLevel level(PotModel kettle, AbsorbedLight absorbed) {
        HeatLevel[] all = HeatLevel.values();
        for (int k = all.length - 1; k > 0; k--) {
            if (surplus(kettle, all[k], absorbed) >= 0) {
                return all[k];
            }
        }
        return HeatLevel.TOO_COOL;
    }

    /**
     * How many watts the light has to spare at the border where a level begins, with the likely losses: 0 at the border,
     * below 0 under it, and smooth, so that a position of the pan can be found by root finding.
     *
     * @param level not {@link HeatLevel#TOO_COOL}, which begins nowhere
     */
    public double spareWatts(HeatLevel level, AbsorbedLight absorbed) {
        return surplus(cooking.likely(), level, absorbed);
    }

    /**
     * Absorbed watts at which a level begins; 0 for {@link HeatLevel#TOO_COOL}, and where the sun on the lid alone cannot
     * get there, infinite.
     *
     * @param level the level
     * @param pattern how the light is shared between the faces; its strength does not matter
     */
    public LikelyRange begins(HeatLevel level, AbsorbedLight pattern) {
        return level == HeatLevel.TOO_COOL
                ? LikelyRange.exact(0)
                : LossSpread.range(f -> beginsWatts(cooking.kettle(f), level, pattern));
    }

    /** The same for the likely losses alone, W: a twentieth of the work. */
    public double beginsLikely(HeatLevel level, AbsorbedLight pattern) {
        return level == HeatLevel.TOO_COOL ? 0 : beginsWatts(cooking.likely(), level, pattern);
    }

    private double beginsWatts(PotModel kettle, HeatLevel level, AbsorbedLight pattern) {
        return SteadyState.wattsFor(kettle, pattern, borderCelsius(kettle, level), steamWatts(kettle, level));
    }

    private double surplus(PotModel kettle, HeatLevel level, AbsorbedLight absorbed) {
        return kettle.surplusWatts(borderCelsius(kettle, level), absorbed) - steamWatts(kettle, level);
    }

    private double borderCelsius(PotModel kettle, HeatLevel level) {
        return switch (level) {
            case TOO_COOL -> throw new IllegalArgumentException("the coolest level begins nowhere");
            case KEEP_WARM -> Math.min(table.holdCelsius(), kettle.boilingCelsius());
            case SIMMER -> kettle.boilingCelsius() - table.simmerKelvinBelowBoiling();
            case BOIL, FAST_BOIL -> kettle.boilingCelsius();
        };
    }

    /** Heat in the steam of the level's border, W. */
    private double steamWatts(PotModel kettle, HeatLevel level) {
        double steam = switch (level) {
            case TOO_COOL, KEEP_WARM, SIMMER -> 0;
            case BOIL -> table.boilSteam();
            case FAST_BOIL -> table.fastBoilSteam();
        };
        return steam
                * cooking.vessel().levelArea()
                / HOUR
                * SaturatedWater.latentHeatJoulesPerKilogram(kettle.boilingCelsius());
    }
}
