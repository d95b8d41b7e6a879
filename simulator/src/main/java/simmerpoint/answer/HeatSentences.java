package simmerpoint.answer;

import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;
import simmerpoint.heat.AbsorbedLight;
import simmerpoint.heat.BoilingOutcome;
import simmerpoint.heat.CookingModel;
import simmerpoint.heat.HeatLevel;
import simmerpoint.heat.HeatLevelModel;
import simmerpoint.heat.HeatLevelRange;
import simmerpoint.heat.LikelyRange;
import simmerpoint.heat.SteamRates;
import simmerpoint.heat.Surroundings;
import simmerpoint.scenario.Kitchen;
import simmerpoint.units.UnitSystem;

/** What one pan's water does with given light, in sentences: the same in every answer. */
final class HeatSentences {
    private static final double KILOMETRES_PER_MILE = 1.609344;

    private final Kitchen kitchen;
    private final AbsorbedLight absorbed;
    private final CookingModel cooking;
    private final HeatLevelModel levels;
    private final HeatWords words;
    private final UnitSystem system;
    private final Supplier<BoilingOutcome> boil;

    HeatSentences(Kitchen kitchen, AbsorbedLight absorbed, UnitSystem system) {
        this.kitchen = kitchen;
        this.absorbed = absorbed;
        this.system = system;
        cooking = new CookingModel(kitchen.vessel(), kitchen.contents(), kitchen.around());
        levels = new HeatLevelModel(cooking, kitchen.levels());
        words = new HeatWords(system);
        boil = once(() -> cooking.boil(absorbed));
    }

    private HeatSentences(HeatSentences other, UnitSystem system) {
        kitchen = other.kitchen;
        absorbed = other.absorbed;
        cooking = other.cooking;
        levels = other.levels;
        boil = other.boil;
        this.system = system;
        words = new HeatWords(system);
    }

    /** The same in other units, without working it out again. */
    HeatSentences in(UnitSystem other) {
        return new HeatSentences(this, other);
    }

    /** Boiling times of all pans take most of the work, and several sentences ask for them. */
    private static <T> Supplier<T> once(Supplier<T> work) {
        AtomicReference<T> found = new AtomicReference<>();
        return () -> {
            if (found.get() == null) {
                found.set(work.get());
            }
            return found.get();
        };
    }

    /** "the water boils" for the likely losses. */
    HeatLevel level() {
        return levels.level(absorbed);
    }

    /** The same words one by one. */
    Glance.Water glance() {
        return new Glance.Water(
                words.boil(boil.get(), level()),
                words.water(kitchen.contents().waterKilograms()),
                levelSentence(),
                weather());
    }

    /** How the water comes to the boil, or that it does not. */
    String boil() {
        BoilingOutcome answer = boil.get();
        return "Its " + words.water(kitchen.contents().waterKilograms()) + " ("
                + words.temperature(kitchen.contents().startCelsius()) + " at the start) "
                + words.boil(answer, level()) + ".";
    }

    /** How long its water takes, as a figure with its name. */
    Item.Figure boilFigure() {
        String water = words.water(kitchen.contents().waterKilograms());
        BoilingOutcome answer = boil.get();
        String then = HeatWords.endsGently(answer, level()) ? ", then simmers" : "";
        return new Item.Figure("until its " + water + " boils", words.untilItBoils(answer) + then);
    }

    /** Level in words, and how sure it is. */
    String levelSentence() {
        HeatLevelRange answer = levels.levelWithSpread(absorbed);
        String gently =
                HeatWords.endsGently(boil.get(), answer.likely()) ? ", a few bubbles with less steam than a boil" : "";
        String text = "In the end " + HeatWords.does(answer.likely()) + " (heat level: "
                + LevelWords.of(answer.likely()) + gently + ")";
        if (answer.lowest() == answer.highest()) {
            return text + ".";
        }
        return text + "; since nobody knows a pan\u2019s losses to better than a third, it may be anything from \u201c"
                + LevelWords.of(answer.lowest()) + "\u201d to \u201c" + LevelWords.of(answer.highest()) + "\u201d.";
    }

    /** The weather behind the answer. */
    String weather() {
        Surroundings around = kitchen.around();
        String wind = system == UnitSystem.INCH
                ? Figures.rounded(around.windMetresPerSecond() * 3.6 / KILOMETRES_PER_MILE, 2) + Figures.NBSP + "mph"
                : Figures.rounded(around.windMetresPerSecond(), 2) + Figures.NBSP + "m/s";
        String breeze = around.windMetresPerSecond() > 0 ? "wind " + wind : "no wind";
        return (kitchen.vessel().lidOn() ? "lid on" : "lid off") + ", air " + words.temperature(around.airCelsius())
                + ", " + breeze + ", boiling point " + words.temperature(cooking.boilingCelsius());
    }

    /** Steam it makes when it boils; empty if it does not. */
    String steam() {
        SteamRates steam = cooking.steam(absorbed);
        if (level().compareTo(HeatLevel.BOIL) < 0) {
            return "";
        }
        return " It boils away " + Figures.rounded(steam.all().low(), 2) + "\u00a0to\u00a0"
                + Figures.rounded(steam.all().high(), 2) + "\u00a0kg of water an hour.";
    }

    /** What a cloud of five minutes does. */
    String cloud() {
        var cloud = cooking.cloud(absorbed, 0, 300);
        return "A cloud of five minutes cools it by " + words.difference(cloud.dropKelvin()) + "; after that it takes "
                + HeatWords.minutes(cloud.recoverySeconds()) + " to be as hot as before.";
    }

    /** How long it stays hot without the sun. */
    String afterwards() {
        double hold = Math.min(kitchen.levels().holdCelsius(), cooking.boilingCelsius());
        LikelyRange settles = cooking.settles(absorbed);
        if (settles.likely() <= hold) {
            return "It never gets to " + words.temperature(hold) + ", the usual line for keeping food hot.";
        }
        return "Once the sun is gone, its food stays above " + words.temperature(hold) + " for "
                + HeatWords.minutes(cooking.staysAbove(settles.likely(), hold))
                + ". An estimate for the bare pan in the same wind; what your local food rules say comes first.";
    }
}
