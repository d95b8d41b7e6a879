package simmerpoint.answer.cut;

import java.util.Optional;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.units.SawLength;
import simmerpoint.units.UnitSystem;
import simmerpoint.workshop.CutPlan;
import simmerpoint.workshop.MountLoad;
import simmerpoint.workshop.WindLoad;

/**
 * What the dish weighs, what its mount carries and what wind does.
 *
 * @param plan the dish
 * @param units of the words
 */
record WeightWords(CutPlan plan, UnitSystem units) {
    /** A slope error too small to see in the watts (common practice), rad. */
    private static final double SEEN = 1e-3;

    /** A slope error of good film (common practice), rad. */
    private static final double MUCH = 3e-3;

    private static final double FOOT = 0.3048;

    /** Contact glue or spray on one face, kg/m² (typical). */
    private static final double GLUE = 0.2;

    String weight() {
        String ribs = plan.rib().isPresent() ? "ribs " + mass(plan.ribMass()) + ", " : "";
        return "About: " + ribs + "panels " + mass(plan.panelMass()) + ", film " + mass(plan.filmMass()) + "; "
                + mass(plan.mass())
                + " in all, without glue, screws and rim. Film takes some " + mass(GLUE * plan.filmArea())
                + " of glue on " + area(plan.filmArea())
                + ". Densities are typical ones; the shop's sheet may be a fifth off.";
    }

    /** How panels sag where that blurs the light, with advice where it does so as much as film. */
    Optional<String> sag() {
        return plan.sag()
                .filter(sag -> sag.meanSlope() > SEEN)
                .map(sag -> (plan.rib().isPresent()
                                ? "Lying flat between two ribs at the rim, " + SawLength.text(sag.span(), units)
                                        + " apart, a panel"
                                : "Held at its edge alone a tile, " + SawLength.text(sag.span(), units) + " wide,")
                        + " sags by " + figures().length(sag.depth(), 1)
                        + " of its own weight and leans by "
                        + FigureFormat.rounded(1000 * sag.meanSlope(), 1) + FigureFormat.NBSP + "mrad on average"
                        + (sag.meanSlope() > MUCH
                                ? ", as much as rough film: take thicker or stiffer sheet"
                                        + (plan.rib().isPresent()
                                                ? " or more ribs, or bend it tight along the ribs, which stiffens it."
                                                : " or smaller tiles, or bed them all over.")
                                : "."));
    }

    String mount() {
        MountLoad load = plan.mountLoad();
        return "The centre of mass lies " + figures().length(load.centreHeight(), 2)
                + " in front of the dish\u2019s middle and "
                + figures().length(load.lever(), 2) + " from the mount, where the weight pulls with up to "
                + moment(load.weightMoment()) + "; a wind of " + speed(MountLoad.WIND) + " twists it with up to "
                + moment(load.windMoment()) + ". Mount and tripod should hold twice both together, "
                + moment(load.wantedMoment()) + ".";
    }

    String wind() {
        WindLoad wind = plan.wind();
        return tips() + " At " + speed(8) + ", a fresh breeze, it pushes with " + force(wind.force(8))
                + ", and dish and stand together would need " + mass(wind.massFor(8))
                + ". Gusts push harder than the mean wind: turn the dish down or tie it well before that.";
    }

    String tips() {
        return "Wind straight into the dish tips it over its feet from about "
                + speed(plan.wind().tippingSpeed()) + " on.";
    }

    private FigureFormat figures() {
        return new FigureFormat(units);
    }

    private String moment(double newtonMetres) {
        return figure(newtonMetres, "N\u00b7m", UnitSystem.POUND_FORCE_NEWTONS * FOOT, "lbf\u00b7ft");
    }

    private String mass(double kilograms) {
        return figure(kilograms, "kg", UnitSystem.POUND_KILOGRAMS, "lb");
    }

    private String area(double squareMetres) {
        return figure(squareMetres, "m\u00b2", FOOT * FOOT, "ft\u00b2");
    }

    private String force(double newtons) {
        return figure(newtons, "N", UnitSystem.POUND_FORCE_NEWTONS, "lbf");
    }

    private String speed(double metresPerSecond) {
        return figure(metresPerSecond, "m/s", UnitSystem.MILE_PER_HOUR, "mph");
    }

    /** In two digits; {@code other} is how many SI units the inch builder's unit has. */
    private String figure(double si, String siUnit, double other, String otherUnit) {
        boolean metric = units == UnitSystem.METRIC;
        return FigureFormat.rounded(metric ? si : si / other, 2) + FigureFormat.NBSP + (metric ? siUnit : otherUnit);
    }
}
