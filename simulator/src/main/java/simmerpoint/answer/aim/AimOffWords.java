package simmerpoint.answer.aim;

import java.util.Optional;
import simmerpoint.answer.scenario.AimWords;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.TargetWords;
import simmerpoint.sampling.Estimate;
import simmerpoint.setup.Aim;
import simmerpoint.study.aim.AimTimes;

/** Whether a dish is aimed off as it stands, and what that costs: everything else about aiming counts from dead on. */
final class AimOffWords {
    private AimOffWords() {}

    /** Whether there is anything to lose: some heat when the dish is aimed dead on. */
    static boolean brings(AimTimes times) {
        return times.deadOnWatts().value() > 0;
    }

    /** Whether more is lost as the scenario aims it than the loss at which one would aim again. */
    static boolean isOff(AimTimes times) {
        return brings(times)
                && times.asAimed().useful().value()
                        < (1 - times.plan().lossShare()) * times.deadOnWatts().value();
    }

    /** What is off, and what the pan gets; empty where too little is lost to aim again. */
    static Optional<String> sentence(AimTimes times, FigureFormat figures) {
        if (!isOff(times)) {
            return Optional.empty();
        }
        String noun = TargetWords.of(times.scenario().target()).noun();
        return Optional.of("It is aimed off now (" + how(times, figures) + "): the " + noun + " gets "
                + figures.plainWatts(times.asAimed().useful()) + ", " + compared(times, figures) + ".");
    }

    /** "points 6.3\u00b0 too high, pan on its own stand". */
    static String how(AimTimes times, FigureFormat figures) {
        Aim aim = times.scenario().aim();
        Aim alone = new Aim(
                aim.turnUpRadians(),
                aim.turnSideRadians(),
                aim.driftUpRadians(),
                aim.driftSideRadians(),
                0,
                0,
                aim.panCarriedBy());
        TargetWords words = TargetWords.of(times.scenario().target());
        return new AimWords(alone, times.scenario().stand(), words, figures).aiming();
    }

    /** "78 % less than dead on". */
    static String compared(AimTimes times, FigureFormat figures) {
        Estimate gained = times.asAimed().usefulBeyond(times.deadOn().watts());
        if (Math.abs(gained.value()) < 2 * gained.standardError()) {
            return "no different from dead on as far as can be told";
        }
        double share = Math.abs(gained.value()) / times.deadOnWatts().value();
        return figures.percent(share) + (gained.value() < 0 ? " less" : " more") + " than dead on";
    }
}
