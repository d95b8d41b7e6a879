package simmerpoint.answer.cut;

import simmerpoint.study.build.DepthTolerance;
import simmerpoint.units.SawLength;
import simmerpoint.units.UnitSystem;

/** Tolerances as a rule can show them. */
public final class ToleranceWords {
    private static final double SIXTEENTHS = 16;

    private ToleranceWords() {}

    /** Rounded down to what a rule shows: "\u00b1 3 mm"; with "or more" where farther was not looked. */
    public static String of(DepthTolerance tolerance, UnitSystem units) {
        double step = units == UnitSystem.METRIC ? 1e-3 : units.shortUnitMetres() / SIXTEENTHS;
        double steps = Math.max(1, Math.floor(tolerance.metres() / step + 1e-9));
        return "\u00b1\u00a0" + SawLength.text(steps * step, units) + (tolerance.isMore() ? " or more" : "");
    }
}
