package simmerpoint.quantities;

import java.util.Locale;
import simmerpoint.study.build.ShapeTolerance;

/** How far a whole dish may be off its plan. */
final class ShapeToleranceQuantities {
    /** The key of their rows. */
    static final String KEY = "shape_tolerances";

    static final String LABEL = "what costs a twentieth of the watts, each alone";

    static final Fields<ShapeTolerance> FIELDS = Fields.<ShapeTolerance>none()
            .text(
                    "place",
                    "what is off",
                    t -> t.place().name().toLowerCase(Locale.ROOT).replace('_', '-'))
            .number("span_m", "length over which it is measured; 0 where the place says it", ShapeTolerance::span)
            .number("tolerance_m", "how far off; at random: two standard deviations", ShapeTolerance::metres)
            .flag("more_will_do", "whether that much costs less; farther was not looked", ShapeTolerance::isMore);

    private ShapeToleranceQuantities() {}
}
