package simmerpoint.viewer.app;

import javafx.geometry.Orientation;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.SplitPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/**
 * Where the parts of the window stand: the answer across the top; under it the yard, two thirds wide, and the pan from
 * below; at the left edge a drawer with everything that can be changed; at the foot, when there is one, a second design
 * beside the first. A part that is not there takes no room.
 */
public final class Workbench extends BorderPane {
    /** The narrowest window in which nothing is cut off, px. */
    public static final double LEAST_WIDTH = 1024;

    /** The lowest window in which nothing is cut off, px. */
    public static final double LEAST_HEIGHT = 700;

    private static final double YARD_SHARE = 0.64;

    private final StackPane yard = slot("yard", "The yard: sun, dish and pan to scale");
    private final StackPane pan = slot("pan", "The pan from below");
    private final StackPane editor = slot("editor", "Everything that can be changed");
    private final StackPane beside = slot("beside", "Two designs side by side");
    private final VBox head = new VBox();
    private final SplitPane work = new SplitPane(yard, pan);

    /** With nothing in it. */
    public Workbench() {
        getStyleClass().add("workbench");
        work.setOrientation(Orientation.HORIZONTAL);
        work.setDividerPositions(YARD_SHARE);
        SplitPane.setResizableWithParent(yard, true);
        VBox.setVgrow(work, Priority.ALWAYS);
        setTop(head);
        setLeft(editor);
        setCenter(new VBox(work, beside));
    }

    private static StackPane slot(String name, String meaning) {
        StackPane slot = new StackPane();
        slot.getStyleClass().addAll("slot", name + "-slot");
        slot.setId(name + "-slot");
        slot.setAccessibleRole(AccessibleRole.PARENT);
        slot.setAccessibleText(meaning);
        slot.setMinSize(0, 0);
        slot.setManaged(false);
        slot.setVisible(false);
        return slot;
    }

    private static void fill(StackPane slot, Node content) {
        slot.getChildren().setAll(content);
        slot.setManaged(true);
        slot.setVisible(true);
    }

    /** Lines across the top, from above. */
    public void setHead(Node... lines) {
        head.getChildren().setAll(lines);
    }

    /** The drawing of sun, dish and pan. */
    public void setYard(Node content) {
        fill(yard, content);
    }

    /** The pan from below and what belongs to it. */
    public void setPan(Node content) {
        fill(pan, content);
    }

    /** What stands in the drawer. */
    public void setEditor(Node content) {
        fill(editor, content);
    }

    /** The second design; null takes it away. */
    public void setBeside(Node content) {
        if (content == null) {
            beside.getChildren().clear();
            beside.setManaged(false);
            beside.setVisible(false);
        } else {
            fill(beside, content);
        }
    }
}
