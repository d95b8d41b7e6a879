package simmerpoint.heat.losses;

import simmerpoint.heat.PanCover;
import simmerpoint.heat.PhysicalConstants;
import simmerpoint.heat.Surroundings;
import simmerpoint.sampling.RootFinder;

/**
 * A face of the pan behind its cover. Heat crosses the gap by radiation between two parallel grey faces and by air: beside the
 * wall 0.42 Ra^¼ Pr^0.012 (height ÷ gap)^−0.3 times conduction (MacGregor and Emery 1969), above the lid that of Hollands and others 1976 (Journal of Heat Transfer 98, 189) for level layers, under the pan, where the warm face lies above, conduction alone; all as in Incropera et al., chapter 9, from
 * memory. The cover has the temperature at which it gives off as much as it gets.
 *
 * @param face the pan's face
 * @param cover what is round it
 * @param outside the face of the cover towards air and sky
 */
record CoveredFace(PanFace face, PanCover cover, PanFace outside) {
    private static final RootFinder ROOT = RootFinder.toShare(1e-7, 100);

    /** Loss of the face at a temperature through its cover, W/m², by what the cover gives to air and sky. */
    Losses perArea(double kelvin) {
        double skin = skinKelvin(kelvin);
        Losses all = outside.at(skin);
        return new Losses(all.convectionWatts() / outside.area(), all.radiationWatts() / outside.area(), 0);
    }

    /** Temperature of the cover, K. */
    double skinKelvin(double kelvin) {
        Surroundings around = face.surroundings();
        double coldest = Math.min(Math.min(around.airKelvin(), face.radiantKelvin()), kelvin) - 1;
        double hottest = Math.max(Math.max(around.airKelvin(), face.radiantKelvin()), kelvin) + 1;
        return ROOT.find(
                skin -> outside.at(skin).dry() / outside.area() - face.factor() * throughGap(kelvin, skin),
                coldest,
                hottest);
    }

    private double throughGap(double kelvin, double skin) {
        double grey = 1 / (1 / face.emissivity() + 1 / cover.emissivity() - 1);
        double radiation = grey * PhysicalConstants.STEFAN_BOLTZMANN * (Math.pow(kelvin, 4) - Math.pow(skin, 4));
        return radiation + gapCoefficient(kelvin, skin) * (kelvin - skin);
    }

    private double gapCoefficient(double kelvin, double skin) {
        double gap = cover.gapMetres();
        AirFilm film = AirFilm.at((kelvin + skin) / 2, face.surroundings().pressurePascals());
        double nusselt = Convection.acrossGap(
                face.kind(), film.rayleigh(kelvin - skin, gap), film.prandtl(), face.stillLength() / gap);
        return nusselt * film.conductivity() / gap;
    }
}
