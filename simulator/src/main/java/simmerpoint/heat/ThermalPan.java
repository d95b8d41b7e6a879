package simmerpoint.heat;

import java.util.Optional;
import simmerpoint.pan.Pan;

/**
 * A pan with its thermal properties: round, level, of one material but for an underside of its own.
 *
 * @param pan outer diameter and height
 * @param material of the sheet
 * @param massKilograms pan, handles and, if it is on, lid; above 0
 * @param underside optics of the underside
 * @param wetWall optics of the wall below the water line
 * @param dryWall optics of the wall above the water line
 * @param lid optics of the lid; not used if the lid is off
 * @param lidOn whether the lid is on
 * @param lidThrough share of the light taken up at the lid that goes through it to the inside: 0 for metal
 * @param ownPlate the sheet of the underside where it is not that of the rest
 * @param cover a second skin round it
 * @param openShare what its opening has of its level area: 1 for a pan, less for a kettle, whose shoulder counts as a lid
 */
public record ThermalPan(
        Pan pan,
        PanMaterial material,
        double massKilograms,
        SurfaceOptics underside,
        SurfaceOptics wetWall,
        SurfaceOptics dryWall,
        SurfaceOptics lid,
        boolean lidOn,
        double lidThrough,
        Optional<UndersidePlate> ownPlate,
        Optional<PanCover> cover,
        double openShare) {
    /** A pan as wide open as it is, without a second skin. */
    public ThermalPan(
            Pan pan,
            PanMaterial material,
            double massKilograms,
            SurfaceOptics underside,
            SurfaceOptics wetWall,
            SurfaceOptics dryWall,
            SurfaceOptics lid,
            boolean lidOn,
            double lidThrough,
            Optional<UndersidePlate> ownPlate) {
        this(
                pan,
                material,
                massKilograms,
                underside,
                wetWall,
                dryWall,
                lid,
                lidOn,
                lidThrough,
                ownPlate,
                Optional.empty(),
                1);
    }

    /** Checks the mass. */
    public ThermalPan {
        ArgumentChecks.positive("pan mass", massKilograms, "kg");
        ArgumentChecks.within("light through the lid", lidThrough, 0, 1, "of 1");
        ArgumentChecks.within("share of the top that is open", openShare, 0, 1, "of 1");
        double level = Math.PI * pan.radiusMetres() * pan.radiusMetres();
        double plate = ownPlate.map(p -> p.kilograms(level)).orElse(0.0);
        ArgumentChecks.positive("mass of the pan beside its underside", massKilograms - plate, "kg");
    }

    /** A pan with the same finish on every face. */
    public static ThermalPan of(Pan pan, PanMaterial material, double massKilograms, boolean lidOn) {
        SurfaceOptics optics = SurfaceOptics.of(pan.finish());
        return new ThermalPan(pan, material, massKilograms, optics, optics, optics, optics, lidOn, 0, Optional.empty());
    }

    /** The same with a second skin, and with an opening of that share. */
    public ThermalPan with(Optional<PanCover> skin, double opening) {
        return new ThermalPan(
                pan,
                material,
                massKilograms,
                underside,
                wetWall,
                dryWall,
                lid,
                lidOn,
                lidThrough,
                ownPlate,
                skin,
                opening);
    }

    /** Share of the light that its second skin lets through; 1 without one. */
    public double coverTransmittance() {
        return cover.map(PanCover::transmittance).orElse(1.0);
    }

    /** Area of the underside, of the lid and, nearly, of the water, m². */
    public double levelArea() {
        return Math.PI * pan.radiusMetres() * pan.radiusMetres();
    }

    /** Heat capacity of the empty pan, J/K. */
    public double heatCapacity() {
        double plate = ownPlate.map(p -> p.heatCapacity() * levelArea()).orElse(0.0);
        return restKilograms() * material.specificHeat() + plate;
    }

    /** Mass of all but an underside of its own, kg. */
    private double restKilograms() {
        return massKilograms - ownPlate.map(p -> p.kilograms(levelArea())).orElse(0.0);
    }

    /** The sheet of the underside. */
    public UndersidePlate plate() {
        return ownPlate.orElseGet(() -> new UndersidePlate(material, sheetThickness()));
    }

    /** Water that fills it to the brim, kg: its outer volume, so slightly too much. */
    public double brimfulKilograms() {
        return levelArea() * pan.heightMetres() * PhysicalConstants.WATER_DENSITY;
    }

    /** Height of the water line above the underside, m, at most the pan's height. */
    public double waterLineMetres(double waterKilograms) {
        return Math.min(pan.heightMetres(), waterKilograms / (levelArea() * PhysicalConstants.WATER_DENSITY));
    }

    /**
     * Thickness of wall, lid and underside as if their mass were spread evenly over them, m; an underside of its own is left
     * out.
     */
    public double sheetThickness() {
        int level = (lidOn ? 1 : 0) + (ownPlate.isPresent() ? 0 : 1);
        double wall = 2 * Math.PI * pan.radiusMetres() * pan.heightMetres();
        return restKilograms() / (material.density() * (level * levelArea() + wall));
    }
}
