package simmerpoint.answer.scenario;

import java.util.ArrayList;
import java.util.List;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.TargetWords;
import simmerpoint.setup.Aim;
import simmerpoint.setup.Stand;
import simmerpoint.units.DecimalFormatter;

/**
 * How a dish is aimed and where its pan stands, without what is 0.
 *
 * @param aim turn, drift, jitter and mount
 * @param stand the moves of the pan
 * @param words what the target is called
 * @param figures formats lengths
 */
public record AimWords(Aim aim, Stand stand, TargetWords words, FigureFormat figures) {
    /** "points 0.5° too high, pan on its own stand". */
    public String aiming() {
        List<String> parts = new ArrayList<>();
        angles(
                parts,
                "points",
                angle(aim.turnUpRadians(), " too high", " too low"),
                angle(aim.turnSideRadians(), " too far right", " too far left"));
        angles(
                parts,
                "the sun has drifted",
                angle(aim.driftUpRadians(), " up", " down"),
                angle(aim.driftSideRadians(), " to the right", " to the left"));
        if (parts.isEmpty()) {
            parts.add("straight at the sun");
        }
        if (aim.jitterRadians() > 0) {
            parts.add("shakes by " + FigureFormat.milliradians(aim.jitterRadians()));
        }
        if (aim.mountMetres() != 0) {
            parts.add("turns about a point " + figures.length(Math.abs(aim.mountMetres()))
                    + (aim.mountMetres() > 0 ? " behind" : " before") + " its middle");
        }
        parts.add(words.noun()
                + (aim.panCarriedBy() == Aim.PanCarrier.DISH ? " carried by the dish" : " on its own stand"));
        return String.join(", ", parts);
    }

    /** "at the focus", "off the focus: pull-back 6 cm". */
    public String place() {
        List<String> parts = new ArrayList<>();
        move(parts, "pull-back", stand.pullBackMetres());
        move(parts, "slide", stand.slideMetres());
        move(parts, "raise", stand.raiseMetres());
        move(parts, "side", stand.sideMetres());
        return parts.isEmpty() ? "at the focus" : "off the focus: " + String.join(", ", parts);
    }

    private void move(List<String> parts, String name, double metres) {
        if (metres != 0) {
            parts.add(name + " " + (metres < 0 ? "\u2212" : "") + figures.length(Math.abs(metres)));
        }
    }

    private static void angles(List<String> parts, String verb, String up, String side) {
        if (!up.isEmpty() || !side.isEmpty()) {
            parts.add(verb + up + (up.isEmpty() || side.isEmpty() ? "" : " and") + side);
        }
    }

    private static String angle(double radians, String positive, String negative) {
        if (radians == 0) {
            return "";
        }
        return " " + DecimalFormatter.stripped(FigureFormat.rounded(Math.abs(Math.toDegrees(radians)), 2)) + "\u00b0"
                + (radians > 0 ? positive : negative);
    }
}
