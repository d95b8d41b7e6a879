package simmerpoint.workshop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import simmerpoint.geometry.Point;
import simmerpoint.geometry.Polygon;
import simmerpoint.workshop.CuttingStock.Size;

/**
 * Film, foil or tape that is smaller than its panel: it is laid in lengths side by side, and end to end where even the roll is shorter.
 *
 * @param film the panel's whole film
 * @param lengths for one panel, as rectangles that lie to x as the film does
 */
public record FilmLengths(Piece film, List<Polygon> lengths) {
    /** How far a length lies over its neighbour (common practice), m. */
    public static final double OVERLAP = 0.005;

    private static final double NEAR = 1e-9;

    /** Keeps a copy of the list. */
    public FilmLengths {
        lengths = List.copyOf(lengths);
    }

    /** Of a film that the stock's roll or sheet is too small for; empty where it is not. */
    static Optional<FilmLengths> of(Piece film, CuttingStock stock) {
        if (SheetLayout.fits(film.outline(), stock.film(), stock.filmGrain())) {
            return Optional.empty();
        }
        boolean across = stock.filmGrain() == SheetLayout.Grain.ACROSS;
        List<Polygon> lengths = lengths(across ? turned(film.outline()) : film.outline(), stock.film());
        return Optional.of(new FilmLengths(
                film, across ? lengths.stream().map(FilmLengths::turned).toList() : lengths));
    }

    private static Polygon turned(Polygon shape) {
        return shape.turned(Math.PI / 2).atOrigin();
    }

    /** Bands as wide as the roll, the last one as wide as what is left, each as long as the outline is there. */
    private static List<Polygon> lengths(Polygon outline, Size roll) {
        List<Polygon> all = new ArrayList<>();
        double top = outline.height();
        for (double from = 0; all.isEmpty() || from + OVERLAP < top - NEAR; from += roll.width() - OVERLAP) {
            double to = Math.min(top, from + roll.width());
            double length = length(outline, from, to);
            int parts = parts(length, roll.length());
            for (int k = 0; k < parts; k++) {
                all.add(rectangle((length + (parts - 1) * OVERLAP) / parts, to - from));
            }
        }
        return all;
    }

    private static int parts(double length, double longest) {
        return length <= longest + NEAR ? 1 : (int) Math.ceil((length - OVERLAP) / (longest - OVERLAP) - NEAR);
    }

    /** How far the outline, its foot at 0, reaches along x between two heights: to its corners there or where its edges cross them. */
    private static double length(Polygon outline, double from, double to) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (int k = 0; k < outline.size(); k++) {
            Point a = outline.corner(k);
            Point b = outline.corner(k + 1);
            for (double y : new double[] {clamp(a.y(), from, to), clamp(b.y(), from, to)}) {
                if (Math.min(a.y(), b.y()) <= y + NEAR && y <= Math.max(a.y(), b.y()) + NEAR) {
                    double share = a.y() == b.y() ? 0 : (y - a.y()) / (b.y() - a.y());
                    double x = a.x() + share * (b.x() - a.x());
                    least = Math.min(least, a.y() == b.y() ? Math.min(x, b.x()) : x);
                    most = Math.max(most, a.y() == b.y() ? Math.max(x, b.x()) : x);
                }
            }
        }
        return most - least;
    }

    private static double clamp(double y, double from, double to) {
        return Math.max(from, Math.min(to, y));
    }

    private static Polygon rectangle(double length, double width) {
        return new Polygon(
                List.of(new Point(0, 0), new Point(length, 0), new Point(length, width), new Point(0, width)));
    }

    /** Those of all panels, as pieces to lay out; they bear the film's name. */
    List<Piece> pieces() {
        return lengths.stream().map(film::lying).toList();
    }

    /** How many there are for all panels. */
    public int count() {
        return film.count() * lengths.size();
    }
}
