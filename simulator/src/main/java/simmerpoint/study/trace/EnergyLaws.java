package simmerpoint.study.trace;

import simmerpoint.dish.MirrorSurface;
import simmerpoint.geometry.Direction;
import simmerpoint.scenario.Scenario;
import simmerpoint.target.Ledger;

/**
 * What no dish can break, looked at after every trace: no more mirror than outline, no more sunlight on the outline than
 * its slopes can meet, no more caught than reflected, no more taken up than lands. A surface that counts light twice is
 * found here, whatever made it.
 */
final class EnergyLaws {
    /** Rays are in single precision, good to 6e-8. */
    private static final double ROUNDING = 1e-6;

    /** More than the angle from the sun's centre at which its widest aureole ends, rad. */
    private static final double SUN_ANGLE = 0.05;

    /** Standard errors allowed to what is sampled, and to the turns of a dish that shakes. */
    private static final double WIDTHS = 6;

    private EnergyLaws() {}

    /** Throws an {@link IllegalStateException} if light came from nowhere. */
    static void check(Ledger ledger, MirrorSurface surface, Scenario scenario) {
        require("mirror seen along the axis, m²,", surface.apertureArea(), surface.outlineArea());
        checkOutline(ledger, surface, scenario);
        double caught = ledger.caught().value();
        require("light caught, W,", caught, ledger.reflected().value());
        double landed = caught + ledger.directOnPan().value();
        require("light taken up, W,", ledger.absorbed().value(), landed);
    }

    /** Where one panel may stand over another a slanting sun reaches between them, and meets more than lies in plan. */
    private static void checkOutline(Ledger ledger, MirrorSurface surface, Scenario scenario) {
        if (surface.blockingPanels().isPresent()) {
            return;
        }
        double outline = ledger.outline().value() - WIDTHS * ledger.outline().standardError();
        double beam = scenario.sun().beamWattsPerSquareMetre();
        require("sunlight on the outline, W,", outline, beam * surface.outlineArea() * mostGain(surface, scenario));
    }

    /**
     * Most sunlight on a place of the outline ÷ that on ground square to the sun. A place that slopes by φ has 1/cos φ of
     * its area in plan, and a sun δ off the axis meets it at φ − δ or more: cos(φ − δ)/cos φ = cos δ + sin δ·tan φ at most
     * (derived here).
     */
    static double mostGain(MirrorSurface surface, Scenario scenario) {
        Direction sun = scenario.setup().sunInDish();
        double shaking = WIDTHS * scenario.aim().jitterRadians();
        double off = Math.acos(Math.max(-1, Math.min(1, sun.vec().z()))) + SUN_ANGLE + shaking;
        double steepest = surface.steepestSlope();
        return steepest < Math.PI / 2
                ? 1 + Math.sin(Math.min(off, Math.PI / 2)) * Math.tan(steepest)
                : Double.POSITIVE_INFINITY;
    }

    private static void require(String what, double value, double most) {
        if (!(value <= most + ROUNDING * Math.abs(most))) {
            throw new IllegalStateException(what + " is " + value + ", more than the " + most + " there can be");
        }
    }
}
