package simmerpoint.heat;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The cook's questions to one pan, its water and its weather. Every answer with a spread is worked out anew for each pan
 * of {@link LossSpread}. Light stays what it is: the spread of the watts is the business of whoever traced them.
 */
public final class CookingModel {
    private static final int CURVE_POINTS = 240;

    private final ThermalPan vessel;
    private final PanContents contents;
    private final Surroundings around;
    private final PotModel likely;

    /**
     * One pan.
     *
     * @param vessel the pan
     * @param contents what is in it; refused if the pan does not hold it or if it is hotter than local boiling
     * @param around the weather
     */
    public CookingModel(ThermalPan vessel, PanContents contents, Surroundings around) {
        if (!contents.fitsIn(vessel)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "%.3g kg of water do not fit into the pan, which holds %.3g kg to the brim",
                    contents.waterKilograms(),
                    vessel.brimfulKilograms()));
        }
        if (!(contents.startCelsius() <= around.boilingCelsius())) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "water of %.1f °C is hotter than local boiling, %.1f °C",
                    contents.startCelsius(),
                    around.boilingCelsius()));
        }
        this.vessel = vessel;
        this.contents = contents;
        this.around = around;
        likely = kettle(LossFactors.LIKELY);
    }

    /** The pan. */
    public ThermalPan vessel() {
        return vessel;
    }

    /** Pan and water with the likely losses. */
    public PotModel likely() {
        return likely;
    }

    /** Pan and water with these losses. */
    public PotModel kettle(LossFactors factors) {
        return PotModel.of(vessel, contents, around, factors);
    }

    /** Local boiling point, °C. */
    public double boilingCelsius() {
        return likely.boilingCelsius();
    }

    /** Time to boil from the start, or where it settles. */
    public BoilingOutcome boil(AbsorbedLight absorbed) {
        double start = contents.startCelsius();
        return BoilingTimes.answer(
                likelyBoilSeconds(absorbed),
                f -> {
                    PotModel kettle = kettle(f);
                    return WarmingTime.secondsForSpread(kettle, absorbed, start, kettle.boilingCelsius());
                },
                settles(absorbed));
    }

    /** Time to boil for the likely losses alone, s; empty if it never boils or takes longer than a day. A twentieth of the work. */
    public OptionalDouble likelyBoilSeconds(AbsorbedLight absorbed) {
        return WarmingTime.seconds(likely, absorbed, contents.startCelsius(), likely.boilingCelsius());
    }

    /** Temperature it settles at in unchanging light, °C, at most local boiling. */
    public LikelyRange settles(AbsorbedLight absorbed) {
        return LossSpread.range(f -> SteadyState.celsius(kettle(f), absorbed));
    }

    /** Steam once it has settled. */
    public SteamRates steam(AbsorbedLight absorbed) {
        return new SteamRates(
                LossSpread.range(f -> steamRate(kettle(f), absorbed, true)),
                LossSpread.range(f -> steamRate(kettle(f), absorbed, false)));
    }

    private static double steamRate(PotModel kettle, AbsorbedLight absorbed, boolean surfaceToo) {
        double celsius = SteadyState.celsius(kettle, absorbed);
        double surface = surfaceToo ? kettle.losses().at(celsius, absorbed).steamWatts() : 0;
        return 3600 * PotModel.steamRate(surface + SteadyState.boilingWatts(kettle, absorbed), celsius);
    }

    /** The curve with the likely losses, from the start; see {@link HeatingSimulation#course}. */
    public TemperatureHistory course(List<LightInterval> spells, double pointSeconds) {
        return HeatingSimulation.course(likely, contents.startCelsius(), spells, pointSeconds);
    }

    /** Temperatures at given instants with their spread, °C. */
    public List<LikelyRange> temperatures(List<LightInterval> spells, List<Double> seconds) {
        double length = spells.stream().mapToDouble(LightInterval::seconds).sum();
        double pointSeconds = length / CURVE_POINTS;
        List<TemperatureHistory> all = LossSpread.all().stream()
                .map(f -> HeatingSimulation.course(kettle(f), contents.startCelsius(), spells, pointSeconds))
                .toList();
        TemperatureHistory middle = course(spells, pointSeconds);
        return seconds.stream()
                .map(t -> LikelyRange.ofSample(
                        middle.celsiusAt(t),
                        all.stream().mapToDouble(c -> c.celsiusAt(t)).toArray()))
                .toList();
    }

    /**
     * A cloud over a pan that has settled.
     *
     * @param absorbed light before and after
     * @param shareLeft share of it that is left under the cloud, 0 to 1: a cloud takes the beam, and with it all but a few
     *     percent of what a dish collects
     * @param seconds how long, above 0
     */
    public CloudEffect cloud(AbsorbedLight absorbed, double shareLeft, double seconds) {
        ArgumentChecks.within("light left under the cloud", shareLeft, 0, 1, "of 1");
        LightInterval shade = new LightInterval(seconds, absorbed.times(shareLeft));
        return new CloudEffect(
                settles(absorbed),
                LossSpread.range(f -> drop(kettle(f), absorbed, shade)),
                LossSpread.range(f -> recovery(kettle(f), absorbed, shade)));
    }

    private static double drop(PotModel kettle, AbsorbedLight absorbed, LightInterval shade) {
        double before = SteadyState.celsius(kettle, absorbed);
        TemperatureHistory course = HeatingSimulation.course(kettle, before, List.of(shade), shade.seconds());
        return Math.max(0, before - course.last().celsius());
    }

    private static double recovery(PotModel kettle, AbsorbedLight absorbed, LightInterval shade) {
        double before = SteadyState.celsius(kettle, absorbed);
        double after = before - drop(kettle, absorbed, shade);
        double goal = before - CloudEffect.RECOVERED_KELVIN;
        return after >= goal
                ? 0
                : WarmingTime.seconds(kettle, absorbed, after, goal).orElse(WarmingTime.LONGEST_SECONDS);
    }

    /**
     * How much later the pan boils for a cloud on its way there, s; empty unless it boils without ({@link BoilingOutcome.Boils}).
     *
     * @param absorbed light before and after
     * @param shareLeft share of it that is left under the cloud, 0 to 1
     * @param cloudSeconds how long, above 0
     * @param atSeconds when the cloud comes, since the start, above 0; of no account if the pan boils before
     */
    public Optional<LikelyRange> boilDelay(
            AbsorbedLight absorbed, double shareLeft, double cloudSeconds, double atSeconds) {
        ArgumentChecks.within("light left under the cloud", shareLeft, 0, 1, "of 1");
        if (!(boil(absorbed) instanceof BoilingOutcome.Boils)) {
            return Optional.empty();
        }
        List<LightInterval> clouded = List.of(
                new LightInterval(atSeconds, absorbed),
                new LightInterval(cloudSeconds, absorbed.times(shareLeft)),
                new LightInterval(WarmingTime.LONGEST_SECONDS, absorbed));
        List<LightInterval> clear = List.of(new LightInterval(WarmingTime.LONGEST_SECONDS, absorbed));
        return Optional.of(LossSpread.range(
                f -> Math.max(0, boilSeconds(kettle(f), clouded) - boilSeconds(kettle(f), clear))));
    }

    /** A pan that boils neither with nor without the cloud is not delayed by it: both a day. */
    private double boilSeconds(PotModel kettle, List<LightInterval> spells) {
        TemperatureHistory course =
                HeatingSimulation.course(kettle, contents.startCelsius(), spells, WarmingTime.LONGEST_SECONDS);
        return course.boilSeconds().orElse(WarmingTime.LONGEST_SECONDS);
    }

    /**
     * How long the food stays above a temperature once the sun is gone, s; 86 400 means a day or longer. A lid, a wrap or
     * a box of hay make it longer; this is the bare pan in the same wind. An estimate, no advice on food safety.
     *
     * @param fromCelsius where it is when the sun goes, at most local boiling
     * @param downToCelsius 60 °C is the usual line for keeping food hot (see {@link HeatLevelThresholds})
     */
    public LikelyRange staysAbove(double fromCelsius, double downToCelsius) {
        ArgumentChecks.within("temperature", fromCelsius, 0, boilingCelsius(), "°C");
        ArgumentChecks.within("temperature", downToCelsius, 0, boilingCelsius(), "°C");
        if (fromCelsius <= downToCelsius) {
            return LikelyRange.exact(0);
        }
        return LossSpread.range(f -> WarmingTime.seconds(kettle(f), AbsorbedLight.NOTHING, fromCelsius, downToCelsius)
                .orElse(WarmingTime.LONGEST_SECONDS));
    }
}
