package simmerpoint.workshop;

import java.util.List;
import simmerpoint.geometry.Point;
import simmerpoint.geometry.Polygon;

/**
 * One sort of piece and how many of it.
 *
 * @param name for the builder, for instance "panel, ring 3"
 * @param use what it is for
 * @param count how many are wanted
 * @param outline its cutting line, lying at the origin, m
 * @param bent whether it is bent along its length once it is cut
 * @param marks lines to draw on it, in the place of the outline
 * @param panels numbers of the panels it is for, as in drawings and files; empty for ribs
 */
public record Piece(
        String name, Use use, int count, Polygon outline, boolean bent, List<Mark> marks, List<Integer> panels) {
    /** What pieces are for. */
    public enum Use {
        /** Carries panels. */
        RIB,
        /** Carries the film. */
        PANEL,
        /** Reflects. */
        FILM,
        /** Is laid into the finished dish to check its curve. */
        TEMPLATE
    }

    /**
     * A line on a piece.
     *
     * @param from one end, m
     * @param to the other, m
     * @param words beside it
     */
    public record Mark(Point from, Point to, String words) {}

    /** Keeps copies of the lists. */
    public Piece {
        marks = List.copyOf(marks);
        panels = List.copyOf(panels);
    }

    /** The same lying otherwise; marks are left out. */
    Piece lying(Polygon way) {
        return new Piece(name, use, count, way, bent, List.of(), panels);
    }

    /** Area of all of them, m². */
    public double totalArea() {
        return count * outline.area();
    }
}
