package simmerpoint.viewer.yard;

import javafx.scene.AccessibleRole;
import javafx.scene.Cursor;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;

/** A handle as something to take hold of: by mouse, or by Tab and arrow keys. */
final class Grip extends StackPane {
    /** Width and height of what can be hit, px. */
    static final double SIZE = 30;

    private final Handle handle;
    private final Region arrow = new Region();

    Grip(Handle handle) {
        this.handle = handle;
        setId(handle.id());
        getStyleClass().addAll("yard-grip", handle == Handle.SUN ? "yard-sun" : "yard-arrow");
        arrow.getStyleClass().add(handle == Handle.TURN || handle == Handle.SUN ? "grip-bent-sign" : "grip-sign");
        arrow.setMouseTransparent(true);
        getChildren().add(arrow);
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.SLIDER);
        setMinSize(SIZE, SIZE);
        setPrefSize(SIZE, SIZE);
        setMaxSize(SIZE, SIZE);
        setCursor(
                switch (handle) {
                    case RAISE -> Cursor.V_RESIZE;
                    case SLIDE -> Cursor.H_RESIZE;
                    case PULL_BACK -> Cursor.NE_RESIZE;
                    case TURN, SUN -> Cursor.HAND;
                });
        Tooltip.install(this, new Tooltip(handle.title() + ": " + handle.meaning() + "."));
    }

    Handle handle() {
        return handle;
    }

    /** Turns its arrow the way it moves, degrees clockwise from level. */
    void point(double degrees) {
        arrow.setRotate(degrees);
    }

    /** What it stands at, for whoever listens instead of looking. */
    void tell(String words) {
        setAccessibleText(words + ". " + handle.meaning() + ". Arrow keys move it, Shift moves it farther.");
    }
}
