package simmerpoint.dish.built;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.Profile;
import simmerpoint.dish.RibLayout;

/**
 * One panel between two ribs, or a length of a strip, and the effect of errors of ribs and sheet on it. Squares are in
 * this order: tilt along the ribs and across them, slope along and across, rad². The formulas are those of {@link
 * BuildErrors}.
 *
 * @param weight its share of the area, to a common factor
 * @param length2 square of its length along the rib, m²
 * @param width2 mean square of its widths, m²
 * @param reach2 square of its middle's distance from the ribs' feet, m²
 * @param rimWidth2 square of its sector's width at the rim, m²
 */
record RibPanel(double weight, double length2, double width2, double reach2, double rimWidth2) {
    /** All of one sector; none if the dish has no ribs. */
    static List<RibPanel> of(DishPlan plan) {
        List<RibPanel> panels = new ArrayList<>();
        Optional<RibLayout> ribs = plan.cut().ribs(plan);
        if (ribs.isPresent()) {
            double[] border = ribs.get().borders();
            for (int j = 0; j + 1 < border.length; j++) {
                panels.add(of(plan, ribs.get().sectors(), border[j], border[j + 1]));
            }
        }
        return panels;
    }

    private static RibPanel of(DishPlan plan, int sectors, double inner, double outer) {
        Profile profile = plan.profile();
        double chord = 2 * Math.sin(Math.PI / sectors);
        double middle = (inner + outer) / 2;
        double hub = plan.hubMetres() / 2;
        double rise = profile.height(outer) - profile.height(inner);
        double up = profile.height(middle) - profile.height(hub);
        double rim = chord * plan.radiusMetres();
        return new RibPanel(
                outer * outer - inner * inner,
                (outer - inner) * (outer - inner) + rise * rise,
                chord * chord * (inner * inner + outer * outer) / 2,
                (middle - hub) * (middle - hub) + up * up,
                rim * rim);
    }

    /** Of ribs cut off the curve, {@code metres} the standard deviation at each corner. */
    double[] ribCut(double metres) {
        double s2 = metres * metres;
        return new double[] {s2 / length2, s2 / width2, s2 / (3 * length2), s2 / (3 * width2)};
    }

    /** Of ribs too steep or too flat, {@code radians} the standard deviation of each one's angle. */
    double[] ribSet(double radians) {
        double a2 = radians * radians;
        return new double[] {a2 / 2, 2 * a2 * reach2 / width2, a2 / 6, 0};
    }

    /** Of the sheet bulging or sagging, {@code metres} the standard deviation midway between two ribs at the rim. */
    double[] sag(double metres) {
        double here = metres * width2 / rimWidth2;
        return new double[] {0, 0, 0, 16 * here * here / (3 * width2)};
    }
}
