package simmerpoint.viewer.live;

import java.util.Optional;
import simmerpoint.scenario.checks.CheckedScenario;

/**
 * How far a study that was asked for has come.
 *
 * @param <R> what it finds
 * @param of what it was asked of last; empty before the first time
 * @param result the newest result; may be that of an earlier question
 * @param resultOf of which scenario that is
 * @param working whether it is being worked on
 * @param done share of that work, 0 to 1
 * @param detail what is being worked on, in a few words; may be empty
 * @param refusal why there is no result, in one sentence
 */
public record StudyRun<R>(
        Optional<CheckedScenario> of,
        Optional<R> result,
        Optional<CheckedScenario> resultOf,
        boolean working,
        double done,
        String detail,
        Optional<String> refusal) {
    /** Before anything was asked. */
    static <R> StudyRun<R> nothingYet() {
        return new StudyRun<>(Optional.empty(), Optional.empty(), Optional.empty(), false, 0, "", Optional.empty());
    }

    StudyRun<R> begun(CheckedScenario read) {
        return new StudyRun<>(Optional.of(read), result, resultOf, true, 0, "", Optional.empty());
    }

    StudyRun<R> at(double share, String words) {
        return new StudyRun<>(of, result, resultOf, true, share, words, Optional.empty());
    }

    StudyRun<R> found(R found) {
        return new StudyRun<>(of, Optional.of(found), of, false, 1, "", Optional.empty());
    }

    StudyRun<R> ended(Optional<String> why) {
        return new StudyRun<>(of, result, resultOf, false, 0, "", why);
    }

    /** Whether it was asked of that very scenario, and is worked on, found or refused. */
    public boolean isOf(CheckedScenario read) {
        return of.filter(asked -> same(asked, read)).isPresent()
                && (working || hasResultOf(read) || refusal.isPresent());
    }

    /** Whether the result is that of this very scenario. */
    public boolean hasResultOf(CheckedScenario read) {
        return result.isPresent() && resultOf.filter(asked -> same(asked, read)).isPresent();
    }

    /** Scenarios are told apart as objects: one that was read anew is another question. */
    private static boolean same(Object one, Object other) {
        return one == other;
    }
}
