package simmerpoint.workshop;

import java.util.List;
import simmerpoint.units.SawLength;
import simmerpoint.units.UnitSystem;

/**
 * Whether ribs of that thickness can be stood up.
 *
 * @param rib how they are shaped
 * @param units for lengths in refusals
 */
record RibChecks(RibShape rib, UnitSystem units) {
    /** So that a length asked for is not rounded down, m. */
    private static final double ROUNDING = 1e-3;

    static void check(RibShape rib, UnitSystem units) throws CuttingException {
        new RibChecks(rib, units).check();
    }

    private void check() throws CuttingException {
        ThroughRibs.of(rib).check(units);
        if (rib.hub() > 0 && rib.innerEnd() > rib.hub()) {
            throw new CuttingException(meeting() + " meet " + saw(rib.innerEnd())
                    + " from the middle, outside the hub\u2019s edge at " + saw(rib.hub())
                    + "; take thinner ribs (build.rib-thickness), fewer sectors or a hub of at least "
                    + saw(2 * rib.innerEnd() + ROUNDING) + ".");
        }
        List<CuttingStock.Notch> notches = rib.stock().notches();
        for (CuttingStock.Notch notch : notches) {
            check(notch);
        }
        if (notches.size() == 2
                && notches.get(1).radius() - notches.get(0).radius()
                        <= notches.get(0).width()) {
            throw new CuttingException("two notches in one place cut each other; move them apart (build.notch-at, "
                    + "build.second-notch-at).");
        }
        if (rib.innerEnd() > rib.rim() / 2) {
            throw new CuttingException(meeting() + " fill the dish: they meet " + saw(rib.innerEnd())
                    + " from the middle, and its rim is at " + saw(rib.rim())
                    + "; take thinner ribs (build.rib-thickness) or fewer sectors.");
        }
    }

    private String meeting() {
        return rib.count() + " ribs of " + saw(rib.stock().ribMaterial().thickness());
    }

    private void check(CuttingStock.Notch notch) throws CuttingException {
        double from = notch.radius() - notch.width() / 2;
        double to = notch.radius() + notch.width() / 2;
        if (from <= rib.innerEnd() || to >= rib.outerEnd()) {
            throw new CuttingException("a notch from " + saw(from) + " to " + saw(to)
                    + " from the middle is not within the rib, which reaches from " + saw(rib.innerEnd()) + " to "
                    + saw(rib.outerEnd()) + " (build.notch-at, build.notch-width).");
        }
        double wood = rib.stock().belowCurve() + rib.height(from);
        if (notch.depth() >= wood) {
            throw new CuttingException("a notch " + saw(notch.depth())
                    + " deep cuts the rib in two: there it is only " + saw(wood)
                    + " high; take a shallower notch (build.notch-depth) or more below the curve (build.below-curve).");
        }
    }

    private String saw(double metres) {
        return SawLength.text(metres, units);
    }
}
