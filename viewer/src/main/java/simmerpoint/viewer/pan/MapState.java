package simmerpoint.viewer.pan;

import java.util.Optional;
import simmerpoint.drawing.map.LiveMap;
import simmerpoint.drawing.map.Place;
import simmerpoint.drawing.map.PlaneMap;
import simmerpoint.drawing.map.UnrolledWall;
import simmerpoint.drawing.map.WallMap;
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
    private LiveMap live() {
        return new LiveMap(earlier, key, reading);
    }

    /** The light on underside or disc. */
    PlaneMap planeMap() {
        return PlaneMap.live(result, units, top, live());
    }

    /** The pan's wall, unrolled; empty for a bare disc. */
    Optional<FluxMap> wall() {
        return UnrolledWall.of(result);
    }

    /** The light on it. */
    Optional<WallMap> wallMap() {
        double direct = result.scenario().sun().beamWattsPerSquareMetre();
        return wall().map(w -> WallMap.live(result, w, units, top, choice.ownTop(w, top, direct), live()));
    }

    MapState read(Optional<Place> place) {
        return new MapState(result, earlier, top, choice, units, key, place);
    }
}
