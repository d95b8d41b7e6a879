package simmerpoint.viewer.parts;

import java.util.Optional;
import javafx.geometry.Orientation;
import javafx.scene.AccessibleRole;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.Drawing;
import simmerpoint.viewer.canvas.Drawn;
import simmerpoint.viewer.canvas.FxCanvas;
import simmerpoint.viewer.canvas.FxMetrics;
import simmerpoint.viewer.theme.Theme;

/** Any drawing, as high as it likes to be at the width it gets. */
public class DrawingView extends Drawn {
    private Optional<Drawing> drawing = Optional.empty();
    private double widest = Double.MAX_VALUE;

    /** An empty one; {@code meaning} says what it shows. */
    public DrawingView(String id, String meaning) {
        super(id);
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        setAccessibleText(meaning);
        setFocusTraversable(false);
    }

    /** One that shows a drawing, in the colours of a theme. */
    public static DrawingView of(String id, String meaning, Drawing drawing, Theme theme) {
        DrawingView view = new DrawingView(id, meaning);
        view.applyTheme(theme);
        view.show(drawing);
        return view;
    }

    /** Shows a drawing. */
    public final void show(Drawing next) {
        drawing = Optional.of(next);
        requestLayout();
        redraw();
    }

    /** Draws no wider than so many units. */
    public final DrawingView widest(double units) {
        widest = units;
        return this;
    }

    @Override
    public final Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    @Override
    protected final double computePrefWidth(double height) {
        return 300;
    }

    @Override
    protected final double computePrefHeight(double width) {
        double zoom = zoom();
        double wide = Math.min(widest, Math.max(1, width / zoom));
        return Math.ceil(
                zoom * drawing.map(d -> d.height(wide, FxMetrics::width)).orElse(0.0));
    }

    @Override
    protected final double computeMinHeight(double width) {
        return computePrefHeight(width);
    }

    @Override
    protected void paint(FxCanvas canvas, Box box) {
        drawing.ifPresent(d -> d.draw(canvas, place()));
    }

    /** Where the drawing lies, units. */
    protected final Box place() {
        Box box = box();
        return new Box(0, 0, Math.min(widest, box.width()), box.height());
    }
}
