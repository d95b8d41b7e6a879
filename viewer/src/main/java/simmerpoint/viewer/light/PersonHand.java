package simmerpoint.viewer.light;

import java.util.Optional;
import javafx.scene.Cursor;
import javafx.scene.Node;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import simmerpoint.units.UnitSystem;

/**
 * Moves the person by mouse and keys on whatever shows it: dragged, or by the arrow keys, with Shift farther; Home puts it back to the
 * nearest safe place, Escape to where a drag began.
 */
public final class PersonHand {
    /** Where the person is seen. */
    public interface Ground {
        /** The place under the mouse, level from under the mount towards the sun, m. */
        double at(MouseEvent e);

        /** Whether the mouse is on the person. */
        boolean isOnPerson(MouseEvent e);

        /** Where the person stands, m. */
        double person();

        /** The leftmost and the rightmost place, m. */
        double[] walk();

        /** In which lengths it steps. */
        UnitSystem units();
    }

    private final Node node;
    private final LightChoice choice;
    private final Ground ground;
    private Optional<Double> grip = Optional.empty();
    private Optional<Double> before = Optional.empty();

    private PersonHand(Node node, LightChoice choice, Ground ground) {
        this.node = node;
        this.choice = choice;
        this.ground = ground;
    }

    /** Lets the person be moved on {@code node}. */
    public static void on(Node node, LightChoice choice, Ground ground) {
        PersonHand hand = new PersonHand(node, choice, ground);
        node.setOnMouseMoved(e -> node.setCursor(ground.isOnPerson(e) ? Cursor.OPEN_HAND : Cursor.DEFAULT));
        node.setOnMousePressed(hand::press);
        node.setOnMouseDragged(hand::drag);
        node.setOnMouseReleased(e -> hand.letGo());
        node.setOnKeyPressed(hand::key);
    }

    private void press(MouseEvent e) {
        node.requestFocus();
        if (e.getButton() == MouseButton.PRIMARY && ground.isOnPerson(e)) {
            grip = Optional.of(ground.at(e) - ground.person());
            before = choice.personProperty().get();
            node.setCursor(Cursor.CLOSED_HAND);
        }
        e.consume();
    }

    private void drag(MouseEvent e) {
        grip.ifPresent(off -> put(ground.at(e) - off));
        e.consume();
    }

    private void letGo() {
        grip = Optional.empty();
        node.setCursor(Cursor.OPEN_HAND);
    }

    private void put(double place) {
        double[] walk = ground.walk();
        choice.personProperty().set(Optional.of(Math.max(walk[0], Math.min(walk[1], place))));
    }

    private void key(KeyEvent e) {
        if (e.isShortcutDown() || e.isAltDown()) {
            return;
        }
        switch (e.getCode()) {
            case LEFT -> step(-1, e.isShiftDown());
            case RIGHT -> step(1, e.isShiftDown());
            case HOME -> choice.personProperty().set(Optional.empty());
            case ESCAPE -> {
                if (grip.isEmpty()) {
                    return;
                }
                letGo();
                choice.personProperty().set(before);
            }
            default -> {
                return;
            }
        }
        e.consume();
    }

    private void step(int way, boolean large) {
        put(ground.person() + way * PersonState.step(ground.units(), large));
    }
}
