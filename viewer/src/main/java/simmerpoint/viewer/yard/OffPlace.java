package simmerpoint.viewer.yard;

import java.util.ArrayList;
import java.util.List;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.HeightWords;
import simmerpoint.pan.Pan;
import simmerpoint.scenario.Scenario;
import simmerpoint.setup.Aim;
import simmerpoint.setup.Stand;
import simmerpoint.units.UnitSystem;

/** How far pan, dish and sun are from where they would be at best, in a builder's words and without what is 0. */
record OffPlace(UnitSystem system) {
    private static final double NONE = 5e-5;
    private static final double LEAST_DEGREES = 0.05;

    /** The same as {@link #words(Scenario)}, and whether one can cook at a pan whose underside stands so high, m. */
    String words(Scenario scenario, double panHeightMetres) {
        String moved = words(scenario);
        String reach = new HeightWords(scenario.heights(), new FigureFormat(system))
                .outOfReach(panHeightMetres)
                .filter(beyond -> scenario.target() instanceof Pan && panHeightMetres > 0)
                .map(beyond -> "The pan stands " + beyond + ".")
                .orElse("");
        return moved.isEmpty() || reach.isEmpty() ? moved + reach : moved + ". " + reach;
    }

    /** For instance "Pan raised 3 cm; dish slid back 2 cm, turned down 6.3°"; empty if all is 0. */
    String words(Scenario scenario) {
        Stand stand = scenario.stand();
        Aim aim = scenario.aim();
        List<String> all = new ArrayList<>();
        String noun = simmerpoint.answer.words.TargetWords.of(scenario.target()).noun();
        join(
                all,
                noun,
                pulled(stand.pullBackMetres()),
                raised(stand.raiseMetres()),
                length(stand.sideMetres(), "", " to the right", " to the left"));
        join(all, "dish", slid(stand.slideMetres()), angles("turned", aim.turnUpRadians(), aim.turnSideRadians()));
        join(all, "sun", angles("drifted", aim.driftUpRadians(), aim.driftSideRadians()));
        String said = String.join("; ", all);
        return said.isEmpty() ? "" : said.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + said.substring(1);
    }

    private static void join(List<String> all, String what, String... parts) {
        List<String> told =
                List.of(parts).stream().filter(part -> !part.isEmpty()).toList();
        if (!told.isEmpty()) {
            all.add(what + " " + String.join(", ", told));
        }
    }

    /** "pulled back 3 cm", "3 cm nearer the dish"; empty for 0, as the others here. */
    String pulled(double metres) {
        return metres < 0 ? length(metres, "", "", " nearer the dish") : length(metres, "pulled back ", "", "");
    }

    /** "raised 3 cm", "lowered 3 cm". */
    String raised(double metres) {
        return length(metres, metres < 0 ? "lowered " : "raised ", "", "");
    }

    /** "slid back 3 cm", "slid forward 3 cm". */
    String slid(double metres) {
        return length(metres, metres < 0 ? "slid forward " : "slid back ", "", "");
    }

    /** "turned up 2°", "turned down 2°". */
    static String turned(double radians) {
        return angles("turned", radians, 0);
    }

    private static String angles(String verb, double up, double side) {
        String high = degrees(up);
        String wide = degrees(side);
        String first = high.isEmpty() ? "" : " " + (up < 0 ? "down " : "up ") + high;
        String second = wide.isEmpty() ? "" : " " + wide + (side < 0 ? " to the left" : " to the right");
        String and = first.isEmpty() || second.isEmpty() ? "" : " and";
        return first.isEmpty() && second.isEmpty() ? "" : verb + first + and + second;
    }

    private static String degrees(double radians) {
        double degrees = Math.abs(Math.toDegrees(radians));
        return degrees < LEAST_DEGREES ? "" : FigureFormat.fixed(degrees, 1).replaceAll("\\.0$", "") + "\u00b0";
    }

    private String length(double metres, String before, String positive, String negative) {
        return Math.abs(metres) < NONE
                ? ""
                : before + new FigureFormat(system).length(Math.abs(metres)) + (metres < 0 ? negative : positive);
    }
}
