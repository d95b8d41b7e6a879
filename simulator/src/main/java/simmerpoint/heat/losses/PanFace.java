package simmerpoint.heat.losses;

import java.util.Optional;
import java.util.function.ToDoubleFunction;
import simmerpoint.heat.PanCover;
import simmerpoint.heat.PhysicalConstants;
import simmerpoint.heat.Surroundings;
import simmerpoint.heat.ThermalPan;

/**
 * Losses of one outer face of the pan.
 *
 * @param kind selects the correlations
 * @param area m²
 * @param stillLength characteristic length of natural convection, m
 * @param windLength characteristic length of forced convection, m
 * @param emissivity infrared emissivity
 * @param radiantKelvin temperature of the radiative surroundings, K
 * @param surroundings the air
 * @param factor on both convection and radiation
 * @param cover the second skin before it
 */
public record PanFace(
        Kind kind,
        double area,
        double stillLength,
        double windLength,
        double emissivity,
        double radiantKelvin,
        Surroundings surroundings,
        double factor,
        Optional<PanCover> cover) {
    private static final double STEP = 0.5;

    /** Orientation of a face. */
    public enum Kind {
        /** Faces down. */
        UNDERSIDE,
        /** Stands upright. */
        WALL,
        /** Faces up. */
        LID;

        double still(double rayleigh, double prandtl) {
            return switch (this) {
                case UNDERSIDE -> Convection.underside(rayleigh);
                case WALL -> Convection.wall(rayleigh, prandtl);
                case LID -> Convection.lid(rayleigh);
            };
        }

        double wind(double reynolds, double prandtl) {
            return this == WALL
                    ? Convection.windAcrossCylinder(reynolds, prandtl)
                    : Convection.windAlongPlate(reynolds, prandtl);
        }
    }

    /** A level face of the pan. The length of natural convection is area ÷ edge. */
    public static PanFace level(
            Kind kind, ThermalPan vessel, double emissivity, Surroundings surroundings, double factor) {
        double diameter = vessel.pan().diameterMetres();
        double radiant = kind == Kind.LID ? surroundings.skyKelvin() : surroundings.airKelvin();
        return new PanFace(
                kind,
                vessel.levelArea(),
                diameter / 4,
                diameter,
                emissivity,
                radiant,
                surroundings,
                factor,
                vessel.cover());
    }

    /** A band of the wall of the given height. Its characteristic lengths are those of the whole wall. */
    public static PanFace wall(
            ThermalPan vessel, double height, double emissivity, Surroundings surroundings, double factor) {
        double diameter = vessel.pan().diameterMetres();
        return new PanFace(
                Kind.WALL,
                Math.PI * diameter * height,
                vessel.pan().heightMetres(),
                diameter,
                emissivity,
                surroundings.wallRadiantKelvin(),
                surroundings,
                factor,
                vessel.cover());
    }

    /** Combined coefficient of natural and forced convection, W/(m² K), without {@link #factor}. */
    double convectionCoefficient(double kelvin) {
        if (cover.isPresent()) {
            return slope(kelvin, Losses::convectionWatts);
        }
        AirFilm film = AirFilm.at((kelvin + surroundings.airKelvin()) / 2, surroundings.pressurePascals());
        double difference = kelvin - surroundings.airKelvin();
        double still =
                kind.still(film.rayleigh(difference, stillLength), film.prandtl()) * film.conductivity() / stillLength;
        double speed = surroundings.windMetresPerSecond();
        if (!(speed > 0)) {
            return still;
        }
        double wind = kind.wind(film.reynolds(speed, windLength), film.prandtl()) * film.conductivity() / windLength;
        return Convection.combined(still, wind);
    }

    /** Coefficient of radiation to {@link #radiantKelvin}, W/(m² K), without {@link #factor}. */
    double radiationCoefficient(double kelvin) {
        if (cover.isPresent()) {
            return slope(kelvin, Losses::radiationWatts);
        }
        return emissivity
                * PhysicalConstants.STEFAN_BOLTZMANN
                * (kelvin * kelvin + radiantKelvin * radiantKelvin)
                * (kelvin + radiantKelvin);
    }

    /** How much more of a loss goes out through the cover for each kelvin, W/(m² K), without {@link #factor}. */
    private double slope(double kelvin, ToDoubleFunction<Losses> loss) {
        CoveredFace behind = covered();
        return (loss.applyAsDouble(behind.perArea(kelvin + STEP)) - loss.applyAsDouble(behind.perArea(kelvin)))
                / (STEP * factor);
    }

    private CoveredFace covered() {
        PanFace outside = new PanFace(
                kind,
                area,
                stillLength,
                windLength,
                cover.orElseThrow().emissivity(),
                radiantKelvin,
                surroundings,
                factor,
                Optional.empty());
        return new CoveredFace(this, cover.orElseThrow(), outside);
    }

    /** Losses at a temperature, W. */
    public Losses at(double kelvin) {
        if (cover.isPresent() && area > 0) {
            Losses each = covered().perArea(kelvin);
            return new Losses(area * each.convectionWatts(), area * each.radiationWatts(), 0);
        }
        double scale = factor * area;
        return new Losses(
                scale * convectionCoefficient(kelvin) * (kelvin - surroundings.airKelvin()),
                scale * radiationCoefficient(kelvin) * (kelvin - radiantKelvin),
                0);
    }
}
