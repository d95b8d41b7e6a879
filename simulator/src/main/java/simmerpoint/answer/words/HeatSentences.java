package simmerpoint.answer.words;

import java.util.Optional;
import simmerpoint.answer.Item;
import simmerpoint.heat.BoilingOutcome;
import simmerpoint.heat.CloudEffect;
import simmerpoint.heat.HeatLevel;
import simmerpoint.heat.HeatLevelRange;
import simmerpoint.heat.Surroundings;
import simmerpoint.scenario.CookingSetup;
import simmerpoint.study.trace.HeatResult;
import simmerpoint.study.trace.LikelyResult;
import simmerpoint.uncertainty.LikelyRange;
import simmerpoint.units.UnitSystem;

/** What one pan's water does with given light, in sentences: the same in every answer. */
public final class HeatSentences {
    /** A whole degree could read as boiling, K. */
    private static final double JUST_BELOW = 1;

    private final HeatResult result;
    private final Optional<LikelyResult> likely;
    private final CookingSetup kitchen;
    private final HeatWords words;
    private final UnitSystem system;

    /** Sentences about {@code result}, in the units of {@code system}; what varies, by the pan's losses alone. */
    public HeatSentences(HeatResult result, UnitSystem system) {
        this(result, Optional.empty(), system);
    }

    /** The same over all doubts if they are known. */
    public HeatSentences(HeatResult result, Optional<LikelyResult> likely, UnitSystem system) {
        this.result = result;
        this.likely = likely;
        kitchen = result.cooking();
        this.system = system;
        words = new HeatWords(system);
    }

    /** "the water boils" for the likely losses. */
    public HeatLevel level() {
        return levelRange().likely();
    }

    private HeatLevelRange levelRange() {
        return likely.flatMap(LikelyResult::level).orElseGet(result::levelRange);
    }

    private BoilingOutcome boiling() {
        return likely.flatMap(LikelyResult::boil).orElseGet(result::boil);
    }

    /** For instance "1.9 l of water". */
    public String amount() {
        return words.water(kitchen.contents().waterKilograms());
    }

    /** For instance "boils in 28 to 33 min". */
    public String outcome() {
        if (likely.isPresent() && boiling() instanceof BoilingOutcome.MayBoil may) {
            return mayBoil(may);
        }
        return words.boil(boiling(), level());
    }

    /** Of cookers as they may turn out. */
    private String mayBoil(BoilingOutcome.MayBoil may) {
        long inTen = Math.max(1, Math.min(9, Math.round(10 * may.share())));
        return "may or may not boil: " + inTen + " of 10 such cookers do, at the soonest in "
                + HeatWords.time(may.soonestSeconds()) + "; the worst "
                + settles(may.settlesCelsius().low());
    }

    private String settles(double celsius) {
        return celsius > result.boilingCelsius() - JUST_BELOW
                ? "settle just below boiling"
                : "settle at " + words.temperature(celsius);
    }

    /** What decides whether it boils, in a sentence, where that is in doubt. */
    public Optional<String> inDoubt() {
        return boiling() instanceof BoilingOutcome.MayBoil
                ? Optional.of("Whether it boils depends most on " + LikelyWords.decides(likely) + ".")
                : Optional.empty();
    }

    /** What decides whether it boils, where that is in doubt. */
    private String decides() {
        return boiling() instanceof BoilingOutcome.MayBoil ? "; most depends on " + LikelyWords.decides(likely) : "";
    }

    /** How the water comes to the boil, or that it does not. */
    public String boil() {
        return "Its " + amount() + " ("
                + words.temperature(kitchen.contents().startCelsius()) + " at the start) "
                + outcome() + decides() + ".";
    }

    /** How long its water takes, as a figure with its name. */
    public Item.Figure boilFigure() {
        String then = HeatWords.endsGently(boiling(), level()) ? ", then simmers" : "";
        return new Item.Figure("for its " + amount() + " to boil", words.untilItBoils(boiling()) + then);
    }

    /** Level in words, and how sure it is. */
    public String levelSentence() {
        HeatLevelRange answer = levelRange();
        String gently =
                HeatWords.endsGently(boiling(), answer.likely()) ? ", a few bubbles with less steam than a boil" : "";
        String text = "In the end " + HeatWords.does(answer.likely()) + " (heat level: "
                + LevelWords.of(answer.likely()) + gently + ")";
        if (answer.lowest() == answer.highest()) {
            return text + ".";
        }
        String why = likely.isPresent()
                ? "with all that is not known exactly"
                : "since a pan\u2019s losses are known to a third at best,";
        return text + "; " + why + " it may be anything from \u201c" + LevelWords.of(answer.lowest())
                + "\u201d to \u201c" + LevelWords.of(answer.highest()) + "\u201d.";
    }

    /** The weather behind the answer. */
    public String weather() {
        Surroundings around = kitchen.around();
        String wind = system == UnitSystem.INCH
                ? FigureFormat.rounded(around.windMetresPerSecond() / UnitSystem.MILE_PER_HOUR, 2) + FigureFormat.NBSP
                        + "mph"
                : FigureFormat.rounded(around.windMetresPerSecond(), 2) + FigureFormat.NBSP + "m/s";
        String breeze = around.windMetresPerSecond() > 0 ? "wind " + wind : "no wind";
        String skin =
                kitchen.vessel().cover().map(cover -> ", in a " + cover.word()).orElse("");
        return (kitchen.vessel().lidOn() ? "lid on" : "lid off") + skin + ", air "
                + words.temperature(around.airCelsius()) + ", " + breeze + ", boiling point "
                + words.temperature(result.boilingCelsius());
    }

    /** Steam it makes when it boils; empty if it does not. */
    public String steam() {
        LikelyRange steam = likely.map(range -> result.steam(range.lightPerLoss()))
                .orElseGet(() -> result.steam().all());
        if (level().compareTo(HeatLevel.BOIL) < 0) {
            return "";
        }
        return " It boils away " + FigureFormat.rounded(steam.low(), 2) + "\u00a0to\u00a0"
                + FigureFormat.rounded(steam.high(), 2) + "\u00a0kg of water an hour.";
    }

    /** What a cloud of five minutes does. */
    public String cloud() {
        CloudEffect cloud = result.cloud();
        return "Five minutes of cloud cool it by " + words.difference(cloud.dropKelvin()) + "; it then takes "
                + HeatWords.minutes(cloud.recoverySeconds()) + " to get back.";
    }

    /** How long it stays hot without the sun. */
    public String afterwards() {
        double hold = result.holdCelsius();
        if (result.settlesCelsius().likely() <= hold) {
            return "It never gets to " + words.temperature(hold) + ", the usual line for keeping food hot.";
        }
        return "Once the sun is gone, its food stays above " + words.temperature(hold) + " for "
                + HeatWords.minutes(result.holdSeconds())
                + ". This is an estimate for the bare pan in the same wind; your local food rules come first.";
    }
}
