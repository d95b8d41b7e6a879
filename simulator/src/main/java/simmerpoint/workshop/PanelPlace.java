package simmerpoint.workshop;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.PanelOutline;
import simmerpoint.geometry.Vec;

/**
 * Where a panel goes.
 *
 * @param number counts from 1
 * @param piece name of the piece it is cut as
 * @param edge its corners in the dish frame, m
 * @param middle mean of its corners, dish frame, m
 * @param cantRadians how far it leans from level when the dish lies on its back; of a bent one the mean
 */
public record PanelPlace(int number, String piece, List<Vec> edge, Vec middle, double cantRadians) {
    /** Of every panel, by number. */
    static List<PanelPlace> of(DishPlan plan, List<Piece> pieces) {
        List<PanelPlace> all = new ArrayList<>();
        for (PanelOutline outline : plan.outlines()) {
            pieces.stream()
                    .filter(piece -> piece.panels().contains(outline.panel()))
                    .findFirst()
                    .ifPresent(piece -> all.add(of(outline, piece)));
        }
        all.sort(Comparator.comparingInt(PanelPlace::number));
        return all;
    }

    private static PanelPlace of(PanelOutline outline, Piece piece) {
        List<Vec> edge = outline.edge();
        Vec area = Vec.area(edge);
        double cant = Math.acos(Math.min(1, Math.abs(area.z()) / area.length()));
        return new PanelPlace(outline.panel() + 1, piece.name(), edge, Vec.mean(edge), cant);
    }
}
