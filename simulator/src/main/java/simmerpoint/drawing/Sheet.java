package simmerpoint.drawing;

/** A picture that stands alone: title, what it shows, charts one below the other, and what must be known beside them. */
public final class Sheet implements Drawing {
    private static final double MARGIN = 28;
    private static final double TITLE = 21;
    private static final double SUBTITLE = 14;

    private final Stack stack = new Stack();

    /** Begins a sheet; {@code title} keeps in one line. */
    public Sheet(String title) {
        stack.gap(MARGIN - TITLE / 2).with(new Line(title, TextStyle.HEADING, TITLE));
    }

    /** Adds a paragraph below the title: what the sheet shows, or its answer. */
    public Sheet subtitle(String words) {
        stack.gap(4).with(new Paragraph(words, TextStyle.SOFT, SUBTITLE));
        return this;
    }

    /** Adds the name of what comes next. */
    public Sheet heading(String words) {
        stack.gap(16).with(new Line(words, TextStyle.HEADING, SUBTITLE));
        return this;
    }

    /** Adds a part. */
    public Sheet with(Drawing part) {
        stack.with(part);
        return this;
    }

    /** Adds empty room. */
    public Sheet gap(double height) {
        stack.gap(height);
        return this;
    }

    /** Adds what can wait, at the foot. */
    public Sheet caption(String words) {
        stack.gap(4).with(new Paragraph(words, TextStyle.SOFT, Text.SIZE));
        return this;
    }

    @Override
    public double height(double width, TextMetrics metrics) {
        return stack.height(width - 2 * MARGIN, metrics) + MARGIN;
    }

    @Override
    public void draw(Canvas canvas, Box box) {
        stack.draw(canvas, new Box(box.x() + MARGIN, box.y(), box.width() - 2 * MARGIN, box.height() - MARGIN));
    }

    /** Words that keep in one line. */
    private record Line(String words, TextStyle style, double size) implements Drawing {
        @Override
        public double height(double width, TextMetrics metrics) {
            return TextMetrics.LEADING * size;
        }

        @Override
        public void draw(Canvas canvas, Box box) {
            canvas.write(
                    Text.at(box.x(), box.y() + size, words).in(style).size(size).within(box.width()));
        }
    }
}
