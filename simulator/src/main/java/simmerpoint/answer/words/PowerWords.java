package simmerpoint.answer.words;

import java.util.Locale;
import java.util.Optional;
import simmerpoint.heat.balance.StandardCookingPower;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.trace.HeatResult;
import simmerpoint.study.trace.LikelyResult;
import simmerpoint.uncertainty.LikelyRange;
import simmerpoint.units.UnitSystem;

/** The figure that everything is judged by in words: the cooking power of a pan, the light caught by a bare disc. */
public final class PowerWords {
    private final Optional<HeatResult> heat;
    private final FigureFormat figures;
    private final HeatWords temperatures;

    /**
     * For one traced scenario.
     *
     * @param heat of its pan; empty for a bare disc
     * @param system units
     */
    public PowerWords(Optional<HeatResult> heat, UnitSystem system) {
        this.heat = heat;
        figures = new FigureFormat(system);
        temperatures = new HeatWords(system);
    }

    /** Its name. */
    public String name() {
        return heat.isPresent() ? "cooking power" : "caught by the disc";
    }

    /** What becomes of so many watts, after them: "go into the water". */
    public String meaning(Estimate watts) {
        if (heat.isEmpty()) {
            return "of focused sunlight land on the disc";
        }
        return watts.value() > 0
                ? "go into the water"
                : "net into the water: the pan loses more than it takes up at " + temperature();
    }

    /** The watts with what becomes of them, or what the pan lacks. */
    public String gets(Estimate watts) {
        return heat.isEmpty() || watts.value() > 0
                ? figures.plainWatts(watts) + " " + meaning(watts)
                : "the pan loses " + figures.plainWatts(watts.times(-1)) + " more than it takes up at " + temperature();
    }

    /** The same in a sentence of its own, and what cooking power is. */
    public String sentence(Estimate watts) {
        String gets = gets(watts);
        return gets.substring(0, 1).toUpperCase(Locale.ROOT) + gets.substring(1) + "."
                + (heat.isPresent() && watts.value() > 0
                        ? " That is the cooking power: the heat left for the water at " + temperature()
                                + ", when air, wind and steam have taken theirs."
                        : "");
    }

    /** The likely watts with their range in a sentence, what cooking power is, and the watts of the figures as given. */
    public String sentence(LikelyRange likely, Estimate asGiven) {
        if (!(likely.high() > 0 && asGiven.value() > 0)) {
            return sentence(asGiven);
        }
        String power = LikelyWords.power(likely);
        return power.substring(0, 1).toUpperCase(Locale.ROOT) + power.substring(1)
                + sentence(asGiven).substring(figures.plainWatts(asGiven).length())
                + " With every figure exactly as given it is " + figures.plainWatts(asGiven) + ".";
    }

    /** "about 470 W (four in five such cookers: 400 to 540 W) go into the water". */
    public String inShort(Optional<LikelyResult> likely, Estimate asGiven) {
        return likely.map(LikelyResult::power)
                .filter(power -> power.high() > 0 && asGiven.value() > 0)
                .map(power -> LikelyWords.power(power) + " " + meaning(asGiven))
                .orElseGet(() -> gets(asGiven));
    }

    /** "70 °C, 50 °C above the air". */
    private String temperature() {
        double celsius = heat.orElseThrow().cookingCelsius();
        double above = celsius - heat.orElseThrow().cooking().around().airCelsius();
        boolean boiling = above < StandardCookingPower.STANDARD_DIFFERENCE - 1e-9;
        return temperatures.temperature(celsius) + ", "
                + (boiling
                        ? "where water boils"
                        : temperatures.difference(LikelyRange.exact(StandardCookingPower.STANDARD_DIFFERENCE))
                                + " above the air");
    }
}
