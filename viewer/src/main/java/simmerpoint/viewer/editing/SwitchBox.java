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
        model.onChange(KeyState::shown, this::follow);
        follow();
    }

    private void follow() {
        KeyState state = model.state();
        String holds = state.shown().isEmpty() ? state.otherwise() : state.shown();
        setSelected(ON.contains(holds.strip().toLowerCase(Locale.ROOT)));
        setText(isSelected() ? "on" : "off");
    }
}
