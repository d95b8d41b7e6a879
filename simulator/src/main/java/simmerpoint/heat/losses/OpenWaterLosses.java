package simmerpoint.heat.losses;

import simmerpoint.heat.SaturatedWater;
import simmerpoint.heat.Surroundings;
import simmerpoint.heat.ThermalPan;

/** Losses of the water's surface without a lid. */
final class OpenWaterLosses implements TopLosses {
    /** Infrared emissivity of water: handbooks, from memory, 0.95 to 0.96. */
    static final double WATER_EMISSIVITY = 0.95;

    private final PanFace face;
    private final Surroundings surroundings;
    private final Evaporation evaporation;
    private final LossFactors factors;

    OpenWaterLosses(ThermalPan vessel, Surroundings surroundings, LossFactors factors) {
        face = PanFace.level(PanFace.Kind.LID, vessel, WATER_EMISSIVITY, surroundings, factors.dry());
        evaporation = new Evaporation(surroundings.pressurePascals());
        this.surroundings = surroundings;
        this.factors = factors;
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
        double speed = surroundings.windMetresPerSecond();
        if (!(speed > 0)) {
            return still;
        }
        AirFilm film = AirFilm.at((waterKelvin + surroundings.airKelvin()) / 2, surroundings.pressurePascals());
        double wind = Convection.windAlongPlate(film.reynolds(speed, face.windLength()), film.prandtl())
                * film.conductivity()
                / face.windLength();
        return Convection.combined(still, wind);
    }
}
