package simmerpoint.study.trace;

import simmerpoint.dish.MirrorSurface;
import simmerpoint.sampling.Estimate;
import simmerpoint.target.Ledger;

/**
 * What no dish can break, looked at after every trace: no more light than the sun sends through the outline, no more mirror
 * than outline, no more taken up than lands. A surface that counts light twice is found here, whatever made it.
 */
final class EnergyLaws {
    private static final double ROUNDING = 1e-9;

    /** Sampling moves the outline's watts by the mean cosine of the sun's rays; so many standard errors of it are passed over. */
    private static final double ERRORS = 8;

    private EnergyLaws() {}

    /** Throws an {@link IllegalStateException} if light came from nowhere. */
    static void check(Ledger ledger, MirrorSurface surface, double beam) {
        Estimate outline = ledger.outline();
        double sent = beam * surface.outlineArea() + ERRORS * outline.standardError();
        require("sunlight on the outline, W,", outline.value(), sent);
        require("mirror seen along the axis, m²,", surface.apertureArea(), surface.outlineArea());
        double landed = ledger.caught().value() + ledger.directOnPan().value();
        require("light taken up, W,", ledger.absorbed().value(), landed);
    }

    private static void require(String what, double value, double most) {
        if (!(value <= most + ROUNDING * Math.abs(most))) {
            throw new IllegalStateException(what + " is " + value + ", more than the " + most + " there can be");
        }
    }
}
