package simmerpoint.drawing.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import simmerpoint.answer.cut.CheckWords;
import simmerpoint.drawing.Drawing;
import simmerpoint.units.UnitSystem;
import simmerpoint.workshop.BuildCheck;
import simmerpoint.workshop.CutPlan;
import simmerpoint.workshop.Piece;
import simmerpoint.workshop.RibShape;

/**
 * A piece and how it is spread over pages.
 *
 * @param piece what is cut
 * @param grid its pages
 */
public record PatternSet(Piece piece, PageGrid grid) {
    private static final double OVERLAP = 0.01;

    /** Room for a name below a piece, m. */
    private static final double NAME_ROOM = 0.01;

    private static final String JOINING =
            "All pieces at full size. Trim pages at solid thin lines and lay them on the dashed line of their neighbour.";
    private static final String SEEN =
            "Seen from the sun, the dish\u2019s upper edge up; not to scale. Letters name pieces, numbers panels.";
    private static final String EACH_RIB =
            "Below a string or straight edge in the plane of the rim; read back by as-built.ribs (cut --ribs writes the table).";
    private static final String UNEVEN_RIBS =
            "Below a string or straight edge at the level of the longest ribs\u2019 tips; read back by as-built.ribs (cut --ribs writes"
                    + " the table).";

    /**
     * All pages of a plan: what there is to cut first, then each different piece at full size. Film as large as its panel has no
     * page of its own.
     *
     * @param width of what can be printed on a page, m
     * @param height of it, m
     * @param unit metres of a unit
     */
    public static List<Drawing> pages(CutPlan plan, double width, double height, double unit, UnitSystem units) {
        PageGrid.Page page = new PageGrid.Page(width, height - PatternFoot.HEIGHT * unit, OVERLAP);
        List<PatternSet> sets = Stream.concat(plan.pieces().stream(), plan.template().stream())
                .filter(piece -> plan.hasOwnFilm() || piece.use() != Piece.Use.FILM)
                .map(piece -> new PatternSet(piece, PageGrid.of(piece.outline(), page)))
                .toList();
        List<Drawing> pages = new ArrayList<>();
        String title = plan.scenario().title();
        int rows = PatternIndex.rows(page.height() / unit - FootedPage.HEAD);
        for (int k = 0; k < sets.size(); k += rows) {
            List<PatternSet> some = sets.subList(k, Math.min(sets.size(), k + rows));
            String heading = title.isEmpty() ? "Pieces to cut" : title;
            pages.add(new FootedPage(heading, JOINING, new PatternIndex(some, units), title, unit));
        }
        PanelMap map = PanelMap.of(plan);
        pages.add(new FootedPage("Which panel goes where", SEEN, map, title, unit));
        String check = "Check the build" + (title.isEmpty() ? "" : " \u00b7 " + title);
        plan.check()
                .ifPresent(lengths -> pages.add(new FootedPage(
                        check,
                        measuring(lengths, units),
                        new CheckTable(lengths, plan::tolerance, units),
                        title,
                        unit)));
        plan.check().ifPresent(lengths -> addRibs(plan, lengths, page.height() / unit, unit, units, pages));
        sets.stream().filter(set -> !set.isSmall()).forEach(set -> set.addPages(pages, title, unit));
        pages.addAll(SharedPage.of(sets.stream().filter(PatternSet::isSmall).toList(), page, unit, title));
        return pages;
    }

    private static String measuring(BuildCheck lengths, UnitSystem units) {
        return lengths.acrossLongest()
                ? new CheckWords(lengths, units).straightEdge() + " and measure down from it to the mirror."
                : "The longest ribs have none as long opposite them: depths below a straight edge are left out.";
    }

    private static void addRibs(
            CutPlan plan, BuildCheck lengths, double height, double unit, UnitSystem units, List<Drawing> pages) {
        String title = plan.scenario().title();
        RibShape shape = plan.rib().orElseThrow();
        List<RibDepths.Rib> ribs = shape.numbers().stream()
                .map(k -> new RibDepths.Rib(k, shape.end(k)))
                .toList();
        int rows = RibDepths.rows(height - FootedPage.HEAD);
        List<BuildCheck.Depth> depths = new ArrayList<>(lengths.depths());
        depths.add(new BuildCheck.Depth(shape.rim(), 0));
        for (int first = 0; first < ribs.size(); first += rows) {
            RibDepths table = new RibDepths(depths, ribs.subList(first, Math.min(ribs.size(), first + rows)), units);
            String level = lengths.uneven() ? UNEVEN_RIBS : EACH_RIB;
            pages.add(new FootedPage("Depths of each rib", level, table, title, unit));
        }
    }

    /** Whether it shares pages with others: it fits on one and has nothing drawn on it. */
    boolean isSmall() {
        return grid.pages() == 1 && piece.marks().isEmpty() && fitsWithItsName();
    }

    private boolean fitsWithItsName() {
        double up = grid.turned() ? piece.outline().width() : piece.outline().height();
        return up < grid.page().height() - NAME_ROOM;
    }

    /** Name and number of a piece. */
    static String label(Piece piece) {
        return piece.name() + ", cut " + piece.count();
    }

    private void addPages(List<Drawing> pages, String title, double unit) {
        String heading = label(piece) + (title.isEmpty() ? "" : " \u00b7 " + title);
        for (int row = 0; row < grid.rows(); row++) {
            for (int column = 0; column < grid.columns(); column++) {
                pages.add(new PatternPage(piece, grid, column, row, unit, heading));
            }
        }
    }
}
