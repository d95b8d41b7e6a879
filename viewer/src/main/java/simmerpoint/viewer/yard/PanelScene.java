package simmerpoint.viewer.yard;

import java.util.Optional;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.TargetWords;
import simmerpoint.sampling.Estimate;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.light.PanelWatts;

/**
 * What the view along the axis shows.
 *
 * @param scenario what it is
 * @param watts what is known of its panels
 * @param chosen number of the panel pointed at; below 0 for none
 */
record PanelScene(Scenario scenario, Optional<PanelWatts> watts, int chosen) {
    private static final double BARELY = 1e-9;

    /** The longest words, but for what is wrong. */
    static final String LONGEST =
            "99.9 % of the light from all panels reaches the disc. Point at a panel to read its own share.";

    /** Share of a panel's light that lands; not a number where none leaves it. */
    double share(int panel) {
        return watts.filter(w -> panel < w.panels() && w.reflected(panel) > BARELY)
                .map(w -> w.share(panel).value())
                .orElse(Double.NaN);
    }

    /** What there is to say of the chosen panel, or of the worst one. */
    String words() {
        if (watts.isEmpty()) {
            return "";
        }
        if (chosen >= 0 && chosen < watts.get().panels()) {
            String zone =
                    scenario.dish().zoneOf(chosen).map(name -> ", " + name).orElse("");
            return "Panel " + (chosen + 1) + zone + ": " + words(watts.get(), chosen);
        }
        String noun = TargetWords.of(scenario.target()).noun();
        double reflected = 0;
        double caught = 0;
        for (int k = 0; k < watts.get().panels(); k++) {
            reflected += watts.get().reflected(k);
            caught += watts.get().caught(k);
        }
        String all =
                reflected > 0 ? new FigureFormat(simmerpoint.units.UnitSystem.METRIC).percent(caught / reflected) : "0";
        return all + " of the light from all panels reaches the " + noun + ". Point at a panel to read its own share.";
    }

    private String words(PanelWatts w, int panel) {
        if (!(w.reflected(panel) > BARELY)) {
            return "no light leaves it; the "
                    + TargetWords.of(scenario.target()).noun() + " stands in its sun.";
        }
        Estimate share = w.share(panel);
        String error = FigureFormat.fixed(Math.max(1, Math.ceil(100 * share.standardError())), 0);
        return "sends " + FigureFormat.rounded(w.reflected(panel), 2) + FigureFormat.NBSP + "W, of which "
                + FigureFormat.fixed(100 * share.value(), 0) + FigureFormat.NBSP + "±" + FigureFormat.NBSP + error
                + FigureFormat.NBSP
                + "% (" + FigureFormat.rounded(w.caught(panel), 2) + FigureFormat.NBSP + "W) reach the "
                + TargetWords.of(scenario.target()).noun() + ".";
    }
}
