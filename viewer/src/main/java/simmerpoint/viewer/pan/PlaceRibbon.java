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

    /** Calls {@code pointing} with the place the mouse is at. */
    PlaceRibbon(String id, PullControl control, Consumer<Optional<Double>> pointing) {
        super(id);
        this.control = control;
        this.pointing = pointing;
        setAccessibleRole(AccessibleRole.SLIDER);
        addEventHandler(MouseEvent.MOUSE_MOVED, this::moved);
        PullDrag.on(this, control, pointing, () -> scale().map(Way::new));
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

    private void moved(MouseEvent e) {
        scale().map(Way::new).ifPresent(w -> {
            setCursor(w.onPan(e) ? Cursor.H_RESIZE : Cursor.DEFAULT);
            pointing.accept(w.onPan(e) || !w.inside(e) ? Optional.empty() : Optional.of(w.pullBack(e.getX())));
        });
    }

    /** The scale in the node's own px. */
    private final class Way implements PullDrag.Way {
        private final Scale scale;

        Way(Scale scale) {
            this.scale = scale;
        }

        @Override
        public boolean onPan(MouseEvent e) {
            return Math.abs(e.getX() - pan()) <= NEAR * zoom();
        }

        @Override
        public boolean inside(MouseEvent e) {
            return e.getX() >= scale.from() && e.getX() <= scale.to();
        }

        @Override
        public double pullBack(double x) {
            return scale.figure(x);
        }

        @Override
        public double pan() {
            return scale.at(state.orElseThrow().pull().presentMetres());
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
