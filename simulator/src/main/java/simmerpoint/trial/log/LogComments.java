package simmerpoint.trial.log;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.keys.KeyAssignment;

/** Comments that set something for one log: {@code # stand.pull-back: 8 cm}, {@code # sun: none}. All others are only words. */
final class LogComments {
    /** A key of the scenario has a dot in it and no space; what follows it stands behind a colon or an equals sign. */
    private static final Pattern SETTING = Pattern.compile("#+\\s*([a-z][a-z-]*(?:\\.[a-z][a-z-]*)+)\\s*[:=]\\s*(.*)");

    private static final Pattern SUN = Pattern.compile("#+\\s*sun\\s*[:=]\\s*(.*)");
    private static final String EXAMPLE = "stand.pull-back: 8 cm";

    private final Map<String, String> settings = new LinkedHashMap<>();
    private boolean sunless;

    /** Takes one; what is wrong with it, or nothing. */
    String take(String comment) {
        Matcher sun = SUN.matcher(comment);
        if (sun.matches()) {
            sunless = sun.group(1).strip().toLowerCase(Locale.ROOT).equals("none");
            return sunless
                    ? ""
                    : "behind sun only none is allowed; measured sunlight goes into a column, irradiance_W_m2 or beam_W_m2";
        }
        Matcher setting = SETTING.matcher(comment);
        return setting.matches() ? take(setting.group(1), setting.group(2)) : "";
    }

    private String take(String path, String value) {
        try {
            KeyAssignment assignment = KeyAssignment.parse("#", path + "=" + value, EXAMPLE);
            String typed = assignment.checkedValue();
            return settings.put(assignment.key().path(), typed) == null ? "" : path + " is set twice; once is enough";
        } catch (ScenarioException e) {
            return path + ": " + e.problems().get(0).text();
        }
    }

    Map<String, String> settings() {
        return settings;
    }

    boolean sunless() {
        return sunless;
    }
}
