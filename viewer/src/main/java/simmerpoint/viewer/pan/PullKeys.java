package simmerpoint.viewer.pan;

import javafx.scene.Node;
import javafx.scene.input.KeyEvent;

/** Keys that move the pan: arrows a little, with Shift farther, Home and End to the ends. A key held down is one step to undo. */
final class PullKeys {
    private PullKeys() {}

    static void on(Node node, PullControl control) {
        node.addEventFilter(KeyEvent.KEY_PRESSED, e -> {
            if (moves(e)) {
                control.take();
                move(e, control);
                e.consume();
            }
        });
        node.addEventFilter(KeyEvent.KEY_RELEASED, e -> {
            if (moves(e)) {
                control.letGo();
                e.consume();
            }
        });
        node.focusedProperty().addListener((value, before, now) -> {
            if (!now) {
                control.letGo();
            }
        });
    }

    /** Whether a key is meant for the pan. */
    private static boolean moves(KeyEvent e) {
        return switch (e.getCode()) {
            case LEFT, RIGHT, UP, DOWN, HOME, END -> !e.isShortcutDown() && !e.isAltDown();
            default -> false;
        };
    }

    private static void move(KeyEvent e, PullControl control) {
        switch (e.getCode()) {
            case LEFT, DOWN -> control.step(-1, e.isShiftDown());
            case RIGHT, UP -> control.step(1, e.isShiftDown());
            case HOME -> control.pullTo(control.stateProperty().get().lowMetres());
            case END -> control.pullTo(control.stateProperty().get().highMetres());
            default -> throw new IllegalArgumentException("no key of the pan: " + e.getCode());
        }
    }
}
