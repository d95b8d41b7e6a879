package simmerpoint.workshop;

import java.util.List;
import java.util.Locale;

/** Whether ribs of that thickness can be stood up. */
final class RibChecks {
    private RibChecks() {}

    static void check(RibShape rib) throws CuttingException {
        ThroughRibs.of(rib).check();
        double thickness = rib.stock().ribMaterial().thickness();
        if (rib.hub() > 0 && rib.innerEnd() > rib.hub()) {
            throw new CuttingException(String.format(
                    Locale.ROOT,
                    "%d ribs of %.1f mm meet %.0f mm from the middle, outside the hub's edge at %.0f mm; take thinner ribs "
                            + "(build.rib-thickness), fewer sectors or a hub of at least %.0f mm.",
                    rib.count(),
                    1000 * thickness,
                    1000 * rib.innerEnd(),
                    1000 * rib.hub(),
                    Math.ceil(2000 * rib.innerEnd())));
        }
        List<CuttingStock.Notch> notches = rib.stock().notches();
        for (CuttingStock.Notch notch : notches) {
            check(rib, notch);
        }
        if (notches.size() == 2
                && notches.get(1).radius() - notches.get(0).radius()
                        <= notches.get(0).width()) {
            throw new CuttingException("two notches in one place cut each other; move them apart (build.notch-at, "
                    + "build.second-notch-at).");
        }
        if (rib.innerEnd() > rib.rim() / 2) {
            throw new CuttingException(String.format(
                    Locale.ROOT,
                    "%d ribs of %.1f mm fill the dish: they meet %.0f mm from the middle, and its rim is at %.0f mm; take thinner "
                            + "ribs (build.rib-thickness) or fewer sectors.",
                    rib.count(),
                    1000 * thickness,
                    1000 * rib.innerEnd(),
                    1000 * rib.rim()));
        }
    }

    private static void check(RibShape rib, CuttingStock.Notch notch) throws CuttingException {
        double from = notch.radius() - notch.width() / 2;
        double to = notch.radius() + notch.width() / 2;
        if (from <= rib.innerEnd() || to >= rib.outerEnd()) {
            throw new CuttingException(String.format(
                    Locale.ROOT,
                    "a notch from %.0f to %.0f mm from the middle is not within the rib, which reaches from %.0f to %.0f mm "
                            + "(build.notch-at, build.notch-width).",
                    1000 * from,
                    1000 * to,
                    1000 * rib.innerEnd(),
                    1000 * rib.outerEnd()));
        }
        double wood = rib.stock().belowCurve() + rib.height(from);
        if (notch.depth() >= wood) {
            throw new CuttingException(String.format(
                    Locale.ROOT,
                    "a notch %.0f mm deep cuts the rib in two: there it is only %.0f mm high; take a shallower notch "
                            + "(build.notch-depth) or more below the curve (build.below-curve).",
                    1000 * notch.depth(),
                    1000 * wood));
        }
    }
}
