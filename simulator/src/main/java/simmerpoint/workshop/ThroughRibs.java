package simmerpoint.workshop;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import simmerpoint.geometry.Point;
import simmerpoint.geometry.Polygon;
import simmerpoint.units.SawLength;
import simmerpoint.units.UnitSystem;
import simmerpoint.workshop.Piece.Mark;

/**
 * Ribs that run through the middle from rim to rim, each in place of two. Two of them cross in a half-lap: a slot from above in one and
 * from below in the other, each half as deep as the ribs are high there. The slots are cut square to the rib's face, so they are as wide
 * as the other rib's slanting passage: t/sin θ + t/tan θ = t/tan(θ/2) for thickness t and crossing angle θ (plane geometry).
 *
 * @param rib what each half looks like
 * @param count how many run through
 */
public record ThroughRibs(RibShape rib, int count) {
    /** Of ribs; none where the stock asks for none. */
    static ThroughRibs of(RibShape rib) {
        return new ThroughRibs(rib, rib.stock().throughRibs());
    }

    /** Whether two of them cross. */
    public boolean cross() {
        return count == 2;
    }

    /** The sharper angle at which two cross: as near to a right one as the number of ribs allows, rad. */
    public double angle() {
        int between = rib.count() / 4;
        return 2 * Math.PI / rib.count() * between;
    }

    /** Width of the slots, m. */
    public double slotWidth() {
        return rib.stock().ribMaterial().thickness() / Math.tan(angle() / 2);
    }

    /** Depth of the slots, m. */
    public double slotDepth() {
        return rib.stock().belowCurve() / 2;
    }

    /** Refuses what cannot be put together. */
    void check(UnitSystem units) throws CuttingException {
        if (count > 0 && rib.count() % 2 != 0) {
            throw new CuttingException("of " + rib.count()
                    + " ribs none lies opposite another, so none can run through the middle; take an even number of sectors or leave "
                    + "build.through-ribs out.");
        }
        double thickness = rib.stock().ribMaterial().thickness();
        if (cross() && slotDepth() < thickness) {
            throw new CuttingException("where the two ribs cross, a slot leaves " + SawLength.text(slotDepth(), units)
                    + " of each, less than their thickness of " + SawLength.text(thickness, units) + "; take at least "
                    + SawLength.text(2 * thickness, units) + " below the curve (build.below-curve).");
        }
    }

    /** Every sort of rib: the usual ones, then those that run through. */
    List<Piece> pieces() {
        List<Piece> all = new ArrayList<>();
        int through = 2 * count;
        for (double length : rib.lengths()) {
            int alike = rib.ofLength(length).size();
            int single = Math.max(0, alike - through);
            through -= alike - single;
            if (single > 0) {
                RibShape one = rib.to(length);
                all.add(piece(("rib " + rib.letter(length)).trim(), single, one.atOrigin(), one.marks()));
            }
        }
        if (count == 1) {
            all.add(piece("through rib", 1, outline(0, 0), marks()));
        }
        if (cross()) {
            all.add(piece("through rib, slot above", 1, outline(slotDepth(), 0), marks()));
            all.add(piece("through rib, slot below", 1, outline(0, slotDepth()), marks()));
        }
        return all;
    }

    private static Piece piece(String name, int count, Polygon outline, List<Mark> marks) {
        return new Piece(name, Piece.Use.RIB, count, outline.atOrigin(), false, marks, List.of());
    }

    /** From the foot's left end round; slots of those depths from above and from below. */
    private Polygon outline(double above, double below) {
        double foot = -rib.stock().belowCurve();
        List<Point> right = new ArrayList<>();
        double from = 0;
        if (below > 0) {
            from = slotWidth() / 2;
            right.add(new Point(from, foot + below));
            right.add(new Point(from, foot));
        }
        right.addAll(rib.foot());
        double to = above > 0 ? slotWidth() / 2 : 0;
        List<Point> edge = rib.edge(to, rib.outerEnd());
        for (int k = edge.size() - 1; k > 0; k--) {
            right.add(edge.get(k));
        }
        if (above > 0) {
            right.add(edge.get(0));
            right.add(new Point(to, -above));
        }
        List<Point> all = new ArrayList<>(right);
        if (above == 0) {
            all.add(edge.get(0));
        }
        Collections.reverse(right);
        right.forEach(p -> all.add(new Point(-p.x(), p.y())));
        return new Polygon(all);
    }

    /** Those of both halves and the middle, on the outline at the origin. */
    private List<Mark> marks() {
        List<Mark> marks = new ArrayList<>();
        double shift = rib.outerEnd();
        for (Mark mark : rib.marks()) {
            marks.add(moved(mark, 1, shift + rib.innerEnd()));
            marks.add(moved(mark, -1, shift - rib.innerEnd()));
        }
        return marks;
    }

    private static Mark moved(Mark mark, int side, double by) {
        return new Mark(
                new Point(side * mark.from().x() + by, mark.from().y()),
                new Point(side * mark.to().x() + by, mark.to().y()),
                mark.words());
    }
}
