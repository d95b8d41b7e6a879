package simmerpoint.scenario.checks;

import java.util.Optional;
import java.util.TreeSet;
import simmerpoint.scenario.Problems;
import simmerpoint.scenario.keys.CutKeys;
import simmerpoint.scenario.keys.Key;
import simmerpoint.scenario.keys.Keys;
import simmerpoint.scenario.values.ScenarioValues;

/** Which keys must be there and which must not, given the cut of the dish and the kinds of sun and sky. */
final class KeyPresenceChecks {
    private final ScenarioValues values;
    private final Problems problems;

    private KeyPresenceChecks(ScenarioValues values, Problems problems) {
        this.values = values;
        this.problems = problems;
    }

    static void check(ScenarioValues values, Problems problems) {
        KeyPresenceChecks check = new KeyPresenceChecks(values, problems);
        Keys.all().forEach(check::check);
        check.panOrPlane();
    }

    private void check(Key key) {
        String chooser = Keys.CHOOSERS.get(key.section());
        if (chooser == null || key.onlyFor().isEmpty()) {
            requireIfNeeded(key);
            return;
        }
        if (problems.isSpoilt(chooser) || isMissing(chooser)) {
            return;
        }
        String chosen = values.text(chooser);
        if (key.onlyFor().contains(chosen)) {
            requireIfNeeded(key);
        } else if (values.has(key.path())) {
            refuseInapplicable(key, chooser, chosen);
        }
    }

    /** The cut's word; empty if none is given. */
    private String cut() {
        return values.has(CutKeys.CUT) ? values.text(CutKeys.CUT) : "";
    }

    private boolean isMissing(String path) {
        return Keys.get(path).required() && !values.has(path);
    }

    private void refuseInapplicable(Key key, String chooser, String chosen) {
        String name = chooser.substring(chooser.lastIndexOf('.') + 1);
        problems.add(
                values.line(key.path()),
                key.path(),
                key.name() + " does not belong to " + name + " " + chosen + ", only to "
                        + String.join(", ", new TreeSet<>(key.onlyFor())));
    }

    private void requireIfNeeded(Key key) {
        if (!key.required()
                || values.has(key.path())
                || problems.isSpoilt(key.path())
                || CutKeys.inapplicable(cut()).contains(key.path())) {
            return;
        }
        String section = key.section();
        if (Keys.OPTIONAL.contains(section) && !values.hasSection(section)) {
            return;
        }
        while (!section.isEmpty() && !values.hasSection(section)) {
            String parent = Key.sectionOf(section);
            if (parent.isEmpty() || values.hasSection(parent)) {
                missingSection(section);
                return;
            }
            section = parent;
        }
        if (!problems.isSpoilt(section)) {
            problems.addMissing(values.line(section), key.path(), "this key is missing; " + missing(key));
        }
    }

    private String missing(Key key) {
        return Optional.of(key.path())
                .filter("dish.diameter"::equals)
                .flatMap(path -> RimValues.neededDiameter(values))
                .map(across -> "the corners of this rim are on a circle " + across + " wide: write diameter: " + across)
                .orElse("write for instance " + key.name() + ": " + key.example());
    }

    private void missingSection(String section) {
        if (!problems.isSpoilt(section)) {
            String example = section.equals("dish")
                    ? "a scenario needs it, with diameter, focal-length and surface"
                    : "write for instance surface: {cut: flat-rings, sectors: 24, rings: 6}";
            problems.addMissing(values.line(section), section, "this section is missing; " + example);
        }
    }

    private void panOrPlane() {
        if (values.hasSection("pan") && values.hasSection("plane")) {
            int line = Math.max(values.line("pan"), values.line("plane"));
            problems.add(line, "plane", "pan and plane are both given; keep one of them");
        }
    }
}
