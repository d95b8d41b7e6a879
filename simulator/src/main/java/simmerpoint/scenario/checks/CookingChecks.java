package simmerpoint.scenario.checks;

import java.util.List;
import java.util.Locale;
import simmerpoint.heat.ThermalPan;
import simmerpoint.scenario.Problems;
import simmerpoint.scenario.keys.Key;
import simmerpoint.scenario.keys.Keys;
import simmerpoint.scenario.values.ScenarioValues;

/** What must hold between the keys of {@code pan}, {@code air} and {@code heat-levels}. */
final class CookingChecks {
    private final ScenarioValues v;
    private final Problems problems;

    private CookingChecks(ScenarioValues values, Problems problems) {
        this.v = values;
        this.problems = problems;
    }

    static void check(ScenarioValues values, Problems problems) {
        CookingChecks checks = new CookingChecks(values, problems);
        if (values.hasSection("plane")) {
            checks.refuseKitchenOfPlane();
            checks.refuseSupportOfPlane();
            return;
        }
        checks.lid();
        checks.shape();
        if (!checks.mass()) {
            return;
        }
        checks.water();
        checks.altitude();
        checks.boiling();
        checks.steam();
    }

    private void refuseKitchenOfPlane() {
        for (String section : List.of("air", "heat-levels")) {
            if (v.hasSection(section)) {
                tell(
                        section,
                        "nothing is cooked on a bare disc; leave " + section + " out, or give pan instead of plane");
            }
        }
    }

    private void refuseSupportOfPlane() {
        Keys.all().stream()
                .map(Key::path)
                .filter(path -> path.startsWith("stand.grate.") || path.startsWith("stand.arm."))
                .filter(v::has)
                .forEach(path -> tell(path, "a bare disc has no stand; leave it out, or give pan instead of plane"));
    }

    private void lid() {
        if (v.has("pan.lid-finish") && v.text("pan.lid-material").equals("glass")) {
            tell("pan.lid-finish", "light goes through a lid of glass, so it has no finish; leave one of the two out");
        }
    }

    private void shape() {
        if (v.has("pan.opening") && v.number("pan.opening") > v.number("pan.diameter")) {
            tell("pan.opening", typed("pan.opening") + " is wider than the pan, " + v.shown("pan.diameter"));
        }
        if (!v.text("pan.cover").equals("none") && !v.isOn("pan.lid")) {
            tell("pan.cover", "a second skin needs a closed pan; put the lid on, or leave cover out");
        }
    }

    /** A pan must not weigh less than its underside alone. */
    private boolean mass() {
        double underside = CookingBuilder.undersideKilograms(v);
        if (v.has("pan.mass") && !(v.number("pan.mass") > underside)) {
            tell(
                    "pan.mass",
                    typed("pan.mass") + " is less than the underside weighs alone, which is "
                            + String.format(Locale.ROOT, "%.2f kg", underside));
            return false;
        }
        return true;
    }

    private void water() {
        ThermalPan vessel = CookingBuilder.vessel(v);
        double brimful = vessel.brimfulKilograms();
        if (!(CookingBuilder.water(v, vessel) <= brimful)) {
            tell(
                    "pan.water",
                    typed("pan.water") + " is more than the pan holds, " + litres(brimful)
                            + " to the brim by its outer size");
        }
    }

    private void altitude() {
        boolean both = v.has("air.altitude") && v.has("place.altitude");
        if (both && v.number("air.altitude") != v.number("place.altitude")) {
            tell(
                    "air.altitude",
                    typed("air.altitude") + " is not the altitude of the place, " + typed("place.altitude")
                            + "; keep one of them");
        }
    }

    /** Water cannot start hotter than it boils, nor food be held only where it simmers. */
    private void boiling() {
        double boiling = CookingBuilder.around(v).boilingCelsius();
        if (!(CookingBuilder.celsius(v, "pan.water-temperature") <= boiling)) {
            tell(
                    "pan.water-temperature",
                    typed("pan.water-temperature")
                            + " is hotter than water can be in the open at this altitude, where it boils at "
                            + degrees(boiling));
        }
        double simmer = boiling - v.number("heat-levels.simmer-below-boiling");
        if (!(CookingBuilder.celsius(v, "heat-levels.hold") < simmer)) {
            tell(
                    v.has("heat-levels.hold") ? "heat-levels.hold" : "heat-levels.simmer-below-boiling",
                    "keep warm, from " + typed("heat-levels.hold") + ", must begin below simmer, which begins at "
                            + degrees(simmer) + ", " + typed("heat-levels.simmer-below-boiling")
                            + " below local boiling");
        }
    }

    private void steam() {
        if (!(v.number("heat-levels.boil-steam") < v.number("heat-levels.fast-boil-steam"))) {
            tell(
                    v.has("heat-levels.fast-boil-steam") ? "heat-levels.fast-boil-steam" : "heat-levels.boil-steam",
                    "fast boil, from " + typed("heat-levels.fast-boil-steam")
                            + ", must begin above boil, which begins at " + typed("heat-levels.boil-steam"));
        }
    }

    private String typed(String path) {
        return v.shown(path);
    }

    private static String degrees(double celsius) {
        return String.format(Locale.ROOT, "%.1f °C", celsius);
    }

    private static String litres(double kilograms) {
        return String.format(Locale.ROOT, kilograms < 1 ? "%.2f l" : "%.1f l", kilograms);
    }

    private void tell(String path, String text) {
        problems.add(v.line(path), path, text);
    }
}
