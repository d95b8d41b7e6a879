package simmerpoint.drawing.pattern;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.Canvas;
import simmerpoint.drawing.Drawing;
import simmerpoint.drawing.Path;
import simmerpoint.drawing.Style;
import simmerpoint.drawing.Text;
import simmerpoint.drawing.TextMetrics;
import simmerpoint.drawing.TextStyle;
import simmerpoint.geometry.Point;
import simmerpoint.geometry.Polygon;
import simmerpoint.workshop.CutPlan;
import simmerpoint.workshop.PanelPlace;
import simmerpoint.workshop.RibShape;

/**
 * Which panel goes where, seen from the sun, the dish's upper edge up: each with the name of its piece, unless all are alike, and below
 * that its number, if there is room. Panels that stand on no rib have their lean from level in degrees below it; ribs have their number beyond the rim.
 *
 * @param panels all of them
 * @param ribs those that there are
 */
public record PanelMap(List<PanelPlace> panels, List<Rib> ribs) implements Drawing {
    private static final double MARGIN = 4;
    private static final double RIB_MARGIN = 36;
    private static final double LETTERED_MARGIN = 44;

    /** How far beyond a rib's end the middle of its name stands. */
    private static final double BEYOND = 17;

    private static final double LETTERED = 22;

    /** Letters get as small as this: a printed page bears it. */
    private static final double LEAST = 5;

    /** Size of further lines beside that of the first. */
    private static final double SMALLER = 0.75;

    /** Of a plan. */
    public static PanelMap of(CutPlan plan) {
        return new PanelMap(plan.places(), plan.rib().map(PanelMap::ribs).orElse(List.of()));
    }

    private static List<Rib> ribs(RibShape rib) {
        return rib.lengths().stream()
                .flatMap(length -> rib.ofLength(length).stream()
                        .map(number -> new Rib(
                                ("rib " + number + " " + rib.letter(length)).trim(),
                                2 * Math.PI * (number - 1) / rib.count(),
                                length)))
                .toList();
    }

    /**
     * A rib.
     *
     * @param words beyond its end
     * @param angle from the upper edge, anticlockwise as seen from the sun, rad
     * @param end where its mirror ends, m from the axis
     */
    public record Rib(String words, double angle, double end) {}

    @Override
    public double height(double width, TextMetrics metrics) {
        return width;
    }

    private double scale(Box box) {
        double reach = panels.stream()
                .flatMap(panel -> panel.edge().stream())
                .mapToDouble(v -> Math.max(Math.abs(v.x()), Math.abs(v.y())))
                .max()
                .orElse(1);
        boolean letters = ribs.stream().anyMatch(rib -> lettered(rib) > 0);
        double margin = ribs.isEmpty() ? MARGIN : letters ? LETTERED_MARGIN : RIB_MARGIN;
        return (Math.min(box.width(), box.height()) / 2 - margin) / reach;
    }

    private static Path path(PanelPlace panel, Box box, double scale) {
        List<double[]> corners = panel.edge().stream()
                .map(v -> new double[] {box.middleX() - scale * v.y(), box.middleY() - scale * v.x()})
                .toList();
        return Path.through(corners, true);
    }

    @Override
    public void draw(Canvas canvas, Box box) {
        double scale = scale(box);
        boolean alike = panels.stream().map(PanelPlace::piece).distinct().count() == 1;
        for (PanelPlace panel : panels) {
            Path path = path(panel, box, scale);
            canvas.draw(Style.PIECE, path);
            List<String> words = new ArrayList<>();
            if (!alike) {
                words.add(letter(panel.piece()));
            }
            words.add(Integer.toString(panel.number()));
            if (ribs.isEmpty()) {
                words.add(FigureFormat.fixed(Math.toDegrees(panel.cantRadians()), 1) + "\u00b0");
            }
            Point middle = plan(panel).centroid();
            double[] at = {box.middleX() - scale * middle.x(), box.middleY() - scale * middle.y()};
            name(canvas, path.bounds(), at, words, alike ? 0 : 1);
        }
        for (Rib rib : ribs) {
            double far = scale * Math.max(rib.end, outline(rib)) + BEYOND + (LETTERED - BEYOND) * lettered(rib);
            canvas.write(Text.at(
                            box.middleX() - far * Math.sin(rib.angle),
                            box.middleY() - far * Math.cos(rib.angle) + 4,
                            rib.words)
                    .in(TextStyle.SOFT)
                    .size(8)
                    .middle());
        }
    }

    /** Letters make a name longer, which matters beside the dish and not above it. */
    private static double lettered(Rib rib) {
        return rib.words.length() > "rib 10".length() ? Math.abs(Math.sin(rib.angle)) : 0;
    }

    /** How far panels reach in the direction of a rib, beyond a slot that ends it too, m. */
    private double outline(Rib rib) {
        double half = Math.PI / 2 / Math.max(3, ribs.size());
        return panels.stream()
                .flatMap(panel -> panel.edge().stream())
                .filter(p -> Math.abs(Math.IEEEremainder(Math.atan2(p.y(), p.x()) - rib.angle, 2 * Math.PI)) <= half)
                .mapToDouble(p -> p.x() * Math.cos(rib.angle) + p.y() * Math.sin(rib.angle))
                .max()
                .orElse(0);
    }

    /** The last word of "panel A" and of "rim panel A". */
    private static String letter(String piece) {
        return piece.substring(piece.lastIndexOf(' ') + 1);
    }

    /** The panel seen from the sun, x to the left and y up, m. */
    private static Polygon plan(PanelPlace panel) {
        return new Polygon(
                panel.edge().stream().map(v -> new Point(v.y(), v.x())).toList());
    }

    /** In the middle of the panel, line below line, all but the first smaller; the one at {@code spare} only where there is room. */
    private static void name(Canvas canvas, Box around, double[] at, List<String> lines, int spare) {
        double room = Math.min(around.width(), around.height());
        double size = size(room, lines);
        List<String> written = lines;
        if (spare > 0 && size < LEAST) {
            written = new ArrayList<>(lines);
            written.remove(spare);
            size = size(room, written);
        }
        size = Math.max(LEAST, size);
        double y = at[1] - high(written) * size / 2;
        for (int k = 0; k < written.size(); k++) {
            double each = k == 0 ? size : SMALLER * size;
            y += each;
            canvas.write(Text.at(at[0], y - 0.15 * each, written.get(k))
                    .in(TextStyle.LABEL)
                    .size(each)
                    .middle());
        }
    }

    /** Of the first line, so that all of them take no more than three quarters of the room. */
    private static double size(double room, List<String> lines) {
        return Math.min(Text.SIZE, Math.min(0.36, 0.72 / high(lines)) * room);
    }

    private static double high(List<String> lines) {
        return 1 + SMALLER * (lines.size() - 1);
    }

    /** Marks the panels with those numbers, counted from 0, in a drawing in that box. */
    public void mark(Canvas canvas, Box box, Collection<Integer> numbers) {
        panels.stream()
                .filter(panel -> numbers.contains(panel.number() - 1))
                .forEach(panel -> canvas.draw(Style.POINTED_PANEL, path(panel, box, scale(box))));
    }

    /** The panel at a point of a drawing in that box. */
    public Optional<PanelPlace> at(Box box, double x, double y) {
        double scale = scale(box);
        double across = (box.middleX() - x) / scale;
        double up = (box.middleY() - y) / scale;
        return panels.stream().filter(panel -> plan(panel).contains(across, up)).findFirst();
    }
}
