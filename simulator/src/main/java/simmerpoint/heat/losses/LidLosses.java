package simmerpoint.heat.losses;

import simmerpoint.heat.PhysicalConstants;
import simmerpoint.heat.SaturatedWater;
import simmerpoint.heat.Surroundings;
import simmerpoint.heat.ThermalPan;
import simmerpoint.sampling.RootFinder;

/**
 * Losses through a lid. The lid has a temperature of its own that balances its heat flows: from the water convection,
 * condensing vapour that drips back (both by the closed-air form of {@link Evaporation}), radiation, and absorbed sunlight;
 * to the air as any level face. Its heat capacity is counted with the pan's.
 *
 * <p>The share {@value #LEAK_SHARE} of the vapour of water as wide as the opening leaks through the gap: common practice, no source; a loose lid
 * may leak three times that.
 */
final class LidLosses implements TopLosses {
    /** Vapour through the gap as a share of an open pan's. */
    static final double LEAK_SHARE = 0.05;

    /** Between two wet faces of emissivity 0.95: 1/(1/ε + 1/ε − 1). */
    private static final double EFFECTIVE_EMISSIVITY = 0.905;

    /** Below this the vapour pressure at the lid is negligible. */
    private static final double COLDEST_KELVIN = 235;

    private static final RootFinder ROOT = RootFinder.toShare(1e-9, 200);

    private final PanFace face;
    private final Surroundings surroundings;
    private final Evaporation evaporation;
    private final LossFactors factors;
    private final TopLosses open;
    private final double openShare;
    private final double ownShare;

    LidLosses(ThermalPan vessel, Surroundings surroundings, LossFactors factors) {
        face = PanFace.level(PanFace.Kind.LID, vessel, vessel.lid().emissivity(), surroundings, factors.dry());
        evaporation = new Evaporation(surroundings.pressurePascals());
        // The gap is at the rim, where the wind is, unless a second skin keeps it off.
        open = new OpenWaterLosses(
                vessel, 0, vessel.cover().isPresent() ? surroundings.withoutWind() : surroundings, factors);
        openShare = vessel.openShare();
        this.surroundings = surroundings;
        this.factors = factors;
        ownShare = 1 - vessel.lidThrough();
    }

    @Override
    public Losses at(double waterKelvin, double lightWatts) {
        double lidKelvin = lidKelvin(waterKelvin, lightWatts);
        return face.at(lidKelvin)
                .withSteam(LEAK_SHARE * openShare * open.at(waterKelvin, 0).steamWatts());
    }

    /** Temperature of the lid, K. */
    double lidKelvin(double waterKelvin, double lightWatts) {
        double light = ownShare * lightWatts / face.area();
        double low = Math.min(waterKelvin, Math.min(surroundings.airKelvin(), face.radiantKelvin())) - 1;
        double high = Math.max(waterKelvin, surroundings.airKelvin()) + 1 + light;
        return ROOT.find(lid -> netFlux(waterKelvin, lid, light), low, upperBound(waterKelvin, light, high));
    }

    private double upperBound(double waterKelvin, double light, double guess) {
        double high = Math.min(guess, 1400);
        return netFlux(waterKelvin, high, light) >= 0 ? high : 2 * high;
    }

    /** Net heat flux from the lid, W/m²; rises with the lid's temperature. */
    private double netFlux(double waterKelvin, double lidKelvin, double light) {
        return face.at(lidKelvin).dry() / face.area() - light - fromWater(waterKelvin, lidKelvin);
    }

    private double fromWater(double water, double lid) {
        double radiation =
                EFFECTIVE_EMISSIVITY * PhysicalConstants.STEFAN_BOLTZMANN * (Math.pow(water, 4) - Math.pow(lid, 4));
        double pressure = SaturatedWater.saturationPascals(water);
        if (lid >= water) {
            double still = evaporation.coefficient(water, 0, water - lid, 0);
            return radiation + still * (water - lid);
        }
        double drive = pressure - SaturatedWater.saturationPascals(Math.max(COLDEST_KELVIN, lid));
        double coefficient = evaporation.coefficient(water, pressure, water - lid, drive);
        return radiation
                + coefficient * (water - lid)
                + factors.evaporation() * evaporation.wattsPerSquareMetre(coefficient, drive);
    }
}
