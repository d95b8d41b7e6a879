package simmerpoint.heat.plate;

import simmerpoint.heat.PhysicalConstants;
import simmerpoint.heat.Surroundings;
import simmerpoint.heat.losses.AirFilm;
import simmerpoint.heat.losses.Convection;
import simmerpoint.pan.Pan;

/**
 * What the inside of an empty open pan gives off: convection of still air, since the rim shelters it, and what it radiates
 * out through the mouth. The share of the bottom's radiation that leaves through the mouth is that between two equal discs
 * opposite each other, F = X/2 − √(X²/4 − 1) with X = 2 + (H/R)² (Incropera et al., table 13.2, from memory); the wall's follows by reciprocity. Heat
 * passed between bottom and wall by radiation is neglected.
 */
final class DryInside {
    /** Of metal under a film of hot oil: engineering judgement. */
    private static final double EMISSIVITY = 0.9;

    private final Pan pan;
    private final Surroundings around;
    private final double factor;

    DryInside(Pan pan, Surroundings around, double factor) {
        this.pan = pan;
        this.around = around;
        this.factor = factor;
    }

    /** Share of the bottom's radiation that leaves through the mouth. */
    static double bottomShare(double heightToRadius) {
        double x = 1 + heightToRadius * heightToRadius / 2;
        return x - Math.sqrt(x * x - 1);
    }

    /** The same of the wall. */
    static double wallShare(double heightToRadius) {
        return (1 - bottomShare(heightToRadius)) / (2 * heightToRadius);
    }

    /** From the bottom, W/m². */
    double bottom(double celsius) {
        double length = pan.diameterMetres() / 4;
        AirFilm film = film(celsius);
        double still = Convection.lid(film.rayleigh(celsius - around.airCelsius(), length));
        return flux(celsius, still * film.conductivity() / length, bottomShare(slenderness()));
    }

    /** From the wall, W/m². */
    double wall(double celsius) {
        double length = pan.heightMetres();
        AirFilm film = film(celsius);
        double still = Convection.wall(film.rayleigh(celsius - around.airCelsius(), length), film.prandtl());
        return flux(celsius, still * film.conductivity() / length, wallShare(slenderness()));
    }

    private double flux(double celsius, double coefficient, double share) {
        double radiation = EMISSIVITY
                * share
                * PhysicalConstants.STEFAN_BOLTZMANN
                * (Math.pow(PhysicalConstants.kelvin(celsius), 4) - Math.pow(around.skyKelvin(), 4));
        return factor * (coefficient * (celsius - around.airCelsius()) + radiation);
    }

    private AirFilm film(double celsius) {
        double mean = (PhysicalConstants.kelvin(celsius) + around.airKelvin()) / 2;
        return AirFilm.at(mean, around.pressurePascals());
    }

    private double slenderness() {
        return pan.heightMetres() / pan.radiusMetres();
    }
}
