package simmerpoint.viewer.pan;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.input.MouseEvent;

/** The pan taken hold of with the mouse on a drawing of its way: dragged where it stands, or set down where it is pressed. */
final class PullDrag {
    /** How places lie on a drawing. Coordinates are those of the node, px. */
    interface Way {
        /** Whether the mouse is on the pan. */
        boolean onPan(MouseEvent e);

        /** Whether the mouse is where the pan can be set down. */
        boolean inside(MouseEvent e);

        /** The pull-back at a place, m. */
        double pullBack(double x);

        /** Where the pan is drawn, px. */
        double pan();
    }

    private final Node node;
    private final PullControl control;
    private final Consumer<Optional<Double>> pointing;
    private final Supplier<Optional<? extends Way>> way;
    private double grip;
    private boolean dragging;

    private PullDrag(
            Node node,
            PullControl control,
            Consumer<Optional<Double>> pointing,
            Supplier<Optional<? extends Way>> way) {
        this.node = node;
        this.control = control;
        this.pointing = pointing;
        this.way = way;
    }

    /** Lets the pan be dragged on {@code node}; {@code pointing} is told that nothing is pointed at while it is. */
    static void on(
            Node node,
            PullControl control,
            Consumer<Optional<Double>> pointing,
            Supplier<Optional<? extends Way>> way) {
        PullDrag drag = new PullDrag(node, control, pointing, way);
        node.addEventHandler(MouseEvent.MOUSE_EXITED, e -> pointing.accept(Optional.empty()));
        node.addEventHandler(MouseEvent.MOUSE_PRESSED, drag::pressed);
        node.addEventHandler(MouseEvent.MOUSE_DRAGGED, drag::dragged);
        node.addEventHandler(MouseEvent.MOUSE_RELEASED, e -> drag.released());
        PullKeys.on(node, control);
    }

    private void pressed(MouseEvent e) {
        node.requestFocus();
        way.get().filter(w -> w.onPan(e) || w.inside(e)).ifPresent(w -> {
            boolean held = w.onPan(e);
            dragging = true;
            grip = held ? e.getX() - w.pan() : 0;
            pointing.accept(Optional.empty());
            control.take();
            if (!held) {
                control.pullTo(w.pullBack(e.getX()));
            }
        });
    }

    private void dragged(MouseEvent e) {
        if (dragging) {
            way.get().ifPresent(w -> control.pullTo(w.pullBack(e.getX() - grip)));
        }
    }

    private void released() {
        if (dragging) {
            dragging = false;
            control.letGo();
        }
    }
}
