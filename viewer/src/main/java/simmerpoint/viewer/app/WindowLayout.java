package simmerpoint.viewer.app;

import javafx.application.Platform;
import javafx.beans.property.BooleanProperty;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Orientation;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.SplitPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/**
 * Layout of the window: the answer at the top; below it the yard, two thirds wide, and the pan from below; on the left a
 * drawer with the editor; at the bottom a second design, if there is one, and the status bar. In a narrow window yard and pan
 * are stacked; if a second design leaves too little height for both, the pan is hidden, since the second design shows the same
 * light.
 */
public final class WindowLayout extends BorderPane {
    /** The narrowest window in which nothing is cut off, px. */
    public static final double LEAST_WIDTH = 1024;

    /** The lowest window in which nothing is cut off, px. */
    public static final double LEAST_HEIGHT = 700;

    private static final double YARD_SHARE = 0.64;
    private static final double YARD_SHARE_STACKED = 0.54;
    private static final double STACKED_BELOW = 820;
    private static final double WORK_SHARE = 0.58;
    private static final double LOW = 330;

    /** What the line over the map needs, px. */
    private static final double PAN_LEAST = 350;

    private final StackPane yard = slot("yard", "The yard: sun, dish and pan to scale");
    private final StackPane pan = slot("pan", "The pan from below");
    private final StackPane beside = slot("beside", "Two designs side by side");
    private final VBox head = new VBox();
    private final SplitPane work = new SplitPane();
    private final SplitPane stack = new SplitPane(work);
    private final Drawer drawer = new Drawer();

    /** With nothing in it. */
    public WindowLayout() {
        getStyleClass().add("workbench");
        pan.setMinWidth(PAN_LEAST);
        stack.setOrientation(Orientation.VERTICAL);
        HBox.setHgrow(stack, Priority.ALWAYS);
        setTop(head);
        setCenter(new HBox(drawer, stack));
        work.widthProperty().addListener((value, before, now) -> turn(now.doubleValue()));
        work.heightProperty().addListener((value, before, now) -> giveWay());
        // The drawer takes its width from both parts, and not from the yard alone.
        drawer.openProperty().addListener((value, before, now) -> Platform.runLater(this::share));
        turn(LEAST_WIDTH);
    }

    private static StackPane slot(String name, String meaning) {
        StackPane slot = new StackPane();
        slot.getStyleClass().addAll("slot", name + "-slot");
        slot.setId(name + "-slot");
        slot.setAccessibleRole(AccessibleRole.PARENT);
        slot.setAccessibleText(meaning);
        slot.setMinSize(0, 0);
        return slot;
    }

    private void turn(double width) {
        Orientation wanted = width < STACKED_BELOW ? Orientation.VERTICAL : Orientation.HORIZONTAL;
        if (wanted != work.getOrientation() || work.getDividers().isEmpty()) {
            work.setOrientation(wanted);
            share();
        }
        giveWay();
    }

    private void giveWay() {
        boolean stacked = work.getOrientation() == Orientation.VERTICAL;
        boolean low = stacked && stack.getItems().contains(beside) && work.getHeight() < LOW;
        if (low) {
            work.getItems().remove(pan);
        } else if (!pan.getChildren().isEmpty() && !work.getItems().contains(pan)) {
            work.getItems().add(pan);
            share();
        }
    }

    private void share() {
        work.setDividerPositions(work.getOrientation() == Orientation.VERTICAL ? YARD_SHARE_STACKED : YARD_SHARE);
    }

    private void fill(StackPane slot, int place, Node content) {
        slot.getChildren().setAll(content);
        if (!work.getItems().contains(slot)) {
            work.getItems().add(Math.min(place, work.getItems().size()), slot);
            share();
        }
    }

    /** Nodes at the top, from top to bottom. */
    public void setHead(Node... lines) {
        head.getChildren().setAll(lines);
    }

    /** The bar at the bottom. */
    public void setStatusBar(Node bar) {
        setBottom(bar);
    }

    /** The drawing of sun, dish and pan. */
    public void setYard(Node content) {
        fill(yard, 0, content);
    }

    /** The pan from below and what belongs to it. */
    public void setPan(Node content) {
        fill(pan, 1, content);
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

    /** The second design; null takes it away. */
    public void setBeside(Node content) {
        if (content == null) {
            stack.getItems().remove(beside);
            beside.getChildren().clear();
        } else {
            beside.getChildren().setAll(content);
            if (!stack.getItems().contains(beside)) {
                stack.getItems().add(beside);
                stack.setDividerPositions(WORK_SHARE);
            }
        }
    }
}
