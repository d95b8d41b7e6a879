package simmerpoint.viewer.app;

import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.theme.Theme;

/** Display settings: units and colours. */
public final class DisplaySettings {
    private final ObjectProperty<UnitSystem> units;
    private final ObjectProperty<Theme> theme;

    /** With initial values. */
    public DisplaySettings(UnitSystem units, Theme theme) {
        this.units = new SimpleObjectProperty<>(this, "units", units);
        this.theme = new SimpleObjectProperty<>(this, "theme", theme);
    }

    /** Metric or inch; never null. */
    public ObjectProperty<UnitSystem> unitsProperty() {
        return units;
    }

    /** Light or dark; never null. */
    public ObjectProperty<Theme> themeProperty() {
        return theme;
    }
}
