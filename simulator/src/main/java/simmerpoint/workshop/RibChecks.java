package simmerpoint.workshop;

import java.util.Locale;

/** Whether ribs of that thickness can be stood up. */
final class RibChecks {
    private RibChecks() {}

    static void check(RibShape rib) throws CuttingException {
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
}
