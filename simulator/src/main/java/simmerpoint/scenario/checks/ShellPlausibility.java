package simmerpoint.scenario.checks;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import simmerpoint.dish.cut.OffAxisShell;
import simmerpoint.dish.cut.ShellTape;
import simmerpoint.units.PlusMinus;
import simmerpoint.units.QuantityWriter;

/** Measures of a shell beside its axis that can be and yet hardly are right, one sentence each. */
final class ShellPlausibility {
    /** A focal length known no better than this is of no use: the pan would stand beside the light (our estimate). */
    private static final double BADLY_KNOWN = 0.1;

    private static final double MILLIMETRE = 0.001;

    private ShellPlausibility() {}

    static List<String> of(OffAxisShell shell) {
        return Stream.of(round(shell), depth(shell), deepest(shell))
                .flatMap(Optional::stream)
                .toList();
    }

    private static Optional<String> round(OffAxisShell shell) {
        return shell.seemsRound()
                ? Optional.of(
                        "dish.surface.width: width equals height as well as the tape tells: this is a round dish, no shell"
                                + " beside its axis; measure both again")
                : Optional.empty();
    }

    private static Optional<String> depth(OffAxisShell shell) {
        ShellTape tape = shell.tape();
        double share = PlusMinus.DEVIATIONS * shell.doubt().of(ShellTape::focalLength) / tape.focalLength();
        return share > BADLY_KNOWN
                ? Optional.of("dish.surface.depth: so shallow a shell has its focus about "
                        + QuantityWriter.length(tape.focalLength()) + " away, known only to ± "
                        + Math.round(100 * share)
                        + " %: 1 mm of depth moves it by "
                        + QuantityWriter.length(MILLIMETRE * tape.focusPerDepth())
                        + "; measure the depth again, below a straight edge across the rim")
                : Optional.empty();
    }

    /** Where the deepest place lies tells a wrong length, a rim that is not plane, or the wrong end. */
    private static Optional<String> deepest(OffAxisShell shell) {
        double found = shell.deepestAt();
        if (found == 0 || shell.seemsRound()) {
            return Optional.empty();
        }
        double height = shell.tape().height();
        if (found > height / 2 && found < height) {
            return Optional.of(
                    "dish.surface.deepest-at: " + QuantityWriter.length(found) + " is more than half the height, "
                            + QuantityWriter.length(height / 2)
                            + ": this would make the other end the near one; measure from the end nearer to the deepest place,"
                            + " and check near-end");
        }
        double expected = shell.tape().deepestAt();
        return Math.abs(found - expected) <= shell.deepestSlack()
                ? Optional.empty()
                : Optional.of("dish.surface.deepest-at: by its width, height and depth the shell is deepest "
                        + QuantityWriter.length(expected) + " from the near end of its rim, not "
                        + QuantityWriter.length(found) + "; measure again, from the end that is nearer the focus");
    }
}
