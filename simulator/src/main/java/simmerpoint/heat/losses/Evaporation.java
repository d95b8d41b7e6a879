package simmerpoint.heat.losses;

import simmerpoint.heat.PhysicalConstants;

/**
 * Heat and vapour transfer from a water surface below boiling.
 *
 * <p>Still air: Dunkle 1961, International Developments in Heat Transfer, 895 (from memory): coefficient h = 0.884 [ΔT +
 * (p₁ − p₂)·T₁/(268 900 Pa − p₁)]^⅓ W/(m² K), vapour 0.016273 · h · (p₁ − p₂) W/m² with p in Pa. Made for the closed air of
 * a solar still, water 0.2 to 0.5 m below a lid, at sea level; for an open pan only ± 50 %. Both constants are for 1 atm: 268
 * 900 is p·28.96/(28.96 − 18.02) and 0.016273 is proportional to 1/p (derived here from the Lewis relation); they are scaled
 * to other altitudes accordingly.
 *
 * <p>Wind: h is combined with the forced convection of a flat plate by {@link Convection#combined}; the same Lewis relation
 * then gives the vapour.
 */
final class Evaporation {
    private static final double VAPOUR_PER_COEFFICIENT = 0.016273;
    private static final double BUOYANCY_PRESSURE = 268_900;

    private final double pressureRatio;

    Evaporation(double pascals) {
        pressureRatio = pascals / PhysicalConstants.STANDARD_PRESSURE;
    }

    /**
     * Coefficient of the moist air, W/(m² K).
     *
     * @param waterKelvin temperature of the water
     * @param waterPascals vapour pressure at the water
     * @param kelvinDifference water − what is above it
     * @param pascalsDifference vapour pressure at the water − above
     */
    double coefficient(double waterKelvin, double waterPascals, double kelvinDifference, double pascalsDifference) {
        double lift =
                kelvinDifference + pascalsDifference * waterKelvin / (BUOYANCY_PRESSURE * pressureRatio - waterPascals);
        return 0.884 * Math.cbrt(Math.abs(lift));
    }

    /** Latent heat flux, W/m²; 0 where vapour would condense on the water instead. */
    double wattsPerSquareMetre(double coefficient, double pascalsDifference) {
        return VAPOUR_PER_COEFFICIENT / pressureRatio * coefficient * Math.max(0, pascalsDifference);
    }
}
