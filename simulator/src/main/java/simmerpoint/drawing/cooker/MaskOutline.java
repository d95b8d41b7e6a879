package simmerpoint.drawing.cooker;

import java.util.ArrayList;
import java.util.List;
import simmerpoint.dish.built.Mask;
import simmerpoint.drawing.Path;

/**
 * A mask over part of the mirror as it is seen along the axis.
 *
 * @param mask what is covered
 * @param radius of the dish, m
 */
record MaskOutline(Mask mask, double radius) {
    private static final int CORNERS = 120;

    /** Its edge on a view. */
    Path path(FrontFrame frame) {
        return switch (mask.part()) {
            case NONE -> new Path(List.of());
            case MIDDLE -> arc(frame, mask.widthMetres() / 2, 0, 2 * Math.PI);
            case RIM -> arc(frame, radius, 0, 2 * Math.PI).and(arc(frame, radius - mask.widthMetres(), 0, 2 * Math.PI));
            case UPPER -> half(frame, 0);
            case RIGHT -> half(frame, Math.PI / 2);
            case LOWER -> half(frame, Math.PI);
            case LEFT -> half(frame, -Math.PI / 2);
        };
    }

    /** Angles count from the upper edge to the right of whoever stands behind the dish. */
    private Path half(FrontFrame frame, double towards) {
        return arc(frame, radius, towards - Math.PI / 2, towards + Math.PI / 2);
    }

    private static Path arc(FrontFrame frame, double of, double from, double to) {
        List<double[]> points = new ArrayList<>();
        for (int k = 0; k <= CORNERS; k++) {
            double angle = from + (to - from) * k / CORNERS;
            points.add(frame.at(of * Math.cos(angle), of * Math.sin(angle)));
        }
        return Path.through(points, true);
    }

    /** Where its name has room beside the pan. */
    double[] middle(FrontFrame frame) {
        double out = 0.62 * radius;
        return switch (mask.part()) {
            case LOWER -> frame.at(-out, 0);
            case LEFT -> frame.at(0, -out);
            case RIGHT -> frame.at(0, out);
            case MIDDLE -> frame.at(0.38 * mask.widthMetres(), 0);
            case RIM -> frame.at(radius - mask.widthMetres() / 2, 0);
            default -> frame.at(out, 0);
        };
    }
}
