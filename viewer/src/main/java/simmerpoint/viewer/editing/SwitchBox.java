package simmerpoint.viewer.editing;

import java.util.Locale;
import java.util.Set;
import javafx.scene.control.CheckBox;

/** A key that is on or off. */
final class SwitchBox extends CheckBox {
    private static final Set<String> ON = Set.of("on", "yes", "true");

    private final KeyModel model;

    SwitchBox(KeyModel model) {
        this.model = model;
        setId("key-" + model.key().path());
        setOnAction(e -> model.enter(isSelected() ? "on" : "off"));
        model.shownProperty().addListener((value, before, now) -> follow());
        follow();
    }

    private void follow() {
        String shown = model.shownProperty().get();
        String holds = shown.isEmpty() ? model.otherwiseProperty().get() : shown;
        setSelected(ON.contains(holds.strip().toLowerCase(Locale.ROOT)));
        setText(isSelected() ? "on" : "off");
    }
}
