package simmerpoint.viewer.pan;

import java.util.Optional;
import simmerpoint.report.Scales;
import simmerpoint.target.FluxMap;

/** The light on the pan's wall, to be read; empty for a bare disc. */
final class WallView extends MapView {
    WallView(String id) {
        super(id, "The pan\u2019s wall, unrolled, from outside");
    }

    /** The wall of what is shown. */
    static Optional<FluxMap> wall(MapState shown) {
        return Scales.wall(shown.result());
    }

    @Override
    MapFrame frame(MapState shown, double width, double height) {
        return WallDrawing.frame(wall(shown).orElseGet(shown::plane), width, height);
    }

    @Override
    String words(MapState shown, Place place) {
        return wall(shown)
                .map(wall -> new MapReadout(shown.result(), shown.units()).wall(wall, place))
                .orElse("");
    }

    @Override
    String summary(MapState shown) {
        return wall(shown).map(wall -> WallDrawing.colours(shown, wall) + ".").orElse("");
    }

    @Override
    void paint(Pen pen, MapState shown, double width, double height) {
        wall(shown).ifPresent(wall -> WallDrawing.paint(pen, shown, wall, width, height));
    }
}
