package simmerpoint.viewer.editing;

import java.util.List;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.keys.ZoneKeys;
import simmerpoint.units.UnitSystem;

/** Usual rims of a dish. */
final class RimStarts {
    private static final String SHAPE = "dish.rim.shape";
    private static final String CORNER = "dish.rim.corner-cut";
    private static final String SIDES = "dish.rim.sides";
    private static final String HALF = "dish.rim.half";

    /** What a cut corner takes off each side, as a share of the diameter. */
    private static final double CUT = 0.12;

    private RimStarts() {}

    static List<Start> of(Scenario scenario, UnitSystem units) {
        double corner = CUT * scenario.dish().diameterMetres();
        return List.of(
                Start.of("round", "round")
                        .instead(List.of(SHAPE, "dish.rim.width", CORNER, SIDES, "dish.rim.turned", HALF)),
                Start.of("square", "square", SHAPE, "square").instead(List.of(CORNER, SIDES, HALF)),
                Start.of("corners", "square, corners cut", SHAPE, "square", CORNER, Start.written(corner, units))
                        .instead(List.of(SIDES, HALF)),
                Start.of("eight", "eight sides", SHAPE, "polygon", SIDES, "8").instead(List.of(CORNER, HALF)),
                Start.of("half", "half a dish", HALF, "upper")
                        .instead(List.of(
                                SHAPE,
                                "dish.rim.width",
                                CORNER,
                                SIDES,
                                "dish.rim.turned",
                                ZoneKeys.section("upper"),
                                ZoneKeys.section("lower"))));
    }
}
