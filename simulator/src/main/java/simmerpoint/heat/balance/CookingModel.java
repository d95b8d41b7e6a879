package simmerpoint.heat.balance;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import simmerpoint.heat.AbsorbedLight;
import simmerpoint.heat.ArgumentChecks;
import simmerpoint.heat.BoilingOutcome;
import simmerpoint.heat.CloudEffect;
import simmerpoint.heat.HeatLevelThresholds;
import simmerpoint.heat.PanContents;
import simmerpoint.heat.SteamRates;
import simmerpoint.heat.Surroundings;
import simmerpoint.heat.ThermalPan;
import simmerpoint.heat.losses.LossFactors;
import simmerpoint.heat.losses.LossSpread;
import simmerpoint.uncertainty.LikelyRange;

/**
 * Heating of one pan with its water in given weather. Results with a range are computed for each pan of {@link
 * LossSpread}. Uncertainty of the absorbed light is not included.
 */
public final class CookingModel {
    private static final int CURVE_POINTS = 240;

    private final ThermalPan vessel;
    private final PanContents contents;
    private final Surroundings surroundings;
    private final PotModel likelyPot;

    /**
     * One pan.
     *
     * @param vessel the pan
     * @param contents refused if they do not fit into the pan or are hotter than local boiling
     * @param surroundings the weather
     */
    public CookingModel(ThermalPan vessel, PanContents contents, Surroundings surroundings) {
        if (!contents.fitsIn(vessel)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "%.3g kg of water do not fit into the pan, which holds %.3g kg to the brim",
                    contents.waterKilograms(),
                    vessel.brimfulKilograms()));
        }
        if (!(contents.startCelsius() <= surroundings.boilingCelsius())) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "water of %.1f °C is hotter than local boiling, %.1f °C",
                    contents.startCelsius(),
                    surroundings.boilingCelsius()));
        }
        this.vessel = vessel;
        this.contents = contents;
        this.surroundings = surroundings;
        likelyPot = pot(LossFactors.LIKELY);
    }

    /** The pan. */
    public ThermalPan vessel() {
        return vessel;
    }

    /** Pan and water with the likely losses. */
    public PotModel likelyPot() {
        return likelyPot;
    }

    /** Pan and water with given losses. */
    public PotModel pot(LossFactors factors) {
        return PotModel.of(vessel, contents, surroundings, factors);
    }

    /** Local boiling point, °C. */
    public double boilingCelsius() {
        return likelyPot.boilingCelsius();
    }

    /**
     * Temperature of the water for which {@linkplain #cookingPowerWatts cooking power} is given, °C: {@value
     * StandardCookingPower#STANDARD_DIFFERENCE} K above the air, at most local boiling.
     */
    public double cookingPowerCelsius() {
        return Math.min(surroundings.airCelsius() + StandardCookingPower.STANDARD_DIFFERENCE, boilingCelsius());
    }

    /**
     * Cooking power for the likely losses, W: the net heat flow into the water at {@link #cookingPowerCelsius}, as in {@link
     * StandardCookingPower} but in this light. Below 0 if the pan cannot hold that temperature. Takes microseconds.
     */
    public double cookingPowerWatts(AbsorbedLight absorbed) {
        return cookingPowerWatts(absorbed, likelyPot);
    }

    /** The same for given losses, W. */
    public double cookingPowerWatts(AbsorbedLight absorbed, LossFactors factors) {
        return cookingPowerWatts(absorbed, pot(factors));
    }

    private double cookingPowerWatts(AbsorbedLight absorbed, PotModel pot) {
        return pot.waterHeatWatts(cookingPowerCelsius(), absorbed);
    }

    /** Losses of the pan at {@link #cookingPowerCelsius} for the likely losses, W; light that a dry wall or lid gives off included. */
    public double cookingLossWatts(AbsorbedLight absorbed) {
        return likelyPot.losses().at(cookingPowerCelsius(), absorbed).total();
    }

    /** Time to boil from the start, or the steady-state temperature. */
    public BoilingOutcome boil(AbsorbedLight absorbed) {
        double start = contents.startCelsius();
        return BoilingTimes.outcome(
                likelyBoilSeconds(absorbed),
                f -> {
                    PotModel pot = pot(f);
                    return WarmingQuadrature.seconds(pot, absorbed, start, pot.boilingCelsius());
                },
                () -> settlingCelsius(absorbed));
    }

    /** Time to boil for the likely losses, s; empty if it never boils or takes longer than a day. */
    public OptionalDouble likelyBoilSeconds(AbsorbedLight absorbed) {
        return WarmingTime.seconds(likelyPot, absorbed, contents.startCelsius(), likelyPot.boilingCelsius());
    }

    /** Time to boil for given losses, s; empty if it never boils or takes longer than a day. */
    public OptionalDouble quickBoilSeconds(AbsorbedLight absorbed, LossFactors factors) {
        PotModel pot = pot(factors);
        return WarmingQuadrature.seconds(pot, absorbed, contents.startCelsius(), pot.boilingCelsius());
    }

    /** Steady-state temperature in constant light for given losses, °C, at most local boiling. */
    public double settlingCelsius(AbsorbedLight absorbed, LossFactors factors) {
        return SteadyState.celsius(pot(factors), absorbed);
    }

    /** Steady-state temperature in constant light, °C, at most local boiling. */
    public LikelyRange settlingCelsius(AbsorbedLight absorbed) {
        return LossSpread.range(f -> settlingCelsius(absorbed, f));
    }

    /** Steam in steady state. */
    public SteamRates steamRates(AbsorbedLight absorbed) {
        return new SteamRates(
                LossSpread.range(f -> steamRate(pot(f), absorbed, true)),
                LossSpread.range(f -> steamRate(pot(f), absorbed, false)));
    }

    /** All steam in steady state for the likely losses, kg/h. */
    public double likelySteamRate(AbsorbedLight absorbed) {
        return steamRate(likelyPot, absorbed, true);
    }

    private static double steamRate(PotModel pot, AbsorbedLight absorbed, boolean includeSurface) {
        double celsius = SteadyState.celsius(pot, absorbed);
        double surface = includeSurface ? pot.losses().at(celsius, absorbed).steamWatts() : 0;
        return 3600 * PotModel.steamRate(surface + SteadyState.boilingWatts(pot, absorbed), celsius);
    }

    /** Temperatures with the likely losses, from the start; see {@link HeatingSimulation#temperatureHistory}. */
    public TemperatureHistory temperatureHistory(List<LightInterval> intervals, double pointSeconds) {
        return HeatingSimulation.temperatureHistory(likelyPot, contents.startCelsius(), intervals, pointSeconds);
    }

    /** Temperatures at given times with their range, °C. */
    public List<LikelyRange> temperatures(List<LightInterval> intervals, List<Double> seconds) {
        double length = intervals.stream().mapToDouble(LightInterval::seconds).sum();
        double pointSeconds = length / CURVE_POINTS;
        List<TemperatureHistory> all = LossSpread.all().stream()
                .map(f ->
                        HeatingSimulation.temperatureHistory(pot(f), contents.startCelsius(), intervals, pointSeconds))
                .toList();
        TemperatureHistory likelyHistory = temperatureHistory(intervals, pointSeconds);
        return seconds.stream()
                .map(t -> LikelyRange.ofSample(
                        likelyHistory.celsiusAt(t),
                        all.stream().mapToDouble(c -> c.celsiusAt(t)).toArray()))
                .toList();
    }

    /**
     * Effect of a cloud on the pan in steady state.
     *
     * @param absorbed light before and after
     * @param shareLeft share of it during the cloud, 0 to 1
     * @param seconds duration, above 0
     */
    public CloudEffect cloudEffect(AbsorbedLight absorbed, double shareLeft, double seconds) {
        ArgumentChecks.within("light left under the cloud", shareLeft, 0, 1, "of 1");
        LightInterval shade = new LightInterval(seconds, absorbed.times(shareLeft));
        return new CloudEffect(
                settlingCelsius(absorbed),
                LossSpread.range(f -> drop(pot(f), absorbed, shade)),
                LossSpread.range(f -> recovery(pot(f), absorbed, shade)));
    }

    private static double drop(PotModel pot, AbsorbedLight absorbed, LightInterval shade) {
        double before = SteadyState.celsius(pot, absorbed);
        TemperatureHistory temperatureHistory =
                HeatingSimulation.temperatureHistory(pot, before, List.of(shade), shade.seconds());
        return Math.max(0, before - temperatureHistory.last().celsius());
    }

    private static double recovery(PotModel pot, AbsorbedLight absorbed, LightInterval shade) {
        double before = SteadyState.celsius(pot, absorbed);
        double after = before - drop(pot, absorbed, shade);
        double goal = before - CloudEffect.RECOVERED_KELVIN;
        return after >= goal
                ? 0
                : WarmingTime.seconds(pot, absorbed, after, goal).orElse(WarmingTime.LONGEST_SECONDS);
    }

    /**
     * Time to cool to a temperature without sun, s; 86 400 means a day or longer. For the uninsulated pan in the same wind.
     * An estimate, no advice on food safety.
     *
     * @param fromCelsius initial temperature, at most local boiling
     * @param downToCelsius 60 °C is the usual limit for keeping food hot (see {@link HeatLevelThresholds})
     */
    public LikelyRange secondsAbove(double fromCelsius, double downToCelsius) {
        ArgumentChecks.within("temperature", fromCelsius, 0, boilingCelsius(), "°C");
        ArgumentChecks.within("temperature", downToCelsius, 0, boilingCelsius(), "°C");
        if (fromCelsius <= downToCelsius) {
            return LikelyRange.exact(0);
        }
        return LossSpread.range(f -> WarmingTime.seconds(pot(f), AbsorbedLight.NOTHING, fromCelsius, downToCelsius)
                .orElse(WarmingTime.LONGEST_SECONDS));
    }
}
