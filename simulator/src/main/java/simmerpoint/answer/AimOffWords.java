package simmerpoint.answer;

import java.util.Optional;
import simmerpoint.sampling.Estimate;
import simmerpoint.setup.Aim;
import simmerpoint.study.AimResult;

/** Whether a dish is aimed off as it stands, and what that costs: everything else about aiming counts from dead on. */
final class AimOffWords {
    private AimOffWords() {}

    /** Whether more is lost as the scenario aims it than the loss at which one would aim again. */
    static boolean isOff(AimResult result) {
        return result.asAimed().absorbed().value()
                < (1 - result.plan().lossShare()) * result.deadOnWatts().value();
    }

    /** What is off, and what the pan gets; empty where too little is lost to aim again. */
    static Optional<String> sentence(AimResult result, Figures figures) {
        if (!isOff(result)) {
            return Optional.empty();
        }
        String noun = TargetWords.of(result.scenario().target()).noun();
        return Optional.of("It is aimed off now (" + how(result, figures) + "): the " + noun + " gets "
                + figures.plainWatts(result.asAimed().absorbed()) + ", " + compared(result, figures) + ".");
    }

    /** "points 6.3\u00b0 too high, pan on its own stand". */
    static String how(AimResult result, Figures figures) {
        Aim aim = result.scenario().aim();
        Aim alone = new Aim(
                aim.turnUpRadians(),
                aim.turnSideRadians(),
                aim.driftUpRadians(),
                aim.driftSideRadians(),
                0,
                0,
                aim.panCarriedBy());
        TargetWords words = TargetWords.of(result.scenario().target());
        return new AimWords(alone, result.scenario().stand(), words, figures).aiming();
    }

    /** "78 % less than dead on". */
    static String compared(AimResult result, Figures figures) {
        Estimate gained = result.asAimed().absorbedBeyond(result.deadOn().watts());
        if (Math.abs(gained.value()) < 2 * gained.standardError()) {
            return "no less and no more than can be told from dead on";
        }
        double share = Math.abs(gained.value()) / result.deadOnWatts().value();
        return figures.percent(share) + (gained.value() < 0 ? " less" : " more") + " than dead on";
    }
}
