package simmerpoint.scenario;

import static simmerpoint.units.Dimension.ANGLE;
import static simmerpoint.units.Dimension.LENGTH;
import static simmerpoint.units.Dimension.SHARE;

import java.util.List;
import simmerpoint.dish.built.Workmanship;

/** The keys of {@code workmanship}: a maker's tolerances. */
final class WorkmanshipKeys {
    private static final Range OFF = Range.between(LENGTH, "0 mm", "50 mm");

    private WorkmanshipKeys() {}

    static List<Key> keys() {
        KeyMaker work = KeyMaker.in("workmanship");
        return List.of(
                work.length(
                        "rib-cut",
                        "0 mm",
                        "1 mm",
                        OFF,
                        "How far the ribs' edges may be off the curve, plus or minus (one in twenty may be worse)."),
                work.angle(
                        "rib-set",
                        "0°",
                        "0.2°",
                        Range.between(ANGLE, "0°", "10°"),
                        "How much too steep or too flat a rib may stand about its foot at the hub, plus or minus."),
                work.length(
                        "panel-edge",
                        "0 mm",
                        "1 mm",
                        OFF,
                        "How far the panels' edges may be off, plus or minus; short ones leave slits."),
                work.length(
                        "sag",
                        "0 mm",
                        "1 mm",
                        OFF,
                        "How far the sheet may bulge or sag midway between two ribs at the rim, plus or minus."),
                work.length("bubble-height", "0 mm", "0.3 mm", OFF, "Height of bubbles under the film."),
                work.length(
                        "bubble-width",
                        "30 mm",
                        "30 mm",
                        Range.between(LENGTH, "1 mm", "1 m"),
                        "Width of bubbles under the film."),
                work.share(
                        "bubbled",
                        "0 %",
                        "10 %",
                        Range.between(SHARE, "0 %", "100 %"),
                        "Share of the film that lies on bubbles."));
    }

    static Workmanship read(ScenarioValues v) {
        return new Workmanship(
                v.number("workmanship.rib-cut"),
                v.number("workmanship.rib-set"),
                v.number("workmanship.panel-edge"),
                v.number("workmanship.sag"),
                v.number("workmanship.bubble-height"),
                v.number("workmanship.bubble-width"),
                v.number("workmanship.bubbled"));
    }
}
