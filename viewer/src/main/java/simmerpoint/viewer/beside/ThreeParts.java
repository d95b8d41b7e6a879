package simmerpoint.viewer.beside;

import javafx.scene.Node;
import javafx.scene.layout.Region;

/** A map on either side, words between them; the maps take as much width as their height can use. */
final class ThreeParts extends Region {
    private static final double GAP = 12;
    private static final double SCALE_ROOM = 24;
    private static final double MOST_FOR_A_MAP = 0.32;

    private final Node left;
    private final Node middle;
    private final Node right;

    ThreeParts(Node left, Node middle, Node right) {
        this.left = left;
        this.middle = middle;
        this.right = right;
        setMinSize(0, 0);
        getChildren().addAll(left, middle, right);
    }

    @Override
    protected void layoutChildren() {
        double width = getWidth();
        double height = getHeight();
        double map = Math.floor(Math.min(MOST_FOR_A_MAP * width, height + SCALE_ROOM));
        left.resizeRelocate(0, 0, map, height);
        right.resizeRelocate(width - map, 0, map, height);
        middle.resizeRelocate(map + GAP, 0, Math.max(0, width - 2 * (map + GAP)), height);
    }
}
