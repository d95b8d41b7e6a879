package simmerpoint.drawing.pattern;

import java.util.ArrayList;
import java.util.List;
import simmerpoint.drawing.Drawing;
import simmerpoint.units.UnitSystem;
import simmerpoint.workshop.CutPlan;
import simmerpoint.workshop.Piece;

/**
 * A piece and how it is spread over pages.
 *
 * @param piece what is cut
 * @param grid its pages
 */
public record PatternSet(Piece piece, PageGrid grid) {
    private static final double OVERLAP = 0.01;

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
        boolean ownFilm = plan.stock().filmEdge() > 0;
        List<PatternSet> sets = plan.pieces().stream()
                .filter(piece -> ownFilm || piece.use() != Piece.Use.FILM)
                .map(piece -> new PatternSet(piece, PageGrid.of(piece.outline(), page)))
                .toList();
        List<Drawing> pages = new ArrayList<>();
        String title = plan.scenario().title();
        List<Drawing> first = new ArrayList<>();
        for (int k = 0; k < sets.size(); k += PatternIndex.ROWS) {
            first.add(new PatternIndex(title, sets.subList(k, Math.min(sets.size(), k + PatternIndex.ROWS)), units));
        }
        first.add(new PlacePage(plan.places()));
        plan.check().ifPresent(check -> first.add(new CheckPage(title, check, units)));
        first.forEach(body -> pages.add(new FootedPage(body, title, unit)));
        sets.forEach(set -> set.addPages(pages, title, unit));
        return pages;
    }

    private void addPages(List<Drawing> pages, String title, double unit) {
        String heading = piece.name() + ", cut " + piece.count() + (title.isEmpty() ? "" : " \u00b7 " + title);
        for (int row = 0; row < grid.rows(); row++) {
            for (int column = 0; column < grid.columns(); column++) {
                pages.add(new PatternPage(piece, grid, column, row, unit, heading));
            }
        }
    }
}
