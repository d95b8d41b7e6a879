package simmerpoint.target;

import java.util.Optional;
import simmerpoint.sampling.Estimate;

/**
 * The spot figures. Positions are in the target frame of {@link FluxMaps}, m.
 *
 * @param interceptFactor caught ÷ reflected
 * @param meanConcentration mean flux over the underside or disc ÷ beam irradiance
 * @param evenness standard deviation ÷ mean of flux over the underside or disc, resolved to the map's cells
 * @param peakFlux mean flux over the peak disc, W/m²; located on one half of the replicates, evaluated on the other
 * @param peakDiscRadius radius of that disc, m
 * @param peakX centre of that disc
 * @param peakY centre of that disc
 * @param centroidX centroid of the caught light on the underside or disc
 * @param centroidY centroid of the caught light on the underside or disc
 * @param radius50 radius about the target's centre within which half of the reflected light crosses its plane; empty
 *     if that share never crosses it
 * @param radius90 the same for 90 %
 * @param radius95 the same for 95 %
 * @param ellipse the spot's ellipse from the second moments of the light caught by the underside or disc; empty if
 *     nothing is caught
 */
public record Spot(
        Estimate interceptFactor,
        Estimate meanConcentration,
        Estimate evenness,
        Estimate peakFlux,
        double peakDiscRadius,
        double peakX,
        double peakY,
        Estimate centroidX,
        Estimate centroidY,
        Optional<Estimate> radius50,
        Optional<Estimate> radius90,
        Optional<Estimate> radius95,
        Optional<SpotEllipse> ellipse) {}
