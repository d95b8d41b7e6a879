package simmerpoint.dish.built;

import simmerpoint.units.RangeCheck;

/**
 * Tolerances of a maker: every "±" is two standard deviations (common practice), so that one in twenty may be worse.
 * Their effect on light is {@link BuildErrors}.
 *
 * @param ribCutMetres tolerance of the ribs' edges against the curve, ±
 * @param ribSetRadians tolerance of each rib's angle in its own axial plane, about its foot at the hub, ±
 * @param panelEdgeMetres tolerance of the panels' edges, ±
 * @param sagMetres how far the sheet bulges or sags between two ribs at the rim, ±
 * @param bubbleHeightMetres height of the film's bubbles
 * @param bubbleWidthMetres their width, above 0
 * @param bubbledShare share of the film that is bubbles, 0 to 1
 */
public record Workmanship(
        double ribCutMetres,
        double ribSetRadians,
        double panelEdgeMetres,
        double sagMetres,
        double bubbleHeightMetres,
        double bubbleWidthMetres,
        double bubbledShare) {
    /** Checks every figure. */
    public Workmanship {
        RangeCheck.zeroOrMore(ribCutMetres, "rib cut");
        RangeCheck.zeroOrMore(ribSetRadians, "rib set");
        RangeCheck.zeroOrMore(panelEdgeMetres, "panel edge");
        RangeCheck.zeroOrMore(sagMetres, "sag");
        RangeCheck.zeroOrMore(bubbleHeightMetres, "bubble height");
        RangeCheck.positive(bubbleWidthMetres, "bubble width");
        RangeCheck.require(bubbledShare >= 0 && bubbledShare <= 1, "bubbled share", bubbledShare, "0 to 1");
    }

    /** Whether any tolerance concerns ribs. */
    boolean ofRibs() {
        return ribCutMetres > 0 || ribSetRadians > 0 || sagMetres > 0;
    }
}
