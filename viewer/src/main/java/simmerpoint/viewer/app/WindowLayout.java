package simmerpoint.viewer.app;

import javafx.beans.property.BooleanProperty;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;

/**
 * Layout of the window: at the top the switch between the views and the answer; below it on the left a drawer in which the design
 * is changed, and beside it one view; at the bottom the status bar. A notice lies over the foot of the view and moves nothing. What
 * size anything gets depends on the size of the window alone.
 */
public final class WindowLayout extends BorderPane {
    private final StackPane place = new StackPane();
    private final HBox head = new HBox();
    private final Drawer drawer = new Drawer();

    /** With nothing in it. */
    public WindowLayout() {
        getStyleClass().add("workbench");
        head.getStyleClass().add("window-head");
        place.getStyleClass().add("view-place");
        place.setId("view-place");
        place.setAccessibleRole(AccessibleRole.PARENT);
        place.setMinSize(0, 0);
        HBox.setHgrow(place, Priority.ALWAYS);
        setTop(head);
        setCenter(new HBox(drawer, place));
    }

    /** The switch between the views, and the answer beside it. */
    public void setHead(Node views, Node answer) {
        HBox.setHgrow(answer, Priority.ALWAYS);
        head.getChildren().setAll(views, answer);
    }

    /** What is said now and then, at the foot of the views. */
    public void setNotice(Region notice) {
        StackPane over = new StackPane(place, notice);
        StackPane.setAlignment(notice, Pos.BOTTOM_CENTER);
        notice.setMaxHeight(Region.USE_PREF_SIZE);
        over.setMinSize(0, 0);
        HBox.setHgrow(over, Priority.ALWAYS);
        setCenter(new HBox(drawer, over));
    }

    /** The bar at the bottom. */
    public void setStatusBar(Node bar) {
        setBottom(bar);
    }

    /** The view that is seen. */
    public void setView(Node view) {
        place.getChildren().setAll(view);
    }

    /** What lies in the drawer. */
    public void setEditor(Node content) {
        drawer.setContent(content);
    }

    /** Whether the drawer is pulled open. */
    public BooleanProperty drawerOpenProperty() {
        return drawer.openProperty();
    }

    /** How many values in the drawer are wrong, so that a shut drawer tells. */
    public void setWrongCount(ObservableValue<Integer> count) {
        drawer.setWrongCount(count);
    }
}
