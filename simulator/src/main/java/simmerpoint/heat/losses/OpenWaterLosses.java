package simmerpoint.heat.losses;

import simmerpoint.heat.SaturatedWater;
import simmerpoint.heat.Surroundings;
import simmerpoint.heat.ThermalPan;

/**
 * Losses of the water's surface without a lid. The rim shelters low water from the wind: over a street as deep as two thirds of
 * its width the wind skims, and moves the air below at about a third of its speed (Oke 1988, Energy and Buildings 11, 103, from
 * memory); ours is a straight line from the full wind at the brim to that.
 */
final class OpenWaterLosses implements TopLosses {
    /** Infrared emissivity of water: handbooks, from memory, 0.95 to 0.96. */
    static final double WATER_EMISSIVITY = 0.95;

    private static final double SKIMMING_DEPTH = 0.65;
    private static final double SKIMMING_SHARE = 1.0 / 3;

    private final PanFace face;
    private final Surroundings surroundings;
    private final Evaporation evaporation;
    private final LossFactors factors;
    private final double wind;

    /**
     * For one pan.
     *
     * @param vessel the pan
     * @param rimMetres height of the rim above the water
     * @param surroundings air and sky
     * @param factors on the correlations
     */
    OpenWaterLosses(ThermalPan vessel, double rimMetres, Surroundings surroundings, LossFactors factors) {
        face = PanFace.level(PanFace.Kind.LID, vessel, WATER_EMISSIVITY, surroundings, factors.dry());
        evaporation = new Evaporation(surroundings.pressurePascals());
        this.surroundings = surroundings;
        this.factors = factors;
        wind = surroundings.windMetresPerSecond()
                * windShare(rimMetres / vessel.pan().diameterMetres());
    }

    /** Share of the wind that is left over water so many widths below the rim. */
    static double windShare(double depthToWidth) {
        return 1 - (1 - SKIMMING_SHARE) * Math.min(1, Math.max(0, depthToWidth) / SKIMMING_DEPTH);
    }

    @Override
    public Losses at(double waterKelvin, double lightWatts) {
        double difference = waterKelvin - surroundings.airKelvin();
        double pressure = SaturatedWater.saturationPascals(waterKelvin);
        double drive = pressure - surroundings.vapourPascals();
        double coefficient = coefficient(waterKelvin, pressure, difference, drive);
        return new Losses(
                factors.dry() * face.area() * coefficient * difference,
                face.at(waterKelvin).radiationWatts(),
                factors.evaporation() * face.area() * evaporation.wattsPerSquareMetre(coefficient, drive));
    }

    private double coefficient(double waterKelvin, double pressure, double difference, double drive) {
        double still = evaporation.coefficient(waterKelvin, pressure, difference, drive);
        if (!(wind > 0)) {
            return still;
        }
        AirFilm film = AirFilm.at((waterKelvin + surroundings.airKelvin()) / 2, surroundings.pressurePascals());
        double forced = Convection.windAlongPlate(film.reynolds(wind, face.windLength()), film.prandtl())
                * film.conductivity()
                / face.windLength();
        return Convection.combined(still, forced);
    }
}
