package simmerpoint.answer.pan;

import java.util.List;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.LevelWords;
import simmerpoint.answer.words.MoveWords;
import simmerpoint.dish.DishPlan;
import simmerpoint.heat.FryingLevel;
import simmerpoint.heat.HeatLevel;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.pan.MoveStudy.Move;
import simmerpoint.study.pan.PanPosition;
import simmerpoint.study.pan.PanResult;

/**
 * What a builder's habit does here: common practice has it that moving pan and dish about 5 cm apart takes a small cooker
 * (0.9 m) from frying to a low heat. Where it does not hold, why.
 */
record FiveCentimetreRule(PanResult result, FigureFormat figures, MoveWords lengths) {
    private static final double STEP = 0.05;
    private static final double NOTHING = 0.01;

    List<String> sentences() {
        return result.moves().stream()
                .filter(move -> move.move() == Move.PULL_BACK || move.move() == Move.SLIDE)
                .filter(move -> move.reaches(STEP) && here().meanFlux() > 0)
                .map(move -> sentence(move.move(), move.at(STEP)))
                .toList();
    }

    private PanPosition here() {
        return result.here();
    }

    private String sentence(Move move, PanPosition there) {
        String start = move == Move.PULL_BACK
                ? "Builders say that 5\u00a0cm (2\u00a0in) between pan and dish make the difference between frying and a low "
                        + "heat. Here, pulling the pan back by that much "
                : "Sliding the dish back by 5\u00a0cm (2\u00a0in) ";
        return start + left(there) + " ("
                + heatChange(there) + "), and the hottest spot of the underside " + fluxChange(there) + " ("
                + fryingChange(there) + "). " + verdict(move, there);
    }

    /** What that does to the watts; one per cent is nothing a cook would notice. */
    private String left(PanPosition there) {
        String before = figures.plainWatts(here().absorbed());
        String after = figures.plainWatts(there.absorbed());
        double gained = there.absorbed().value() / here().absorbed().value() - 1;
        if (gained > NOTHING) {
            return "brings more heat, " + after + " instead of " + before;
        }
        return gained < -NOTHING
                ? "leaves " + after + " of " + before
                : (gained < 0 ? "costs next to no heat, " : "costs no heat, ") + after + " go in instead of " + before;
    }

    private String fluxChange(PanPosition there) {
        return flux(there).equals(flux(here()))
                ? "still has " + flux(here())
                : "has " + flux(there) + " instead of " + flux(here());
    }

    private String flux(PanPosition position) {
        return figures.plainFlux(new Estimate(
                position.peakFlux().value(),
                Math.max(
                        position.peakFlux().standardError(),
                        0.02 * position.peakFlux().value())));
    }

    private String heatChange(PanPosition there) {
        return there.level() == here().level()
                ? "heat level still \u201c" + LevelWords.of(there.level()) + "\u201d"
                : "heat level from \u201c" + LevelWords.of(here().level()) + "\u201d to \u201c"
                        + LevelWords.of(there.level()) + "\u201d";
    }

    private String fryingChange(PanPosition there) {
        return there.frying().level() == here().frying().level()
                ? "frying: still " + name(there.frying().level())
                : "frying: from " + name(here().frying().level()) + " to "
                        + name(there.frying().level());
    }

    private static String name(FryingLevel level) {
        return switch (level) {
            case NO_FRYING -> "none";
            case GENTLE -> "gentle";
            case FRY -> "good";
            case SEAR -> "searing";
        };
    }

    private String verdict(Move move, PanPosition there) {
        boolean fried = here().frying().level().compareTo(FryingLevel.FRY) >= 0;
        boolean lowFrying = there.frying().level().compareTo(FryingLevel.GENTLE) <= 0;
        boolean lowHeat = there.level().compareTo(HeatLevel.SIMMER) <= 0;
        if (fried && lowFrying && lowHeat) {
            return "So the habit holds.";
        }
        if (!fried) {
            return "The habit does not apply: the pan does not fry well where it stands.";
        }
        if (move == Move.SLIDE) {
            return "A slide does not soften the hot spot: it only walks it across the underside, " + lengths.alone(STEP)
                    + " off on a pan that reaches " + lengths.alone(radius()) + " from its middle.";
        }
        if (lowHeat) {
            return "So the habit holds for boiling and not for frying: the hot spot stays hot enough to fry.";
        }
        return lowFrying
                ? "So the habit holds for frying; for boiling it does not, because " + because() + "."
                : "So the habit does not hold: " + because() + ".";
    }

    /** Cone of light from the rim: its width grows by 2·tan(rim angle) per length (derived here). */
    private String because() {
        DishPlan dish = result.base().scenario().dish();
        double rim = dish.radiusMetres();
        double depth = rim * rim / (4 * dish.focalLengthMetres());
        double width = 2 * STEP * rim / (dish.focalLengthMetres() - depth);
        if (width >= 2 * radius()) {
            return "light from the rim is spread over " + lengths.alone(width)
                    + " there, but light from the inner panels, which comes in less aslant, still meets in a small spot";
        }
        return lengths.alone(STEP) + " widen the light from the dish\u2019s rim by only " + lengths.alone(width)
                + ", and the pan is " + lengths.alone(2 * radius()) + " wide, so that most of the light still finds it";
    }

    private double radius() {
        return result.base().scenario().target().radiusMetres();
    }
}
