package simmerpoint.heat.plate;

import simmerpoint.heat.Surroundings;
import simmerpoint.pan.Pan;

/**
 * What the inside of a pan gives off by temperature.
 *
 * @param bottom of the bottom
 * @param wetWall of the wall below the line
 * @param dryWall of the wall above it
 * @param lineMetres height of the line
 */
record InsideLosses(FluxCurve bottom, FluxCurve wetWall, FluxCurve dryWall, double lineMetres) {
    /** With those contents. Above the line of a lidded pan there is steam, which takes nothing. */
    static InsideLosses of(SheetContents contents, Pan pan, Surroundings around) {
        if (contents instanceof SheetContents.Water water) {
            FluxCurve wet = WaterContact.curve(water.celsius(), around.boilingCelsius());
            return new InsideLosses(wet, wet, FluxCurve.none(), water.lineMetres());
        }
        if (contents instanceof SheetContents.Still still) {
            FluxCurve wet = WaterContact.curve(still.celsius(), around.boilingCelsius());
            FluxCurve layer = FluxCurve.linear(1 / still.resistance(), still.celsius());
            return new InsideLosses(layer, wet, FluxCurve.none(), still.lineMetres());
        }
        if (contents instanceof SheetContents.Oil oil) {
            FluxCurve wet = CookingOil.contact(oil.celsius());
            return new InsideLosses(wet, wet, FluxCurve.none(), oil.lineMetres());
        }
        DryInside dry = new DryInside(pan, around, 1);
        FluxCurve wall = FluxCurve.ofAir(dry::wall);
        return new InsideLosses(FluxCurve.ofAir(dry::bottom), wall, wall, 0);
    }
}
