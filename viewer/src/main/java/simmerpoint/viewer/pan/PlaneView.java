package simmerpoint.viewer.pan;

import simmerpoint.answer.Figures;

/** The light on underside or disc, to be read. */
final class PlaneView extends MapView {
    PlaneView(String id, String meaning) {
        super(id, meaning);
    }

    @Override
    MapFrame frame(MapState shown, double width, double height) {
        return PlaneDrawing.frame(shown, width, height);
    }

    @Override
    String words(MapState shown, Place place) {
        return new MapReadout(shown.result(), shown.units()).plane(place);
    }

    @Override
    String summary(MapState shown) {
        Figures figures = new Figures(shown.units());
        return "Hottest spot " + figures.flux(shown.result().spot().peakFlux()) + ". "
                + new MapReadout(shown.result(), shown.units()).evenness() + " Arrow keys read it place by place.";
    }

    @Override
    void paint(Pen pen, MapState shown, double width, double height) {
        PlaneDrawing.paint(pen, shown, width, height);
    }
}
