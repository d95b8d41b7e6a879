package simmerpoint.viewer.light;

import java.util.Optional;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;

/** What is chosen about the light around the cooker; outlives whatever shows it. */
public final class LightChoice {
    private final BooleanProperty panTaken = new SimpleBooleanProperty(this, "panTaken", true);
    private final BooleanProperty onPage = new SimpleBooleanProperty(this, "onPage", true);
    private final BooleanProperty onYard = new SimpleBooleanProperty(this, "onYard", false);
    private final ObjectProperty<Optional<Double>> person =
            new SimpleObjectProperty<>(this, "person", Optional.empty());

    /** Whether the pan is taken away. */
    public BooleanProperty panTakenProperty() {
        return panTaken;
    }

    /** Whether the light is seen on the page of what it burns. */
    public BooleanProperty onPageProperty() {
        return onPage;
    }

    /** Whether the light is seen in the yard. */
    public BooleanProperty onYardProperty() {
        return onYard;
    }

    /** Where somebody has put the grown-up, level from under the mount towards the sun, m; empty: as near as is safe. */
    public ObjectProperty<Optional<Double>> personProperty() {
        return person;
    }
}
