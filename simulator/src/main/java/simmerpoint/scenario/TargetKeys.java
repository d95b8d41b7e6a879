package simmerpoint.scenario;

import static simmerpoint.units.Dimension.ANGLE;
import static simmerpoint.units.Dimension.LENGTH;

import java.util.List;
import simmerpoint.pan.FinishCatalogue;

/** The keys of {@code pan}, {@code plane} and {@code stand}. */
final class TargetKeys {
    private static final Range SIZE = Range.between(LENGTH, "1 mm", "50 m");
    private static final Range MOVE = Range.between(LENGTH, "-10 m", "10 m");

    private TargetKeys() {}

    static List<Key> keys() {
        KeyMaker pan = KeyMaker.in("pan");
        KeyMaker plane = KeyMaker.in("plane");
        KeyMaker stand = KeyMaker.in("stand");
        return List.of(
                pan.length("diameter", "24 cm", "24 cm", SIZE, "Outer width of the pan; must be less than the dish's."),
                pan.length("height", "11 cm", "11 cm", SIZE, "Height of the pan up to its lid."),
                pan.word("finish", "black enamel", finishes(), "What the outside of the pan is like."),
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
                        "The pan is moved sideways; positive to the right of whoever stands behind the dish and faces the sun."));
    }

    private static List<String> finishes() {
        return FinishCatalogue.all().stream().map(row -> row.finish().name()).toList();
    }
}
