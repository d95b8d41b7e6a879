package simmerpoint.viewer;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.text.Text;

/** Looks a window over. */
public final class Looking {
    private Looking() {}

    /** Everything under a node, itself included. */
    public static List<Node> all(Node root) {
        List<Node> found = new ArrayList<>();
        found.add(root);
        if (root instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(child -> found.addAll(all(child)));
        }
        return found;
    }

    /** Whether a node and everything around it is visible. */
    public static boolean seen(Node node) {
        return node == null || (node.isVisible() && seen(node.getParent()));
    }

    /**
     * Words that are shown cut short, or that reach out of the window. Whatever has been changed since the last pulse is laid out first:
     * until then a label still shows its former words.
     */
    public static List<String> cut(Parent root) {
        root.applyCss();
        root.layout();
        List<String> cut = new ArrayList<>();
        for (Node node : all(root)) {
            if (node instanceof Labeled labeled && seen(node) && shortened(labeled)) {
                cut.add(labeled.getText());
            } else if (node instanceof Text text
                    && seen(node)
                    && !text.getText().isEmpty()
                    && outside(root, text)) {
                cut.add("outside: " + text.getText());
            }
        }
        return cut;
    }

    private static boolean shortened(Labeled labeled) {
        String wanted = labeled.getText() == null ? "" : labeled.getText();
        return labeled.getChildrenUnmodifiable().stream()
                .filter(child -> child instanceof Text)
                .map(child -> ((Text) child).getText())
                .anyMatch(shown -> !shown.replaceAll("\\s", "").equals(wanted.replaceAll("\\s", "")));
    }

    private static boolean outside(Parent root, Text text) {
        Bounds bounds = root.sceneToLocal(text.localToScene(text.getLayoutBounds()));
        Bounds room = root.getLayoutBounds();
        boolean beside = bounds.getMinX() < room.getMinX() - 1 || bounds.getMaxX() > room.getMaxX() + 1;
        boolean above = bounds.getMinY() < room.getMinY() - 1 || bounds.getMaxY() > room.getMaxY() + 1;
        return beside || (above && !scrolls(text));
    }

    /** Whether it can be scrolled up and down into view. */
    private static boolean scrolls(Node node) {
        return node != null && (node instanceof ScrollPane || scrolls(node.getParent()));
    }
}
