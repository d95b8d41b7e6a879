package simmerpoint.answer.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.HeatWords;
import simmerpoint.answer.words.LikelyWords;
import simmerpoint.heat.balance.StandardCookingPower;
import simmerpoint.quantities.OneLine;
import simmerpoint.sampling.Estimate;
import simmerpoint.trial.BoilTrial;
import simmerpoint.trial.TrialNote;
import simmerpoint.trial.TrialResult;
import simmerpoint.trial.fit.TrialFit;
import simmerpoint.trial.log.TrialLog;
import simmerpoint.trial.power.PowerTest;
import simmerpoint.trial.power.ProtocolTest;
import simmerpoint.units.UnitSystem;

/**
 * Sentences about a trial.
 *
 * @param result what logs say
 * @param figures in the reader's units
 */
record TrialWords(TrialResult result, FigureFormat figures) {
    static final String NO_FLAW = "nothing beyond the usual doubts";

    private static final int RIVALS = 3;

    TrialWords(TrialResult result, UnitSystem units) {
        this(result, new FigureFormat(units));
    }

    private HeatWords heat() {
        return new HeatWords(figures.system());
    }

    /** What it did, and what was expected of it. */
    String verdict() {
        return result.boil()
                .map(this::verdict)
                .orElseGet(() -> result.protocol()
                        .map(p -> "The pan loses " + perKelvin(p))
                        .orElse("These logs tell nothing of this cooker"));
    }

    private String verdict(BoilTrial boil) {
        String water = heat().water(result.pan().waterKilograms());
        String expected =
                boil.expected().boil().map(outcome -> heat().boil(outcome)).orElse("");
        String did = boil.measuredSeconds().isPresent()
                ? water + " boiled in " + HeatWords.time(boil.measuredSeconds().getAsDouble())
                : water + " came to " + heat().temperature(boil.warmestCelsius());
        return did + "; expected: it " + expected;
    }

    /** Watts now and before, in the light of the log. */
    String power(TrialFit fit) {
        Estimate now = new Estimate(fit.watts(), fit.error());
        return "About " + figures.plainWatts(now) + " (95\u00a0% sure: " + interval(fit.lowWatts(), fit.highWatts())
                + ") go into the water in this trial\u2019s light, at 50\u00a0K above the air. The model expected "
                + LikelyWords.power(fit.expected()) + ".";
    }

    /** Logs that cannot be of one cooker as it stood. */
    Optional<String> disagreement() {
        return result.disagreement()
                .map(apart -> "These logs disagree: " + name(apart.stronger()) + " gives "
                        + FigureFormat.fixed(apart.most(), 0) + FigureFormat.NBSP + "W at 50\u00a0K above the air, "
                        + name(apart.weaker()) + " " + FigureFormat.fixed(apart.least(), 0) + FigureFormat.NBSP
                        + "W, farther apart than chance explains. Are they of one cooker, with the pan in the same place? All else here"
                        + " takes them for one.");
    }

    private static String name(TrialLog log) {
        return log.file().getFileName().toString();
    }

    private String interval(double low, double high) {
        double step = high - low > 30 ? 10 : 1;
        return FigureFormat.span(
                        FigureFormat.fixed(step * Math.round(low / step), 0),
                        FigureFormat.fixed(step * Math.round(high / step), 0))
                + FigureFormat.NBSP + "W";
    }

    /** Name of the figure that the standard's line gives. */
    String powerName() {
        return switch (result.power().map(PowerTest::basis).orElse(PowerTest.Basis.NOTHING)) {
            case IRRADIANCE -> "standard cooking power";
            case BEAM -> "power at 700 W/m² of beam";
            case NOTHING -> "power, light not measured";
        };
    }

    /** The figure with its interval. */
    Optional<String> powerFigure() {
        return result.line().map(this::powerFigure);
    }

