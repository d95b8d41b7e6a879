package simmerpoint.viewer.pan;

import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.scene.layout.StackPane;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.theme.Theme;

/** The light on underside or disc of one result, to be read, on a scale that is given: for whoever shows several. */
public final class LightMap extends StackPane {
    private final PlaneView view;

    /** An empty one; {@code meaning} says which of several it is. */
    public LightMap(String id, String meaning) {
        view = new PlaneView(id, meaning);
        setMinSize(0, 0);
        getChildren().add(view);
    }

    /**
     * Shows a result.
     *
     * @param result whose light
     * @param earlier whether it is that of an earlier scenario
     * @param top flux at the upper end of the colours, W/m²
     * @param units of lengths
     */
    public void show(TraceResult result, boolean earlier, double top, UnitSystem units) {
        view.show(Optional.of(new MapState(result, earlier, top, ScaleChoice.FOLLOWS, units, false, Optional.empty())));
    }

    /** Changes the colours around the map. */
    public void applyTheme(Theme theme) {
        view.applyTheme(theme);
    }

    /** What is said of the place that is read; empty if none is. */
    public ReadOnlyObjectProperty<String> readoutProperty() {
        return view.readoutProperty();
    }
}
