package simmerpoint.viewer.pan;

import java.util.Optional;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.map.MapFrame;
import simmerpoint.drawing.map.Place;
import simmerpoint.drawing.map.WallMap;

/** The light on the pan's wall, to be read; empty for a bare disc. */
final class WallView extends MapView {
    WallView(String id) {
        super(id, "The pan\u2019s wall, unrolled, from outside");
    }

    @Override
    Optional<WallMap> drawing(MapState shown) {
        return shown.wallMap();
    }

    @Override
    Optional<MapFrame> frame(MapState shown, Box box) {
        return shown.wallMap().map(wall -> wall.frame(box));
    }

    @Override
    String words(MapState shown, Place place) {
        return shown.wall()
                .map(wall -> new MapReadout(shown.result(), shown.units()).wall(wall, place))
                .orElse("");
    }

    @Override
    String summary(MapState shown) {
        return shown.wallMap().map(wall -> wall.colours() + ".").orElse("");
    }
}
