package simmerpoint.drawing;

import java.util.ArrayList;
import java.util.List;

/** Drawings one below the other. */
public final class Stack implements Drawing {
    private final List<Drawing> parts = new ArrayList<>();

    /** Of parts that know how high they want to be. */
    public Stack(Drawing... parts) {
        this.parts.addAll(List.of(parts));
    }

    /** Adds a part below. */
    public Stack with(Drawing part) {
        parts.add(part);
        return this;
    }

    /** Adds empty room below. */
    public Stack gap(double height) {
        return with(new Gap(height));
    }

    @Override
    public double height(double width, TextMetrics metrics) {
        return parts.stream().mapToDouble(p -> p.height(width, metrics)).sum();
    }

    @Override
    public void draw(Canvas canvas, Box box) {
        double y = box.y();
        for (Drawing part : parts) {
            double height = part.height(box.width(), canvas.metrics());
            part.draw(canvas, new Box(box.x(), y, box.width(), height));
            y += height;
        }
    }

    /** Empty room. */
    private record Gap(double height) implements Drawing {
        @Override
        public double height(double width, TextMetrics metrics) {
            return height;
        }

        @Override
        public void draw(Canvas canvas, Box box) {
            // It is empty.
        }
    }
}