    private String powerFigure(StandardCookingPower.Line line) {
        double half = line.halfWidthWatts(PowerTest.CONFIDENCE);
        double value = line.standardPowerWatts();
        int intervals = line.fit().points();
        return interval(value, value) + " (95\u00a0% sure: " + interval(value - half, value + half) + "), from "
                + intervals + " intervals of ten minutes";
    }

    /** "2.3 W/K (95 % sure: 1.9 to 2.7)". */
    String perKelvin(ProtocolTest protocol) {
        int digits = protocol.high() - protocol.low() < 0.2 ? 2 : 1;
        String low = FigureFormat.fixed(protocol.low(), digits);
        String high = FigureFormat.fixed(protocol.high(), digits);
        return FigureFormat.fixed(protocol.lossWattsPerKelvin(), digits) + FigureFormat.NBSP + "W/K (95\u00a0% sure: "
                + FigureFormat.span(low, high) + ")";
    }

    Optional<String> lossFigure() {
        return result.protocol()
                .map(p -> perKelvin(p) + (p.fromCooling() ? ", as it cooled" : ", from the slope of the line"));
    }

    /** The likeliest flaw, or that there is none. */
    Optional<String> flaw() {
        TrialFlawWords words = new TrialFlawWords(figures);
        return result.fit()
                .map(fit -> fit.likeliest()
                        .map(f -> words.sized(f) + ": " + TrialFlawWords.percent(f.probability()))
                        .orElse(NO_FLAW + ": " + TrialFlawWords.percent(fit.noFlaw())));
    }

    /** What cannot be told from it. */
    Optional<String> rivals() {
        return result.fit()
                .map(this::rivals)
                .filter(all -> !all.isEmpty())
                .map(all -> String.join("; ", all.subList(0, Math.min(RIVALS, all.size()))));
    }

    private List<String> rivals(TrialFit fit) {
        TrialFlawWords words = new TrialFlawWords(figures);
        List<String> all = new ArrayList<>();
        if (fit.mayBeFlawless()) {
            all.add(NO_FLAW + ": " + TrialFlawWords.percent(fit.noFlaw()));
        }
        (fit.likeliest().isPresent() ? fit.rivals() : fit.suspects())
                .forEach(f -> all.add(words.sized(f) + ": " + TrialFlawWords.percent(f.probability())));
        return all;
    }

    /** What to do next. */
    Optional<String> next() {
        return result.fit().flatMap(TrialFit::next).map(new TrialFlawWords(figures)::next);
    }

    /** What to know about a log. */
    static String note(TrialNote note) {
        String file = name(note.log());
        return file + ": "
                + switch (note.kind()) {
                    case AIR_OF_SCENARIO -> "no air in it; the scenario\u2019s is taken.";
                    case WIND_OF_SCENARIO -> "no wind in it; the scenario\u2019s is taken.";
                    case LIGHT_OF_SCENARIO -> "no sunlight in it; the scenario\u2019s is taken, as if it stayed so.";
                    case BEAM_AS_SHARE ->
                        "the beam was not measured; 87\u00a0% of the irradiance are taken, give or take 8.";
                    case TAKEN_AS_COOLING -> "the water only cools, so it is taken as a log without sun.";
                    case BOILS_FROM_FIRST ->
                        "the water boils or nearly boils from the first row, so its rise tells nothing.";
                    case TOO_SHORT ->
                        "fewer than three intervals of ten minutes below the boil, so there is no line"
                                + " through them.";
                    case OTHER_ARRANGEMENT ->
                        "another arrangement than in the first log (" + arrangement(note.log())
                                + "); it counts for the flaws and not for the standard\u2019s figure.";
                };
    }

    /** What a log says of pan and mask: "stand.pull-back: 6 cm". */
    private static String arrangement(TrialLog log) {
        return log.settings().isEmpty()
                ? "as in the scenario"
                : OneLine.of(log.settings().entrySet().stream()
                        .map(e -> e.getKey() + ": " + e.getValue())
                        .sorted()
                        .collect(Collectors.joining(", ")));
    }
}
