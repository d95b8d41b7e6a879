package simmerpoint.drawing.cooker;

import java.util.ArrayList;
import java.util.List;
import simmerpoint.dish.Aperture;
import simmerpoint.dish.built.Mask;
import simmerpoint.drawing.Path;

/**
 * A mask over part of the mirror as it is seen along the axis.
 *
 * @param mask what is covered
 * @param rim of the dish
 */
record MaskOutline(Mask mask, Aperture rim) {
    private static final int CORNERS = 120;

    /** Its edge on a view. */
    Path path(FrontFrame frame) {
        return switch (mask.part()) {
            case NONE -> new Path(List.of());
            case MIDDLE -> arc(frame, mask.widthMetres() / 2, 0, 2 * Math.PI);
            case RIM ->
                arc(frame, rim.radius(), 0, 2 * Math.PI)
                        .and(arc(frame, rim.radius() - mask.widthMetres(), 0, 2 * Math.PI));
            case UPPER -> half(frame, 0);
            case RIGHT -> half(frame, Math.PI / 2);
            case LOWER -> half(frame, Math.PI);
            case LEFT -> half(frame, -Math.PI / 2);
        };
    }

    /** Angles count from the upper edge to the right of whoever stands behind the dish. */
    private Path half(FrontFrame frame, double towards) {
        return arc(frame, rim.radius(), towards - Math.PI / 2, towards + Math.PI / 2);
    }

    private Path arc(FrontFrame frame, double of, double from, double to) {
        List<double[]> points = new ArrayList<>();
        for (int k = 0; k <= CORNERS; k++) {
            double angle = from + (to - from) * k / CORNERS;
            points.add(at(frame, of * Math.cos(angle), of * Math.sin(angle)));
        }
        return Path.through(points, true);
    }

    /** Where its name has room beside the pan. */
    double[] middle(FrontFrame frame) {
        double out = 0.62 * rim.radius();
        return switch (mask.part()) {
            case LOWER -> at(frame, -out, 0);
            case LEFT -> at(frame, 0, -out);
            case RIGHT -> at(frame, 0, out);
            case MIDDLE -> at(frame, 0.38 * mask.widthMetres(), 0);
            case RIM -> at(frame, rim.radius() - mask.widthMetres() / 2, 0);
            default -> at(frame, out, 0);
        };
    }

    private double[] at(FrontFrame frame, double up, double right) {
        return frame.at(rim.x() + up, rim.y() + right);
    }
}
