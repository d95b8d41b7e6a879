package simmerpoint.viewer.pan;

import java.util.Optional;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.map.MapFrame;
import simmerpoint.drawing.map.Place;
import simmerpoint.drawing.map.PlaneMap;

/** The light on underside or disc, to be read. */
final class PlaneView extends MapView {
    PlaneView(String id, String meaning) {
        super(id, meaning);
    }

    @Override
    Optional<PlaneMap> drawing(MapState shown) {
        return Optional.of(shown.planeMap());
    }

    @Override
    Optional<MapFrame> frame(MapState shown, Box box) {
        return Optional.of(shown.planeMap().frame(box));
    }

    @Override
    String words(MapState shown, Place place) {
        return new MapReadout(shown.result(), shown.units()).plane(place);
    }

    @Override
    String summary(MapState shown) {
        FigureFormat figures = new FigureFormat(shown.units());
        return "Hottest spot " + figures.flux(shown.result().spot().peakFlux()) + ". "
                + new MapReadout(shown.result(), shown.units()).evenness() + " Arrow keys read it place by place.";
    }
}
