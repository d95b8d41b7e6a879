package simmerpoint.heat;

import simmerpoint.pan.Pan;

/**
 * A pan with its thermal properties: round, level, of one material.
 *
 * @param pan outer diameter and height
 * @param material of the sheet
 * @param massKilograms pan, handles and, if it is on, lid; above 0
 * @param underside optics of the underside
 * @param wetWall optics of the wall below the water line
 * @param dryWall optics of the wall above the water line
 * @param lid optics of the lid; not used if the lid is off
 * @param lidOn whether the lid is on
 */
public record ThermalPan(
        Pan pan,
        PanMaterial material,
        double massKilograms,
        SurfaceOptics underside,
        SurfaceOptics wetWall,
        SurfaceOptics dryWall,
        SurfaceOptics lid,
        boolean lidOn) {
    /** Checks the mass. */
    public ThermalPan {
        ArgumentChecks.positive("pan mass", massKilograms, "kg");
    }

    /** A pan with the same finish on every face. */
    public static ThermalPan of(Pan pan, PanMaterial material, double massKilograms, boolean lidOn) {
        SurfaceOptics optics = SurfaceOptics.of(pan.finish());
        return new ThermalPan(pan, material, massKilograms, optics, optics, optics, optics, lidOn);
    }

    /** Area of the underside, of the lid and, nearly, of the water, m². */
    public double levelArea() {
        return Math.PI * pan.radiusMetres() * pan.radiusMetres();
    }

    /** Heat capacity of the empty pan, J/K. */
    public double heatCapacity() {
        return massKilograms * material.specificHeat();
    }

    /** Water that fills it to the brim, kg: its outer volume, so slightly too much. */
    public double brimfulKilograms() {
        return levelArea() * pan.heightMetres() * PhysicalConstants.WATER_DENSITY;
    }

    /** Height of the water line above the underside, m, at most the pan's height. */
    public double waterLineMetres(double waterKilograms) {
        return Math.min(pan.heightMetres(), waterKilograms / (levelArea() * PhysicalConstants.WATER_DENSITY));
    }

    /** Thickness of underside, wall and lid as if all of the mass were spread evenly over them, m. */
    public double sheetThickness() {
        double level = levelArea() * (lidOn ? 2 : 1);
        double wall = 2 * Math.PI * pan.radiusMetres() * pan.heightMetres();
        return massKilograms / (material.density() * (level + wall));
    }
}
