package simmerpoint.heat;

import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import simmerpoint.pan.GrazingAbsorptance;

/**
 * Sunlight on the faces of a pan, before absorption.
 *
 * @param underside on the underside
 * @param wetWall on the wall below the water line
 * @param dryWall on the wall above the water line
 * @param lid on the lid, or through the open top
 */
public record PanLight(FaceLight underside, FaceLight wetWall, FaceLight dryWall, FaceLight lid) {
    /**
     * Share of the light through an open top that is absorbed: the water reflects a few percent, a light-coloured inside
     * more. Our estimate, 0.6 for bare metal to 0.95 for dark enamel.
     */
    public static final double OPEN_TOP_SHARE = 0.8;

    private static final int NODES = 12;
    private static final GaussIntegrator HALF_ROUND = new GaussIntegratorFactory().legendre(NODES, 0, Math.PI / 2);

    /**
     * Direct sunlight on lid and wall: beam · area · cosine (derived here). Half of the wall is in the sun; there the cosine
     * is cos(elevation) · cos φ, φ the azimuth on the wall, and light is absorbed at the angle of each place: the mean
     * relative absorptance is ½∫A(cos(elevation) · cos φ) cos φ dφ from −π/2 to π/2.
     *
     * @param vessel the level pan
     * @param waterKilograms sets the water line
     * @param beamWattsPerSquareMetre beam irradiance, at least 0
     * @param elevationRadians 0 to π/2
     */
    public static PanLight direct(
            ThermalPan vessel, double waterKilograms, double beamWattsPerSquareMetre, double elevationRadians) {
        ArgumentChecks.notNegative("beam irradiance", beamWattsPerSquareMetre, "W/m²");
        ArgumentChecks.within("elevation", elevationRadians, 0, Math.PI / 2, "rad");
        double up = Math.sin(elevationRadians);
        double level = Math.cos(elevationRadians);
        double wallPerMetre = beamWattsPerSquareMetre * vessel.pan().diameterMetres() * level;
        double wet = vessel.waterLineMetres(waterKilograms);
        double onWall = wallAbsorptance(level);
        return new PanLight(
                FaceLight.NONE,
                new FaceLight(wallPerMetre * wet, onWall),
                new FaceLight(wallPerMetre * (vessel.pan().heightMetres() - wet), onWall),
                new FaceLight(
                        beamWattsPerSquareMetre * vessel.levelArea() * up, GrazingAbsorptance.relativeAbsorptance(up)));
    }

    /** By Gauss and Legendre with {@value #NODES} nodes: the integrand is smooth, so it is exact to 1e-9. */
    private static double wallAbsorptance(double level) {
        return HALF_ROUND.integrate(new WallAbsorptance(level));
    }

    /** A class of its own: the library's interface is too old for a lambda to be kept in an archive of classes. */
    private record WallAbsorptance(double level) implements UnivariateFunction {
        @Override
        public double value(double azimuth) {
            double cosine = Math.cos(azimuth);
            return cosine * GrazingAbsorptance.relativeAbsorptance(level * cosine);
        }
    }

    /** The sum with other light. */
    public PanLight plus(PanLight other) {
        return new PanLight(
                underside.plus(other.underside),
                wetWall.plus(other.wetWall),
                dryWall.plus(other.dryWall),
                lid.plus(other.lid));
    }

    /**
     * Light absorbed by the pan, behind its second skin if it has one.
     */
    public AbsorbedLight absorbedBy(ThermalPan vessel) {
        double through = vessel.coverTransmittance();
        double open = vessel.openShare();
        double closed = absorbed(lid, vessel.lid());
        return new AbsorbedLight(
                through * absorbed(underside, vessel.underside()),
                through * absorbed(wetWall, vessel.wetWall()),
                through * absorbed(dryWall, vessel.dryWall()),
                through * (vessel.lidOn() ? closed : open * OPEN_TOP_SHARE * lid.watts() + (1 - open) * closed));
    }

    private static double absorbed(FaceLight light, SurfaceOptics optics) {
        return light.watts() * optics.absorptance() * light.relativeAbsorptance();
    }
}
