package simmerpoint.heat;

import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * A lid over the water. It has a temperature of its own, between the water's and the air's, at which what reaches it
 * equals what it gives off: from the water moist air, vapour that settles on it and drips back (both by the closed-air
 * form of {@link Evaporation}, which was made for this), radiation, and the sunlight it takes up; to the air as any level
 * face. Its heat capacity is counted with the pan's.
 *
 * <p>Through the gap leaks {@value #LEAK_SHARE} of the vapour that an open pan would give off: common practice, no source;
 * a loose lid may leak three times that.
 */
final class LidLosses implements TopLosses {
    /** Vapour past the lid as a share of the open pan's. */
    static final double LEAK_SHARE = 0.05;

    /** Between two wet faces of emissivity 0.95: 1/(1/ε + 1/ε − 1). */
    private static final double BETWEEN = 0.905;

    /** Below this the vapour at the lid is next to nothing. */
    private static final double COLDEST_KELVIN = 235;

    private static final double LID_ACCURACY = 1e-9;
    private static final int MOST_STEPS = 200;

    private final PanFace face;
    private final Surroundings around;
    private final Evaporation evaporation;
    private final LossFactors factors;
    private final TopLosses open;

    LidLosses(ThermalPan vessel, Surroundings around, LossFactors factors) {
        face = PanFace.level(PanFace.Kind.LID, vessel, vessel.lid().emissivity(), around, factors.dry());
        evaporation = new Evaporation(around.pressurePascals());
        open = new OpenWaterLosses(vessel, around, factors);
        this.around = around;
        this.factors = factors;
    }

    @Override
    public Losses at(double waterKelvin, double lightWatts) {
        double lidKelvin = lidKelvin(waterKelvin, lightWatts);
        return face.at(lidKelvin).withSteam(LEAK_SHARE * open.at(waterKelvin, 0).steamWatts());
    }

    /** Temperature of the lid, K. */
    double lidKelvin(double waterKelvin, double lightWatts) {
        double light = lightWatts / face.area();
        double low = Math.min(waterKelvin, Math.min(around.airKelvin(), face.radiantKelvin())) - 1;
        double high = Math.max(waterKelvin, around.airKelvin()) + 1 + light;
        return new BrentSolver(LID_ACCURACY, LID_ACCURACY)
                .solve(MOST_STEPS, lid -> surplus(waterKelvin, lid, light), low, hottest(waterKelvin, light, high));
    }

    private double hottest(double waterKelvin, double light, double guess) {
        double high = Math.min(guess, 1400);
        return surplus(waterKelvin, high, light) >= 0 ? high : 2 * high;
    }

    /** What a lid of that temperature gives off − what it gets, W/m²; rises with the lid's temperature. */
    private double surplus(double waterKelvin, double lidKelvin, double light) {
        return face.at(lidKelvin).dry() / face.area() - light - fromWater(waterKelvin, lidKelvin);
    }

    private double fromWater(double water, double lid) {
        double radiation = BETWEEN * PhysicalConstants.STEFAN_BOLTZMANN * (Math.pow(water, 4) - Math.pow(lid, 4));
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
