package simmerpoint.viewer.pan;

import java.util.Optional;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.target.FluxMap;
import simmerpoint.units.UnitSystem;

/**
 * What is seen on a drawing of a flux map.
 *
 * @param result whose maps
 * @param earlier whether they are those of an earlier scenario
 * @param top flux at the upper end of the colours, W/m²
 * @param choice whether that follows the light
 * @param units of lengths
 * @param key whether marks are explained beside the map, where there is room
 * @param reading the place that is read; empty if none
 */
record MapState(
        TraceResult result,
        boolean earlier,
        double top,
        ScaleChoice choice,
        UnitSystem units,
        boolean key,
        Optional<Place> reading) {
    /** The light in the plane of underside or disc. */
    FluxMap plane() {
        return result.maps().crossing();
    }

    MapState read(Optional<Place> place) {
        return new MapState(result, earlier, top, choice, units, key, place);
    }
}
