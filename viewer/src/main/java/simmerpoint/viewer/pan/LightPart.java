package simmerpoint.viewer.pan;

import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import simmerpoint.viewer.canvas.FxMetrics;

/** Map, wall and words below each other; the map takes what the others leave. */
final class LightPart extends Region {
    private static final double GAP = 4;
    private static final double MOST_FOR_WALL = 0.34;
    private static final double WALL_LEAST = 60;

    private final PlaneView plane;
    private final WallView wall;
    private final Label evenness;
    private final Label readout;
    private java.util.Optional<MapState> state = java.util.Optional.empty();

    LightPart(PlaneView plane, WallView wall, Label evenness, Label readout) {
        this.plane = plane;
        this.wall = wall;
        this.evenness = evenness;
        this.readout = readout;
        setMinSize(0, 0);
        getChildren().addAll(plane, wall, readout, evenness);
    }

    void show(java.util.Optional<MapState> next) {
        state = next;
        plane.show(next);
        wall.show(next);
        wall.setVisible(next.flatMap(MapState::wall).isPresent());
        requestLayout();
    }

    @Override
    protected void layoutChildren() {
        double width = getWidth();
        double height = getHeight();
        double words = Math.max(evenness.prefHeight(width), readout.prefHeight(width));
        double drawn = height - words - GAP;
        double walled = state.flatMap(MapState::wallMap)
                .map(map -> map.height(width, FxMetrics::width))
                .orElse(0.0);
        walled = walled == 0 ? 0 : Math.max(WALL_LEAST, Math.min(walled, MOST_FOR_WALL * drawn));
        double map = Math.max(0, drawn - walled);
        plane.resizeRelocate(0, 0, width, map);
        wall.resizeRelocate(0, map, width, walled);
        readout.resizeRelocate(0, height - words, width, words);
        evenness.resizeRelocate(0, height - words, width, words);
    }
}
