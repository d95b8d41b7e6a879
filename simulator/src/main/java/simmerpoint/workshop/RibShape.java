package simmerpoint.workshop;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.Profile;
import simmerpoint.dish.RibLayout;
import simmerpoint.geometry.Point;
import simmerpoint.geometry.Polygon;
import simmerpoint.workshop.Piece.Mark;

/**
 * A rib: its upper edge is the dish's profile, x the distance from the axis and y the height above the vertex, m.
 *
 * @param ribs how many and how they are shaped
 * @param profile the profile
 * @param hub distance from the axis at which panels begin
 * @param rim distance from the axis at which they end on the longest rib
 * @param stock what stays below the curve and beyond the rim, and the thickness
 */
public record RibShape(RibLayout ribs, Profile profile, double hub, double rim, CuttingStock stock) {
    /** Points of a curve lie no farther apart, m: chords then keep within a hundredth of a millimetre of it. */
    private static final double STEP = 4e-3;

    /** Ribs whose lengths differ by less are alike, m. */
    private static final double ALIKE = 1e-4;

    /** Length of a mark, m. */
    private static final double MARK = 0.015;

    /** The ribs of a dish that has some. */
    static RibShape of(DishPlan plan, RibLayout ribs, CuttingStock stock) {
        return new RibShape(ribs, plan.profile(), plan.hubMetres() / 2, ribs.longest(), stock);
    }

    /** How many carry a mirror. */
    public int standing() {
        return ribs.standing();
    }

    /** Different lengths of those that carry a mirror, the longest first: distances from the axis at which it ends on them, m. */
    public List<Double> lengths() {
        return ribs.ends().stream()
                .filter(end -> end > 0)
                .map(RibShape::tidy)
                .distinct()
                .sorted(Comparator.reverseOrder())
                .toList();
    }

    /** Numbers of those that carry a mirror, from 1. */
    public List<Integer> numbers() {
        return IntStream.rangeClosed(1, count()).filter(k -> end(k) > 0).boxed().toList();
    }

    /** Where a rib ends, counted from 1; m from the axis, 0 for one that carries no mirror. */
    public double end(int rib) {
        return ribs.ends().get(rib - 1);
    }

    /** Numbers of the ribs of one of those lengths, from 1. */
    public List<Integer> ofLength(double length) {
        return IntStream.range(0, count())
                .filter(k -> tidy(ribs.ends().get(k)) == length)
                .mapToObj(k -> k + 1)
                .toList();
    }

    private static double tidy(double metres) {
        return Math.round(metres / ALIKE) * ALIKE;
    }

    /** A letter for the ribs of each length, in the order of {@link #lengths}; none where all are alike. */
    public String letter(double length) {
        return lengths().size() == 1 ? "" : PanelPieces.letter(lengths().indexOf(length));
    }

    /** The letter of ribs that end there, m from the axis. */
    String letterOf(double end) {
        return letter(tidy(end));
    }

    /** A rib with mirror to that distance from the axis, m. */
    RibShape to(double length) {
        return Math.abs(length - rim) < ALIKE ? this : new RibShape(ribs, profile, hub, length, stock);
    }

    /** How many there are where they go all round. */
    public int count() {
        return ribs.sectors();
    }

    /**
     * Where a rib ends near the axis, m: ribs as thick as these meet there side by side, half a thickness ÷ tan(half the angle
     * between two of them) from the axis (plane geometry).
     */
    public double innerEnd() {
        return stock.ribMaterial().thickness() / 2 / Math.tan(Math.PI / count());
    }

    /** Where it ends outside, m from the axis. */
    public double outerEnd() {
        return rim + stock.beyondRim();
    }

    /** Height of the profile at the rim above the vertex, m. */
    public double depth() {
        return profile.height(rim);
    }

    /** Length of the curve from the vertex to the rim, m. */
    public double arc() {
        return profile.arcLength(rim);
    }

    /** Height of its edge at a distance from the axis, m. */
    public double height(double radius) {
        double[] borders = ribs.borders();
        if (!ribs.curved()) {
            for (int k = 1; k < borders.length; k++) {
                if (radius >= borders[k - 1] && radius <= borders[k]) {
                    double share = (radius - borders[k - 1]) / (borders[k] - borders[k - 1]);
                    double from = profile.height(borders[k - 1]);
                    return from + share * (profile.height(borders[k]) - from);
                }
            }
        }
        return profile.height(radius);
    }

    /** Its edge between two distances from the axis. */
    List<Point> edge(double from, double to) {
        return stations(from, to).mapToObj(r -> new Point(r, height(r))).toList();
    }

    /** Its edge under the mirror, from hub to rim. */
    List<Point> mirrorEdge() {
        return edge(Math.max(hub, innerEnd()), rim);
    }

    /** Distances from the axis so close that straight lines between them make the edge. */
    private DoubleStream stations(double from, double to) {
        DoubleStream even = IntStream.rangeClosed(0, (int) Math.ceil((to - from) / STEP))
                .mapToDouble(k -> Math.min(to, from + k * STEP));
        DoubleStream corners = DoubleStream.of(ribs.borders()).filter(r -> r > from && r < to);
        DoubleStream all = ribs.curved()
                ? even
                : DoubleStream.concat(even.filter(r -> r < hub || r > rim || r == from || r == to), corners);
        return all.sorted().distinct();
    }

    /** The outline at the origin. */
    Polygon atOrigin() {
        return outline().atOrigin();
    }

    /** Where panels begin and end and, on a rib with straight parts, where those meet: from the edge down, on the outline at the origin. */
    List<Mark> marks() {
        List<Mark> marks = new ArrayList<>();
        double[] borders = ribs.borders();
        for (int k = 0; k < borders.length && borders[k] < rim - ALIKE; k++) {
            if (borders[k] > innerEnd() && (k == 0 || !ribs.curved())) {
                marks.add(mark(borders[k], k == 0 ? "hub" : "ring " + k));
            }
        }
        if (stock.beyondRim() > 0) {
            marks.add(mark(rim, "rim"));
        }
        return marks;
    }

    private Mark mark(double radius, String words) {
        double x = radius - innerEnd();
        double y = height(radius) + stock.belowCurve();
        return new Mark(new Point(x, y), new Point(x, Math.max(0, y - MARK)), words);
    }

    /** The whole rib: along the edge outwards, down beyond the rim, back along the straight foot. */
    public Polygon outline() {
        List<Point> corners = new ArrayList<>();
        corners.add(new Point(innerEnd(), -stock.belowCurve()));
        corners.addAll(foot());
        List<Point> edge = edge(innerEnd(), outerEnd());
        for (int k = edge.size() - 1; k >= 0; k--) {
            corners.add(edge.get(k));
        }
        return new Polygon(corners);
    }

    /** Its foot outwards: the notches, then the outer end. */
    List<Point> foot() {
        List<Point> corners = new ArrayList<>();
        stock.notches().stream()
                .filter(notch -> notch.radius() + notch.width() / 2 < outerEnd())
                .forEach(notch -> addNotch(notch, corners));
        corners.add(new Point(outerEnd(), -stock.belowCurve()));
        return corners;
    }

    private void addNotch(CuttingStock.Notch notch, List<Point> corners) {
        double foot = -stock.belowCurve();
        double from = notch.radius() - notch.width() / 2;
        double to = notch.radius() + notch.width() / 2;
        corners.add(new Point(from, foot));
        corners.add(new Point(from, foot + notch.depth()));
        corners.add(new Point(to, foot + notch.depth()));
        corners.add(new Point(to, foot));
    }
}
