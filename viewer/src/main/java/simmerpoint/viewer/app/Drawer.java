package simmerpoint.viewer.app;

import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.value.ObservableValue;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import simmerpoint.viewer.theme.Zoom;

/** The drawer at the left edge: a grip that is always there, and beside it, pulled open, what lies in the drawer. */
final class Drawer extends HBox {
    private static final double WIDTH = 380;
    // The words stand on their side, so that these arrows point to the right and to the left.
    private static final String SHUT = "Change the design  \u25be";
    private static final String OPEN = "Put this away  \u25b4";

    private final BooleanProperty open = new SimpleBooleanProperty(this, "open", false);
    private final StackPane inside = new StackPane();
    private final ToggleButton grip = new ToggleButton();
    private final Label word = new Label();
    private ObservableValue<Integer> wrongCount;

    Drawer() {
        getStyleClass().add("drawer");
        inside.getStyleClass().add("slot");
        inside.setId("editor-slot");
        Zoom.follow(this, zoom -> {
            inside.setPrefWidth(zoom * WIDTH);
            inside.setMinWidth(zoom * WIDTH);
            inside.setMaxWidth(zoom * WIDTH);
        });
        word.setRotate(-90);
        grip.setGraphic(new Group(word));
        grip.setContentDisplay(ContentDisplay.GRAPHIC_ONLY);
        grip.getStyleClass().add("drawer-grip");
        grip.setId("drawer-grip");
        grip.setMaxHeight(Double.MAX_VALUE);
        grip.setTooltip(new Tooltip("Everything that can be changed (F2)"));
        grip.selectedProperty().bindBidirectional(open);
        VBox.setVgrow(grip, Priority.ALWAYS);
        VBox edge = new VBox(grip);
        edge.getStyleClass().add("drawer-edge");
        getChildren().setAll(edge);
        open.addListener((value, before, now) -> show());
        show();
    }

    BooleanProperty openProperty() {
        return open;
    }

    void setContent(Node content) {
        inside.getChildren().setAll(content);
    }

    void setWrongCount(ObservableValue<Integer> count) {
        wrongCount = count;
        count.addListener((value, before, now) -> show());
        show();
    }

    private void show() {
        if (open.get() && getChildren().size() == 1) {
            getChildren().add(inside);
        } else if (!open.get()) {
            getChildren().remove(inside);
        }
        int wrong = wrongCount == null || wrongCount.getValue() == null ? 0 : wrongCount.getValue();
        String mark = wrong == 0 ? "" : "   \u26a0 " + wrong + (wrong == 1 ? " value is wrong" : " values are wrong");
        word.setText((open.get() ? OPEN : SHUT) + mark);
        grip.setAccessibleText(
                (open.get() ? "Put the drawer away." : "Pull the drawer open: change the design.") + mark);
    }
}
