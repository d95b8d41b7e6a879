package simmerpoint.study.trace;

import simmerpoint.dish.MirrorSurface;
import simmerpoint.target.Ledger;

/**
 * What no dish can break, looked at after every trace: no more mirror than outline, no more caught than reflected, no more
 * taken up than lands. A surface that counts light twice is found here, whatever made it. Sunlight on the outline has no such
 * bound: a sun off the axis sees more of an uneven rim than lies in plan.
 */
final class EnergyLaws {
    private static final double ROUNDING = 1e-9;

    private EnergyLaws() {}

    /** Throws an {@link IllegalStateException} if light came from nowhere. */
    static void check(Ledger ledger, MirrorSurface surface) {
        require("mirror seen along the axis, m²,", surface.apertureArea(), surface.outlineArea());
        double caught = ledger.caught().value();
        require("light caught, W,", caught, ledger.reflected().value());
        double landed = caught + ledger.directOnPan().value();
        require("light taken up, W,", ledger.absorbed().value(), landed);
    }

    private static void require(String what, double value, double most) {
        if (!(value <= most + ROUNDING * Math.abs(most))) {
            throw new IllegalStateException(what + " is " + value + ", more than the " + most + " there can be");
        }
    }
}
