package simmerpoint.viewer.comparison;

import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.text.TextAlignment;

/**
 * A map on either side, words between them; the maps are equally large and take as much width as their height can use and the
 * words can spare.
 */
final class MapsBesideText extends Region {
    private static final double GAP = 12;
    private static final double SCALE_ROOM = 24;
    private static final double MOST_FOR_A_MAP = 0.32;
    private static final double LEAST_FOR_A_MAP = 150;
    private static final double LEAST_FOR_WORDS = 290;

    private final Label leftHead;
    private final Node left;
    private final Node middle;
    private final Label rightHead;
    private final Node right;

    MapsBesideText(Label leftHead, Node left, Node middle, Label rightHead, Node right) {
        this.leftHead = centred(leftHead);
        this.left = left;
        this.middle = middle;
        this.rightHead = centred(rightHead);
        this.right = right;
        setMinSize(0, 0);
        getChildren().addAll(leftHead, left, middle, rightHead, right);
    }

    private static Label centred(Label head) {
        head.setAlignment(Pos.BOTTOM_CENTER);
        head.setTextAlignment(TextAlignment.CENTER);
        return head;
    }

    @Override
    protected void layoutChildren() {
        double width = getWidth();
        double height = getHeight();
        double wanted = Math.min(MOST_FOR_A_MAP * width, height + SCALE_ROOM);
        double spared = Math.max(LEAST_FOR_A_MAP, (width - LEAST_FOR_WORDS) / 2 - GAP);
        double map = Math.floor(Math.min(wanted, spared));
        double head = Math.ceil(Math.max(leftHead.prefHeight(map), rightHead.prefHeight(map)));
        leftHead.resizeRelocate(0, 0, map, head);
        left.resizeRelocate(0, head, map, Math.max(0, height - head));
        rightHead.resizeRelocate(width - map, 0, map, head);
        right.resizeRelocate(width - map, head, map, Math.max(0, height - head));
        middle.resizeRelocate(map + GAP, 0, Math.max(0, width - 2 * (map + GAP)), height);
    }
}
