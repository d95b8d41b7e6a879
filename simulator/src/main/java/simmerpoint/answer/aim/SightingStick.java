package simmerpoint.answer.aim;

import java.util.Arrays;
import java.util.OptionalDouble;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.study.aim.AimLead;
import simmerpoint.units.InchLength;
import simmerpoint.units.UnitSystem;

/** How near its foot the shadow of a stick must come, on a longer stick where this one is too short to see it by. */
final class SightingStick {
    /** A shadow this far off its foot can be seen to be off, m: common practice, a sun's shadow has a blurred edge. */
    static final double SEEN = 0.002;

    private static final double[] CENTIMETRES = {20, 40, 60, 100};
    private static final double[] INCHES = {8, 16, 24, 40};

    private SightingStick() {}

    /** ": with a stick 10 cm long, bring the shadow's tip within 3 mm of its foot.". */
    static String words(double stickMetres, double angle, FigureFormat figures) {
        if (AimLead.shadow(stickMetres, angle) >= SEEN) {
            return ": with a stick " + within(stickMetres, angle, figures);
        }
        OptionalDouble longer = longer(stickMetres, angle, figures.system());
        if (longer.isEmpty()) {
            return ": with a stick " + within(stickMetres, angle, figures) + " That is hard to see.";
        }
        return ". A stick " + figures.length(stickMetres) + " long is too short to see that by: with one "
                + within(longer.getAsDouble(), angle, figures);
    }

    /** Where the stick stands. */
    static String where(boolean onWedge) {
        return onWedge ? "square on the wedge" : "on the dish, along its axis";
    }

    private static String within(double stickMetres, double angle, FigureFormat figures) {
        return figures.length(stickMetres) + " long, bring the shadow\u2019s tip within "
                + shadow(AimLead.shadow(stickMetres, angle), figures) + " of its foot.";
    }

    /** Inch rules go to thirty-seconds. */
    private static String shadow(double metres, FigureFormat figures) {
        return figures.system() == UnitSystem.INCH && metres < UnitSystem.INCH.shortUnitMetres()
                ? InchLength.fraction(metres / UnitSystem.INCH.shortUnitMetres(), 32) + FigureFormat.NBSP + "in"
                : figures.length(metres, 2);
    }

    /** The shortest usual stick that will do, else the longest; empty if the given one is as long. */
    private static OptionalDouble longer(double stickMetres, double angle, UnitSystem system) {
        double[] longer = Arrays.stream(system == UnitSystem.INCH ? INCHES : CENTIMETRES)
                .map(length -> length * system.shortUnitMetres())
                .filter(length -> length > stickMetres)
                .toArray();
        return longer.length == 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(Arrays.stream(longer)
                        .filter(length -> AimLead.shadow(length, angle) >= SEEN)
                        .findFirst()
                        .orElse(longer[longer.length - 1]));
    }
}
