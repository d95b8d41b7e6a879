package simmerpoint.study.pan;

import simmerpoint.heat.AbsorbedLight;
import simmerpoint.heat.FryingAssessment;
import simmerpoint.heat.HeatLevel;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.trace.HeatResult;

/**
 * What the pan gets at one position.
 *
 * @param offsetMetres along the move, from the scenario's stand
 * @param absorbed taken up by the pan, direct sunlight included, W
 * @param absorbedByFace the same by face
 * @param cookingPower net heat into the water at 50 K above the air, see {@link HeatResult#cookingPower}, W
 * @param level what its water does, for the likely losses
 * @param peakFlux light on the hottest place of the underside (mean over the peak disc), W/m²
 * @param wallPeakFlux light on the hottest place of the wall (mean over about 2 cm by 2 cm), W/m²
 * @param meanFlux light on the underside, mean over all of it, W/m²
 * @param wallShare share of the focused light on the pan that climbs its wall, 0 to 1; 0 without light
 * @param undersideShare the same for the underside
 * @param middleFlux taken up by the middle of the underside (its inner half radius), mean, W/m²
 * @param evenness standard deviation ÷ mean of flux over the underside
 * @param frying how it fries
 */
public record PanPosition(
        double offsetMetres,
        Estimate absorbed,
        AbsorbedLight absorbedByFace,
        Estimate cookingPower,
        HeatLevel level,
        Estimate peakFlux,
        double wallPeakFlux,
        double meanFlux,
        double wallShare,
        double undersideShare,
        double middleFlux,
        double evenness,
        FryingAssessment frying) {
    /** Light on the hottest place of underside and wall, W/m². */
    public double hottestFlux() {
        return Math.max(peakFlux.value(), wallPeakFlux);
    }

    /** Hottest place of the underside ÷ mean of the underside; 0 without light. */
    public double peakToMean() {
        return meanFlux > 0 ? peakFlux.value() / meanFlux : 0;
    }
}
