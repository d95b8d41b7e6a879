package simmerpoint.viewer.pan;

import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.AccessibleRole;
import javafx.scene.Cursor;
import javafx.scene.input.MouseEvent;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.chart.LevelRibbon;
import simmerpoint.drawing.chart.Scale;
import simmerpoint.viewer.canvas.Drawn;
import simmerpoint.viewer.canvas.FxCanvas;

/**
 * The pan's places along its way as one ribbon of heat levels. The pan on it is dragged, set down by a click, or moved with
 * the arrow keys (with Shift farther).
 */
final class PlaceRibbon extends Drawn {
    private static final double NEAR = 14;

    private final PullControl control;
    private final Consumer<Optional<Double>> pointing;
    private Optional<RibbonState> state = Optional.empty();
    private double grip;
    private boolean dragging;

    /** Calls {@code pointing} with the place the mouse is at. */
    PlaceRibbon(String id, PullControl control, Consumer<Optional<Double>> pointing) {
        super(id);
        this.control = control;
        this.pointing = pointing;
        setAccessibleRole(AccessibleRole.SLIDER);
        addEventHandler(MouseEvent.MOUSE_MOVED, this::moved);
        addEventHandler(MouseEvent.MOUSE_EXITED, e -> pointing.accept(Optional.empty()));
        addEventHandler(MouseEvent.MOUSE_PRESSED, this::pressed);
        addEventHandler(MouseEvent.MOUSE_DRAGGED, this::dragged);
        addEventHandler(MouseEvent.MOUSE_RELEASED, e -> released());
        PullKeys.on(this, control);
    }

    void show(RibbonState next) {
        state = Optional.of(next);
        setAccessibleText(
                "Place of the pan: " + control.words().shown(next.pull().presentMetres()) + ". " + next.sentence()
                        + " Arrow keys move the pan.");
        redraw();
    }

    /** Where places lie from left to right, px; empty before the first. */
    Optional<Scale> scale() {
        return state.map(s -> s.drawing().scale(box()))
                .map(s -> new Scale(s.first(), s.last(), zoom() * s.from(), zoom() * s.to()));
    }

    private double present() {
        return state.orElseThrow().pull().presentMetres();
    }

    private boolean onPan(MouseEvent e, Scale scale) {
        return Math.abs(e.getX() - scale.at(present())) <= NEAR * zoom();
    }

    private static boolean inside(MouseEvent e, Scale scale) {
        return e.getX() >= scale.from() && e.getX() <= scale.to();
    }

    private void moved(MouseEvent e) {
        scale().ifPresent(s -> {
            setCursor(onPan(e, s) ? Cursor.H_RESIZE : Cursor.DEFAULT);
            pointing.accept(onPan(e, s) || !inside(e, s) ? Optional.empty() : Optional.of(s.figure(e.getX())));
        });
    }

    private void pressed(MouseEvent e) {
        requestFocus();
        scale().filter(s -> onPan(e, s) || inside(e, s)).ifPresent(s -> {
            dragging = true;
            grip = onPan(e, s) ? e.getX() - s.at(present()) : 0;
            boolean sets = !onPan(e, s);
            pointing.accept(Optional.empty());
            control.take();
            if (sets) {
                control.pullTo(s.figure(e.getX()));
            }
        });
    }

    private void dragged(MouseEvent e) {
        if (dragging) {
            scale().ifPresent(s -> control.pullTo(s.figure(e.getX() - grip)));
        }
    }

    private void released() {
        if (dragging) {
            dragging = false;
            control.letGo();
        }
    }

    @Override
    protected double computePrefHeight(double width) {
        return zoom() * LevelRibbon.HEIGHT;
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width);
    }

    @Override
    protected void paint(FxCanvas canvas, Box box) {
        state.ifPresent(s -> s.drawing().draw(canvas, box));
    }
}
