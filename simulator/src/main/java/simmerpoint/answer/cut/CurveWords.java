package simmerpoint.answer.cut;

import java.util.Optional;
import simmerpoint.answer.Section;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.dish.DishPlan;
import simmerpoint.study.build.BuildTrace;
import simmerpoint.units.SawLength;
import simmerpoint.units.UnitSystem;
import simmerpoint.workshop.CutPlan;
import simmerpoint.workshop.RibShape;

/**
 * How to draw a curve that is no parabola, how far it is from one, and what that costs.
 *
 * @param plan the dish
 * @param rib its ribs
 * @param units for lengths
 */
record CurveWords(CutPlan plan, RibShape rib, UnitSystem units) {
    /** Empty for a parabola. */
    Optional<Section> section() {
        DishPlan dish = plan.scenario().dish();
        return switch (dish.cut().curve()) {
            case PARABOLA -> Optional.empty();
            case CIRCLE ->
                Optional.of(section("Drawing the curve with a string", circle(2 * dish.focalLengthMetres())));
            case HANGING_CHAIN -> Optional.of(section("Drawing the curve with a chain", chain()));
        };
    }

    private Section section(String heading, String drawing) {
        return Section.headed(heading)
                .say(drawing)
                .say("To check: the curve is " + saw(rib.depth()) + " high at the rim, and "
                        + saw(rib.profile().height(rib.rim() / 2)) + " at half that distance, " + saw(rib.rim() / 2)
                        + " from the middle.")
                .say(
                        plan.trace()
                                .flatMap(BuildTrace::parabolaGain)
                                .map(
                                        gain -> "A parabola would gain "
                                                + new FigureFormat(units).watts(gain)
                                                + " with the pan where it stands. \u2018simmerpoint pan\u2019 says where it does best."))
                .build();
    }

    private String circle(double radius) {
        return "Drive a pin into the axis " + saw(radius)
                + " above the middle of the dish. A pencil on a string or lath " + saw(radius)
                + " long that turns about it draws the curve.";
    }

    /** The parabola through the same rim and middle is the plan's own. */
    private String chain() {
        double middle = 0.7 * rib.rim();
        double below =
                plan.scenario().dish().parabola().height(middle) - rib.profile().height(middle);
        return "Drive two nails into a wall, level and " + saw(2 * rib.rim()) + " apart. Hang a fine chain from them, "
                + saw(2 * rib.arc()) + " of it between the nails: its middle must hang " + saw(rib.depth())
                + " below them. It lies up to " + new FigureFormat(units).length(below, 1)
                + " below the parabola as deep.";
    }

    private String saw(double metres) {
        return SawLength.text(metres, units);
    }
}
