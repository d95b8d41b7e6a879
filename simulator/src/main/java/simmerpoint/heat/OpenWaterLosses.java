package simmerpoint.heat;

/** No lid: the water's surface meets the air. */
final class OpenWaterLosses implements TopLosses {
    /** Infrared emissivity of water: handbooks, from memory, 0.95 to 0.96. */
    static final double WATER_EMISSIVITY = 0.95;

    private final PanFace face;
    private final Surroundings around;
    private final Evaporation evaporation;
    private final LossFactors factors;

    OpenWaterLosses(ThermalPan vessel, Surroundings around, LossFactors factors) {
        face = PanFace.level(PanFace.Kind.LID, vessel, WATER_EMISSIVITY, around, factors.dry());
        evaporation = new Evaporation(around.pressurePascals());
        this.around = around;
        this.factors = factors;
    }

    @Override
    public Losses at(double waterKelvin, double lightWatts) {
        double difference = waterKelvin - around.airKelvin();
        double pressure = SaturatedWater.saturationPascals(waterKelvin);
        double drive = pressure - around.vapourPascals();
        double coefficient = coefficient(waterKelvin, pressure, difference, drive);
        return new Losses(
                factors.dry() * face.area() * coefficient * difference,
                face.at(waterKelvin).radiationWatts(),
                factors.evaporation() * face.area() * evaporation.wattsPerSquareMetre(coefficient, drive));
    }

    private double coefficient(double waterKelvin, double pressure, double difference, double drive) {
        double still = evaporation.coefficient(waterKelvin, pressure, difference, drive);
        double speed = around.windMetresPerSecond();
        if (!(speed > 0)) {
            return still;
        }
        AirFilm film = AirFilm.at((waterKelvin + around.airKelvin()) / 2, around.pressurePascals());
        double wind = Convection.windAlong(film.reynolds(speed, face.windLength()), film.prandtl())
                * film.conductivity()
                / face.windLength();
        return Convection.together(still, wind);
    }
}
