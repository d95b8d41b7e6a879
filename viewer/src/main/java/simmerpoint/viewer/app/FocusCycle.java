package simmerpoint.viewer.app;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;

/** Moves the keyboard focus through the parts of the window in a cycle. */
final class FocusCycle {
    private FocusCycle() {}

    /** Moves the focus to the part after the current one; {@code parts} are ids of nodes, in order. */
    static void next(Scene scene, List<String> parts) {
        int here = -1;
        for (Node node = scene.getFocusOwner(); node != null && here < 0; node = node.getParent()) {
            here = node.getId() == null ? -1 : parts.indexOf(node.getId());
        }
        for (int step = 1; step <= parts.size(); step++) {
            Node part = scene.lookup("#" + parts.get((here + step) % parts.size()));
            if (part != null && enter(part)) {
                return;
            }
        }
    }

    private static boolean enter(Node node) {
        if (!node.isVisible() || node.isDisabled()) {
            return false;
        }
        if (node.isFocusTraversable()) {
            node.requestFocus();
            return true;
        }
        return node instanceof Parent parent
                && parent.getChildrenUnmodifiable().stream().anyMatch(FocusCycle::enter);
    }
}
