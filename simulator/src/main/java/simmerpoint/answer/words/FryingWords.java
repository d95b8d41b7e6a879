package simmerpoint.answer.words;

import simmerpoint.heat.FryingAssessment;
import simmerpoint.heat.FryingThresholds;
import simmerpoint.heat.GasBurner;
import simmerpoint.pan.Pan;
import simmerpoint.study.trace.TraceResult;

/** How evenly a pan heats, and whether its hot spot is strong enough to burn food. */
public final class FryingWords {
    /**
     * What the lowest flame gives, W/m²: 100 W ({@link GasBurner#LOW_FLAME}) into a pan of 24 cm, as in {@link FryingThresholds}. A
     * small ring on full gives such a pan 13 kW/m².
     */
    private static final double LOWEST_FLAME = GasBurner.LOW_FLAME.low() / (Math.PI * 0.12 * 0.12);

    private FryingWords() {}

    /** How the pan of {@code result} heats, after "It heats"; {@code result} must be of a pan with light on it. */
    public static String heats(TraceResult result) {
        Pan pan = (Pan) result.scenario().target();
        double evenness = Math.max(0, result.spot().evenness().value());
        double area = Math.PI * pan.radiusMetres() * pan.radiusMetres();
        boolean scorches = scorches(
                result.spot().peakFlux().value(), result.ledger().absorbed().value(), area);
        return heats(FryingAssessment.read(0, evenness, FryingThresholds.USUAL).spread(), scorches);
    }

    /** The same for a spread that was read before. */
    public static String heats(FryingAssessment.Spread spread, boolean scorches) {
        return spread == FryingAssessment.Spread.HOT_SPOT && !scorches
                ? "in one place more than elsewhere, too weakly to burn food"
                : HeatWords.does(spread);
    }

    /**
     * Whether food scorches on the hottest spot: where frying begins, if the pan as a whole gets hot.
     *
     * @param peakFlux on the hottest spot, W/m²
     * @param watts taken up by the whole pan, W
     * @param area of its underside, m²
     */
    public static boolean scorches(double peakFlux, double watts, double area) {
        return peakFlux >= FryingThresholds.USUAL.fryFlux() && !isBelowLowFlame(watts, area);
    }

    /** Whether a pan gets less than the lowest flame of a hob gives one of its size. */
    public static boolean isBelowLowFlame(double watts, double area) {
        return watts / area < LOWEST_FLAME;
    }
}
