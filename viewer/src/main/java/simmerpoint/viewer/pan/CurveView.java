package simmerpoint.viewer.pan;

import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.AccessibleRole;
import javafx.scene.Cursor;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import simmerpoint.drawing.Box;
import simmerpoint.viewer.canvas.Drawn;
import simmerpoint.viewer.canvas.FxCanvas;

/**
 * The curves, in which the pan can be taken hold of: dragged, set down by a click, or moved with the arrow keys (with
 * Shift farther).
 */
final class CurveView extends Drawn {
    private final PullControl control;
    private final Consumer<Optional<Double>> pointing;
    private Optional<CurveState> state = Optional.empty();
    private double grip;
    private boolean dragging;

    /** Calls {@code pointing} with the place the mouse is at. */
    CurveView(String id, PullControl control, Consumer<Optional<Double>> pointing) {
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

    void show(CurveState next) {
        state = Optional.of(next);
        setAccessibleText("Watts over the pull-back. " + next.sentence() + " Arrow keys move the pan.");
        redraw();
    }

    /** Where the curves lie; empty before the first. */
    Optional<CurveFrame> frame() {
        return state.map(s -> CurveFrame.of(s.chart(), box().width(), box().height()));
    }

    private double x(MouseEvent e) {
        return e.getX() / zoom();
    }

    private boolean onMark(MouseEvent e) {
        return frame().filter(f -> f.hits(state.orElseThrow().pull().presentMetres(), x(e), e.getY() / zoom()))
                .isPresent();
    }

    private void moved(MouseEvent e) {
        setCursor(onMark(e) ? Cursor.H_RESIZE : Cursor.DEFAULT);
        pointing.accept(frame().filter(f -> f.inside(x(e), e.getY() / zoom())).map(f -> f.pullBack(x(e))));
    }

    private void pressed(MouseEvent e) {
        requestFocus();
        frame().filter(f -> f.inside(x(e), e.getY() / zoom()) || onMark(e)).ifPresent(f -> {
            dragging = true;
            grip = onMark(e) ? x(e) - f.x(state.orElseThrow().pull().presentMetres()) : 0;
            pointing.accept(Optional.empty());
            control.take();
            if (!onMark(e)) {
                control.pullTo(f.pullBack(x(e)));
            }
        });
    }

    private void dragged(MouseEvent e) {
        if (dragging) {
            frame().ifPresent(f -> control.pullTo(f.pullBack(x(e) - grip)));
        }
    }

    private void released() {
        if (dragging) {
            dragging = false;
            control.letGo();
        }
    }

    /** Whether a key is meant for the pan. */
    static boolean moves(KeyEvent e) {
        return switch (e.getCode()) {
            case LEFT, RIGHT, UP, DOWN, HOME, END -> !e.isShortcutDown() && !e.isAltDown();
            default -> false;
        };
    }

    @Override
    protected void paint(FxCanvas canvas, Box box) {
        state.ifPresent(s -> s.chart().draw(canvas, box));
    }
}
