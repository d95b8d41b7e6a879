package simmerpoint.drawing;

/**
 * Words over as many lines as they need, as a part of a drawing.
 *
 * @param words what is written
 * @param style how it looks
 * @param size of its letters, units
 */
public record Paragraph(String words, TextStyle style, double size) implements Drawing {
    private Text text(double x, double y, double width) {
        return Text.at(x, y, words).in(style).size(size).within(width);
    }

    @Override
    public double height(double width, TextMetrics metrics) {
        return metrics.lines(text(0, 0, width)).size() * TextMetrics.LEADING * size;
    }

    @Override
    public void draw(Canvas canvas, Box box) {
        canvas.paragraph(text(box.x(), box.y() + size, box.width()));
    }
}
