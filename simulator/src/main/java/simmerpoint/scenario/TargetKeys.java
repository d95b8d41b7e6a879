package simmerpoint.scenario;

import static simmerpoint.units.Dimension.ANGLE;
import static simmerpoint.units.Dimension.LENGTH;

import java.util.List;

/** The keys of {@code plane} and {@code stand}. */
final class TargetKeys {
    private static final Range SIZE = Range.between(LENGTH, "1 mm", "50 m");
    private static final Range MOVE = Range.between(LENGTH, "-10 m", "10 m");

    private static final Range HEIGHT = Range.between(LENGTH, "0 cm", "50 m");

    private TargetKeys() {}

    static List<Key> keys() {
        KeyMaker plane = KeyMaker.in("plane");
        KeyMaker stand = KeyMaker.in("stand");
        return List.of(
                plane.length("disc", "20 cm", "20 cm", SIZE, "Width of the bare disc that stands in for a pan."),
                plane.angle(
                        "lean",
                        "0°",
                        "40°",
                        Range.inside(ANGLE, "-90°", "90°"),
                        "How far the disc leans from square to the axis; positive as a level pan leans."),
                stand.length(
                        "pull-back", "0 cm", "10 cm", MOVE, "The pan is moved out along the axis, away from the dish."),
                stand.length(
                        "slide", "0 cm", "5 cm", MOVE, "The dish is slid back along the ground, away from the sun."),
                stand.length("raise", "0 cm", "5 cm", MOVE, "The pan is raised."),
                stand.length(
                        "side",
                        "0 cm",
                        "5 cm",
                        MOVE,
                        "The pan is moved sideways; positive to the right of whoever stands behind the dish and faces the sun."),
                stand.length(
                        "tripod-height",
                        "60 cm",
                        "60 cm",
                        Range.between(LENGTH, "1 cm", "50 m"),
                        "Height above the ground of the mount, the point about which the dish is turned."),
                stand.length("lowest-pan", "40 cm", "40 cm", HEIGHT, "Lowest height of the pan at which one can cook."),
                stand.length(
                        "highest-pan",
                        "130 cm",
                        "130 cm",
                        HEIGHT,
                        "Greatest height of the pan at which one can cook."));
    }
}
