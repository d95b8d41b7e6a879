package simmerpoint.viewer.canvas;

import java.util.ArrayList;
import java.util.List;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.Path;

/**
 * The parts of straight lines that lie in a box. A renderer that lays dashes along a line does so along all of it: one that is a
 * million times longer than the window keeps it busy for minutes.
 */
final class LineClip {
    private LineClip() {}

    /**
     * A straight piece of a line.
     *
     * @param x1 from here
     * @param y1 and here
     * @param x2 to there
     * @param y2 and there
     * @param before length of the line before this piece, for its dashes
     */
    record Piece(double x1, double y1, double x2, double y2, double before) {}

    /** All pieces of a path in a box. */
    static List<Piece> of(Path path, Box box) {
        List<Piece> pieces = new ArrayList<>();
        for (Path.Part part : path.parts()) {
            int corners = part.xs().length;
            double before = 0;
            for (int k = 0; k < (part.closed() ? corners : corners - 1); k++) {
                int next = (k + 1) % corners;
                before = add(part.xs()[k], part.ys()[k], part.xs()[next], part.ys()[next], before, box, pieces);
            }
        }
        return pieces;
    }

    /** Liang and Barsky's clipping: the shares of a line between which it lies inside all four edges. Gives the length so far. */
    private static double add(double x1, double y1, double x2, double y2, double before, Box box, List<Piece> pieces) {
        double dx = x2 - x1;
        double dy = y2 - y1;
        double[] towards = {-dx, dx, -dy, dy};
        double[] room = {x1 - box.x(), box.right() - x1, y1 - box.y(), box.bottom() - y1};
        double from = 0;
        double to = 1;
        for (int k = 0; k < towards.length; k++) {
            double share = room[k] / towards[k];
            if (towards[k] == 0) {
                to = room[k] < 0 ? -1 : to;
            } else if (towards[k] < 0) {
                from = Math.max(from, share);
            } else {
                to = Math.min(to, share);
            }
        }
        double length = Math.hypot(dx, dy);
        if (from < to) {
            pieces.add(new Piece(x1 + from * dx, y1 + from * dy, x1 + to * dx, y1 + to * dy, before + from * length));
        }
        return before + length;
    }
}
