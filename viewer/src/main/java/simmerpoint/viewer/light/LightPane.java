package simmerpoint.viewer.light;

import javafx.beans.property.BooleanProperty;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import simmerpoint.pan.Pan;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.theme.Theme;

/** The light around the cooker, what is chosen about it, and in words what it does to the person in it. */
public final class LightPane extends VBox {
    private final Label words = new Label();

    /** Of light that was found. */
    public LightPane(LightFound found, LightChoice choice, UnitSystem units, Theme theme) {
        super(8);
        words.setId("burns-person");
        words.setWrapText(true);
        // Always two lines, so that the picture stays where it is.
        words.getStyleClass().add("two-lines");
        HBox row = new HBox(
                6, toggle("burns-shown", "Light", "Show the light, or the cooker alone", choice.onPageProperty()));
        row.setAlignment(Pos.CENTER_LEFT);
        if (found.scenario().target() instanceof Pan) {
            row.getChildren()
                    .add(toggle(
                            "burns-taken",
                            "Pan taken away",
                            "The light with the pan taken away, or with the pan in place",
                            choice.panTakenProperty()));
        }
        LightView view = new LightView(found, choice, units, theme, state -> words.setText(state.words(units)));
        getChildren().addAll(row, words, view);
    }

    /** A button that follows a choice as long as it is seen. */
    public static ToggleButton toggle(String id, String text, String meaning, BooleanProperty chosen) {
        ToggleButton button = new ToggleButton(text);
        button.setId(id);
        button.setTooltip(new Tooltip(meaning));
        button.setAccessibleText(meaning);
        button.setMinWidth(Region.USE_PREF_SIZE);
        // Bound weakly by JavaFX, so that the choice keeps no button alive.
        button.selectedProperty().bindBidirectional(chosen);
        return button;
    }
}
