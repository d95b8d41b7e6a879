package simmerpoint.answer.pan;

import java.util.List;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.LevelWords;
import simmerpoint.answer.words.MoveWords;
import simmerpoint.dish.DishPlan;
import simmerpoint.heat.FryingLevel;
import simmerpoint.heat.GasBurner;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.pan.MoveStudy.Move;
import simmerpoint.study.pan.PanPosition;
import simmerpoint.study.pan.PanResult;

/**
 * What a builder's rule of thumb does here: common practice has it that moving pan and dish about 5 cm apart takes a small cooker
 * (0.9 m) from frying to a low heat. Where it does not hold, why.
 */
record FiveCentimetreRule(PanResult result, FigureFormat figures, MoveWords lengths) {
    private static final double STEP = 0.05;
    private static final double NOTHING = 0.01;

    /** A low flame at its strongest is this share of a small ring on full: what counts as a low heat. */
    private static final double LOW =
            GasBurner.LOW_FLAME.high() / GasBurner.ALL.get(0).watts();

    /** What keeps so much of its heat has hardly changed (this project's choice). */
    private static final double NEARLY_ALL = 0.8;

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
                ? "A builders\u2019 rule of thumb says that 5\u00a0cm (2\u00a0in) between pan and dish make the difference between frying and a low "
                        + "heat. Here, pulling the pan back by that much "
                : "Sliding the dish back by 5\u00a0cm (2\u00a0in) ";
        return start + left(there) + " ("
                + heatChange(there) + "), and the hottest spot of the underside " + fluxChange(there) + " ("
                + fryingChange(there) + "). " + verdict(move, there);
    }

    /** What that does to the watts; one per cent is nothing a cook would notice. */
    private String left(PanPosition there) {
        String before = figures.plainWatts(here().cookingPower());
        String after = figures.plainWatts(there.cookingPower());
        double gained =
                share(there.cookingPower().value(), here().cookingPower().value()) - 1;
        if (gained > NOTHING) {
            return "brings more heat, " + after + " instead of " + before;
        }
        return gained < -NOTHING
                ? "leaves " + after + " of " + before
                : (gained < 0 ? "costs next to no heat, " : "costs no heat, ") + after
                        + " go into the water instead of " + before;
    }

    /** Where nothing went into the water before, all of it is left. */
    private static double share(double after, double before) {
        return before > 0 ? after / before : 1;
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

    /** By how far boiling and frying change, wherever the borders of the levels lie. */
    private String verdict(Move move, PanPosition there) {
        double boil = share(there.cookingPower().value(), here().cookingPower().value());
        double fry = share(there.middleFlux(), here().middleFlux());
        if (here().frying().level().compareTo(FryingLevel.FRY) < 0) {
            return "The rule of thumb does not apply: the pan does not fry well where it stands.";
        }
        if (boil <= LOW && fry <= LOW) {
            return "So the rule of thumb holds.";
        }
        if (move == Move.SLIDE) {
            return "A slide does not soften the hot spot: it only shifts it across the underside, "
                    + lengths.alone(STEP) + " off on a pan that reaches " + lengths.alone(radius())
                    + " from its middle.";
        }
        if (boil > NEARLY_ALL && fry > NEARLY_ALL) {
            return "So the rule of thumb does not hold: " + because() + ".";
        }
        return "So the rule of thumb holds in part: the heat for boiling falls to " + percent(boil)
                + " and that for frying, in the pan\u2019s middle, to " + percent(fry)
                + ", while a low flame is under " + percent(LOW) + " of a small ring."
                + (boil > NEARLY_ALL ? " Boiling hardly changes, because " + because() + "." : "");
    }

    private String percent(double share) {
        return figures.percent(Math.max(0, share));
    }

    /** Cone of light from the rim: its width grows by 2·tan(rim angle) per length (derived here). */
    private String because() {
        DishPlan dish = result.base().scenario().dish();
        double width = STEP * (perLength(dish, dish.upperEdgeMetres()) + perLength(dish, dish.lowerEdgeMetres()));
        if (width >= 2 * radius()) {
            return "light from the rim is spread over " + lengths.alone(width)
                    + " there, but light from the inner panels, which comes in less steeply, still meets in a small spot";
        }
        return lengths.alone(STEP) + " widen the light from the dish\u2019s rim by only " + lengths.alone(width)
                + ", and the pan is " + lengths.alone(2 * radius()) + " wide, so most of the light still hits it";
    }

    /** How far light from a place of the rim goes sideways beyond the focus, per length along the axis. */
    private static double perLength(DishPlan dish, double fromAxis) {
        return Math.tan(dish.parabola().rimAngle(fromAxis));
    }

    private double radius() {
        return result.base().scenario().target().radiusMetres();
    }
}
