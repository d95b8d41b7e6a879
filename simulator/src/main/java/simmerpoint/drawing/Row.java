package simmerpoint.drawing;

import java.util.List;

/**
 * Drawings beside each other, all as wide; as high as the highest.
 *
 * @param gap between them, units
 * @param parts from left to right
 */
public record Row(double gap, List<Drawing> parts) implements Drawing {
    /** Keeps its own list. */
    public Row {
        parts = List.copyOf(parts);
    }

    private double column(double width) {
        return (width - gap * (parts.size() - 1)) / parts.size();
    }

    @Override
    public double height(double width, TextMetrics metrics) {
        return parts.stream()
                .mapToDouble(p -> p.height(column(width), metrics))
                .max()
                .orElse(0);
    }

    @Override
    public void draw(Canvas canvas, Box box) {
        double column = column(box.width());
        double x = box.x();
        for (Drawing part : parts) {
            part.draw(canvas, new Box(x, box.y(), column, box.height()));
            x += column + gap;
        }
    }
}
