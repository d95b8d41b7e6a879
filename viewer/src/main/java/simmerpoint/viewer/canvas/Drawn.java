package simmerpoint.viewer.canvas;

import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Region;
import simmerpoint.drawing.Box;
import simmerpoint.viewer.theme.Shade;
import simmerpoint.viewer.theme.Theme;
import simmerpoint.viewer.theme.Zoom;

/**
 * A drawing that fills its place, can have the keyboard and shows so. Painted at most once a frame, and larger in a larger
 * window: it is drawn in units, of which one is as many pixels as {@link Zoom} says.
 */
public abstract class Drawn extends Region {
    private final Canvas canvas = new Canvas();
    private Theme theme = Theme.LIGHT;

    /** An empty one with that id. */
    protected Drawn(String id) {
        setId(id);
        getStyleClass().add("drawn");
        setMinSize(0, 0);
        setFocusTraversable(true);
        getChildren().add(canvas);
        // Whatever lies around it (a scroll pane) would take the keyboard away.
        addEventHandler(MouseEvent.MOUSE_PRESSED, MouseEvent::consume);
        focusedProperty().addListener((value, before, now) -> redraw());
    }

    /** Has it painted with the next frame. */
    protected final void redraw() {
        setNeedsLayout(true);
    }

    /** Paints everything; the canvas is empty. */
    protected abstract void paint(FxCanvas canvas, Box box);

    /** Pixels of a unit. */
    protected final double zoom() {
        return Zoom.of(this);
    }

    /** Everything that is drawn on, units. */
    protected final Box box() {
        double zoom = zoom();
        return new Box(0, 0, Math.floor(getWidth()) / zoom, Math.floor(getHeight()) / zoom);
    }

    /** Changes the colours to paint with. */
    public final void applyTheme(Theme next) {
        theme = next;
        redraw();
    }

    @Override
    protected final void layoutChildren() {
        double width = Math.floor(getWidth());
        double height = Math.floor(getHeight());
        canvas.setWidth(width);
        canvas.setHeight(height);
        GraphicsContext g = canvas.getGraphicsContext2D();
        g.clearRect(0, 0, width, height);
        if (width < 1 || height < 1) {
            return;
        }
        g.save();
        g.scale(zoom(), zoom());
        paint(new FxCanvas(g, theme), box());
        g.restore();
        if (isFocused()) {
            g.setLineDashes();
            g.setStroke(Shade.FOCUS.in(theme));
            g.setLineWidth(2);
            g.strokeRect(1, 1, width - 2, height - 2);
            g.setLineWidth(1);
        }
    }
}
