package simmerpoint.viewer.pan;

import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.AccessibleRole;
import javafx.scene.Cursor;
import javafx.scene.input.MouseEvent;
import simmerpoint.drawing.Box;
import simmerpoint.viewer.canvas.Drawn;
import simmerpoint.viewer.canvas.FxCanvas;

/**
 * The curves, in which the pan can be taken hold of: dragged, set down by a click, or moved with the arrow keys (with
 * Shift farther).
 */
final class CurveView extends Drawn {
    private final Consumer<Optional<Double>> pointing;
    private Optional<CurveState> state = Optional.empty();

    /** Calls {@code pointing} with the place the mouse is at. */
    CurveView(String id, PullControl control, Consumer<Optional<Double>> pointing) {
        super(id);
        this.pointing = pointing;
        setAccessibleRole(AccessibleRole.SLIDER);
        addEventHandler(MouseEvent.MOUSE_MOVED, this::moved);
        PullDrag.on(this, control, pointing, () -> frame().map(Way::new));
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

    private void moved(MouseEvent e) {
        Optional<Way> way = frame().map(Way::new);
        setCursor(way.filter(w -> w.onPan(e)).isPresent() ? Cursor.H_RESIZE : Cursor.DEFAULT);
        pointing.accept(way.filter(w -> w.inside(e)).map(w -> w.pullBack(e.getX())));
    }

    /** The frame in the node's own px. */
    private final class Way implements PullDrag.Way {
        private final CurveFrame frame;

        Way(CurveFrame frame) {
            this.frame = frame;
        }

        private double present() {
            return state.orElseThrow().pull().presentMetres();
        }

        @Override
        public boolean onPan(MouseEvent e) {
            return frame.hits(present(), e.getX() / zoom(), e.getY() / zoom());
        }

        @Override
        public boolean inside(MouseEvent e) {
            return frame.inside(e.getX() / zoom(), e.getY() / zoom());
        }

        @Override
        public double pullBack(double x) {
            return frame.pullBack(x / zoom());
        }

        @Override
        public double pan() {
            return zoom() * frame.x(present());
        }
    }

    @Override
    protected void paint(FxCanvas canvas, Box box) {
        state.ifPresent(s -> s.chart().draw(canvas, box));
    }
}
