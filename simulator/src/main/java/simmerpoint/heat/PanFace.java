package simmerpoint.heat;

/**
 * One outer face of the pan against air and surroundings.
 *
 * @param kind which correlations hold for it
 * @param area m²
 * @param stillLength length for still air, m
 * @param windLength length for wind, m
 * @param emissivity infrared emissivity
 * @param radiantKelvin what it radiates to, K
 * @param around the air
 * @param factor on both convection and radiation
 */
record PanFace(
        Kind kind,
        double area,
        double stillLength,
        double windLength,
        double emissivity,
        double radiantKelvin,
        Surroundings around,
        double factor) {

    /** Which way a face looks. */
    enum Kind {
        UNDERSIDE,
        WALL,
        LID;

        double still(double rayleigh, double prandtl) {
            return switch (this) {
                case UNDERSIDE -> Convection.underside(rayleigh);
                case WALL -> Convection.wall(rayleigh, prandtl);
                case LID -> Convection.lid(rayleigh);
            };
        }

        double wind(double reynolds, double prandtl) {
            return this == WALL ? Convection.windAcross(reynolds, prandtl) : Convection.windAlong(reynolds, prandtl);
        }
    }

    /** A level face of the pan. The length for still air is area ÷ edge. */
    static PanFace level(Kind kind, ThermalPan vessel, double emissivity, Surroundings around, double factor) {
        double diameter = vessel.pan().diameterMetres();
        double radiant = kind == Kind.LID ? around.overheadKelvin() : around.airKelvin();
        return new PanFace(kind, vessel.levelArea(), diameter / 4, diameter, emissivity, radiant, around, factor);
    }

    /** A band of the wall, {@code height} high. Its air film is that of the whole wall. */
    static PanFace wall(ThermalPan vessel, double height, double emissivity, Surroundings around, double factor) {
        double diameter = vessel.pan().diameterMetres();
        return new PanFace(
                Kind.WALL,
                Math.PI * diameter * height,
                vessel.pan().heightMetres(),
                diameter,
                emissivity,
                around.aroundKelvin(),
                around,
                factor);
    }

    /** Coefficient of wind and still air together, W/(m² K), factor not yet applied. */
    double airCoefficient(double kelvin) {
        AirFilm film = AirFilm.at((kelvin + around.airKelvin()) / 2, around.pressurePascals());
        double difference = kelvin - around.airKelvin();
        double still =
                kind.still(film.rayleigh(difference, stillLength), film.prandtl()) * film.conductivity() / stillLength;
        double speed = around.windMetresPerSecond();
        if (!(speed > 0)) {
            return still;
        }
        double wind = kind.wind(film.reynolds(speed, windLength), film.prandtl()) * film.conductivity() / windLength;
        return Convection.together(still, wind);
    }

    /** Coefficient of radiation, W/(m² K), about {@link #radiantKelvin}, factor not yet applied. */
    double radiationCoefficient(double kelvin) {
        return emissivity
                * PhysicalConstants.STEFAN_BOLTZMANN
                * (kelvin * kelvin + radiantKelvin * radiantKelvin)
                * (kelvin + radiantKelvin);
    }

    /** What it loses, W. */
    Losses at(double kelvin) {
        double scale = factor * area;
        return new Losses(
                scale * airCoefficient(kelvin) * (kelvin - around.airKelvin()),
                scale * radiationCoefficient(kelvin) * (kelvin - radiantKelvin),
                0);
    }
}
