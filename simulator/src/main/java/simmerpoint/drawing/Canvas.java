package simmerpoint.drawing;

/**
 * What drawings are drawn on: a page, a picture, a window, a sheet of paper. Lengths are in units, x to the right, y downwards; usual
 * letters are {@link Text#SIZE} units high, and the widths of {@link Style} suit them. How large a unit is on the screen or
 * paper, the backend decides.
 */
public abstract class Canvas {
    /** Draws a shape, with what its style puts below it. */
    public final void draw(Style style, Shape shape) {
        style.under().ifPresent(seam -> paint(seam, shape));
        paint(style, shape);
    }

    /** Draws a straight line. */
    public final void line(Style style, double x1, double y1, double x2, double y2) {
        draw(style, Path.open(x1, y1, x2, y2));
    }

    /** Writes a line of text, fitted into its room. */
    public final void write(Text text) {
        if (!text.words().isEmpty()) {
            letters(metrics().fitted(text));
        }
    }

    /** Writes text in as many lines as its room asks for; gives the baseline that would come next. */
    public final double paragraph(Text text) {
        double y = text.y();
        for (String line : metrics().lines(text)) {
            write(text.words(line).moved(text.x(), y));
            y += TextMetrics.LEADING * text.size();
        }
        return y;
    }

    /** How wide text gets here. */
    public abstract TextMetrics metrics();

    /** Draws a picture stretched over a box. */
    public abstract void image(Raster raster, Box box);

    /** Draws only what lies within a box. */
    public abstract void clip(Box box, Runnable drawing);

    /** Draws everything see-through: {@code share} 1 as ever, 0 invisible. */
    public abstract void fade(double share, Runnable drawing);

    /** Draws a shape in one style alone. */
    protected abstract void paint(Style style, Shape shape);

    /** Writes text that fits. */
    protected abstract void letters(Text text);
}
