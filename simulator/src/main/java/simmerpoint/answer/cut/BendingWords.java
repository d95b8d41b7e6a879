package simmerpoint.answer.cut;

import java.util.Optional;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.dish.sheet.SheetBending;
import simmerpoint.units.SawLength;
import simmerpoint.units.UnitSystem;
import simmerpoint.workshop.CutPlan;
import simmerpoint.workshop.Piece;

/**
 * What bent panels do when nothing holds them.
 *
 * @param plan the dish
 * @param units of the words
 */
record BendingWords(CutPlan plan, UnitSystem units) {
    /** That strips spring back, and what the ribs must hold; empty where panels are flat or their stiffness is not known. */
    Optional<String> springback() {
        boolean bent = plan.panels().stream().anyMatch(Piece::bent);
        double radius = 2 * plan.scenario().dish().focalLengthMetres();
        return plan.bending()
                .filter(sheet -> bent && sheet.springsBackFully(radius))
                .map(sheet -> "Let go, a strip springs back flat"
                        + keeps(sheet)
                        + ": glue or screw it to the ribs all along. Bent to the dish\u2019s curve it pulls with about "
                        + FigureFormat.rounded(sheet.moment(radius), 1) + FigureFormat.NBSP
                        + "N\u00b7m for every metre of its width.");
    }

    /** Only a sharper bend stays, in metal. */
    private String keeps(SheetBending sheet) {
        return sheet.yields()
                ? " (only bends of less than " + SawLength.text(sheet.elasticRadius(), units) + " stay)"
                : "";
    }
}
