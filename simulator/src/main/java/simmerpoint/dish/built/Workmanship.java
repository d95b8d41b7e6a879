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
        RangeCheck.require(ribCutMetres >= 0 && ribCutMetres < 1, "rib cut", ribCutMetres, "0 to 1 m");
        RangeCheck.require(ribSetRadians >= 0 && ribSetRadians < 1, "rib set", ribSetRadians, "0 to 1 rad");
        RangeCheck.require(panelEdgeMetres >= 0 && panelEdgeMetres < 1, "panel edge", panelEdgeMetres, "0 to 1 m");
        RangeCheck.require(sagMetres >= 0 && sagMetres < 1, "sag", sagMetres, "0 to 1 m");
        RangeCheck.require(bubbleHeightMetres >= 0 && bubbleHeightMetres < 1, "bubble", bubbleHeightMetres, "0 to 1 m");
        RangeCheck.require(bubbleWidthMetres > 0 && bubbleWidthMetres < 1, "bubble", bubbleWidthMetres, "above 0 m");
        RangeCheck.require(bubbledShare >= 0 && bubbledShare <= 1, "bubbled share", bubbledShare, "0 to 1");
    }

    /** Whether any tolerance concerns ribs. */
    boolean ofRibs() {
        return ribCutMetres > 0 || ribSetRadians > 0 || sagMetres > 0;
    }
}
