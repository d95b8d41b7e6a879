package simmerpoint.viewer.app;

import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** Three buttons one above the other, one for each view; one of them always holds. */
final class ViewSwitch extends VBox {
    private final ObjectProperty<View> view = new SimpleObjectProperty<>(this, "view", View.COOK);

    ViewSwitch() {
        setId("view-switch");
        getStyleClass().add("view-switch");
        setMinWidth(Region.USE_PREF_SIZE);
        ToggleGroup group = new ToggleGroup();
        int number = 0;
        for (View each : View.values()) {
            number++;
            ToggleButton button = new ToggleButton(each.title());
            button.setId("view-" + each.word());
            button.setToggleGroup(group);
            button.setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
            button.setMinWidth(Region.USE_PREF_SIZE);
            button.setTooltip(new Tooltip(each.question() + " (Ctrl+" + number + ")"));
            button.setAccessibleText(each.title() + ": " + each.question());
            button.setSelected(each == view.get());
            VBox.setVgrow(button, Priority.ALWAYS);
            button.setOnAction(e -> button.setSelected(true));
            button.selectedProperty().addListener((value, before, now) -> {
                if (now) {
                    view.set(each);
                }
            });
            view.addListener((value, before, now) -> button.setSelected(now == each));
            getChildren().add(button);
        }
    }

    ObjectProperty<View> viewProperty() {
        return view;
    }
}
