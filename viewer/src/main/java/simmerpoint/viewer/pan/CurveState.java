package simmerpoint.viewer.pan;

import java.util.Optional;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.MoveStudy;
import simmerpoint.units.UnitSystem;

/**
 * What is seen on the drawing of the curves.
 *
 * @param pull where the pan stands and what is known along its way
 * @param traced watts taken up where it stands, as traced; empty while they are on their way
 * @param pointed the pull-back that is pointed at, m; empty if none
 * @param units of lengths
 */
record CurveState(PullState pull, Optional<Estimate> traced, Optional<Double> pointed, UnitSystem units) {
    /** What is said below the curves, in one sentence. */
    String sentence() {
        PullWords words = new PullWords(units);
        if (!pull.hasPan()) {
            return "A bare disc has no watts to cook with: the curve is that of a pan.";
        }
        if (pull.line().isEmpty()) {
            return pull.working() ? "The curve is being computed." : "No curve yet.";
        }
        if (!pull.fits()) {
            return pull.working()
                    ? "An earlier curve; the new one is being computed."
                    : "An earlier curve; the new one follows in a pause.";
        }
        double at = pointed.orElse(pull.presentMetres());
        return words.sentence(at, pull.line().get().at(at)) + recommended();
    }

    private String recommended() {
        boolean here = pull.line()
                .flatMap(line -> line.result().simmer())
                .filter(place -> place.move() == MoveStudy.Move.PULL_BACK)
                .isPresent();
        return here ? " The diamond is recommended for a simmer." : "";
    }
}
