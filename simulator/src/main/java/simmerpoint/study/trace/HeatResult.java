package simmerpoint.study.trace;

import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;
import simmerpoint.heat.AbsorbedLight;
import simmerpoint.heat.BoilingOutcome;
import simmerpoint.heat.CloudEffect;
import simmerpoint.heat.HeatLevel;
import simmerpoint.heat.HeatLevelRange;
import simmerpoint.heat.SteamRates;
import simmerpoint.heat.balance.CookingModel;
import simmerpoint.heat.balance.HeatLevelModel;
import simmerpoint.heat.losses.LossFactors;
import simmerpoint.sampling.Estimate;
import simmerpoint.scenario.CookingSetup;
import simmerpoint.scenario.Scenario;
import simmerpoint.target.CaughtByFace;
import simmerpoint.target.FluxMaps;
import simmerpoint.uncertainty.LikelyRange;

/**
 * What a pan's water does with its light if that stays as it is. Every figure is computed when it is first asked for and then
 * kept, since some take several milliseconds and most readers want only a few. Safe for several threads.
 */
public final class HeatResult {
    /** Length of the cloud of {@link #cloud}, s. */
    public static final double CLOUD_SECONDS = 300;

    private final CookingSetup kitchen;
    private final AbsorbedLight absorbed;
    private final Estimate cookingPower;
    private final Supplier<CookingModel> cooking;
    private final Supplier<HeatLevelModel> levels;
    private final Supplier<HeatLevelRange> levelRange;
    private final Supplier<BoilingOutcome> boil;
    private final Supplier<LikelyRange> settles;
    private final Supplier<SteamRates> steam;
    private final Supplier<CloudEffect> cloud;
    private final Supplier<LikelyRange> hold;
    private final AtomicReference<PlateResult> plate = new AtomicReference<>();

    /**
     * For the pan and weather of {@code kitchen}.
     *
     * @param absorbed what the pan takes up, face by face
     * @param cookingPower see {@link #cookingPower}
     */
    public HeatResult(CookingSetup kitchen, AbsorbedLight absorbed, Estimate cookingPower) {
        this.kitchen = kitchen;
        this.absorbed = absorbed;
        this.cookingPower = cookingPower;
        cooking = new LazyValue<>(kitchen::cooking);
        levels = new LazyValue<>(kitchen::heatLevels);
        levelRange = new LazyValue<>(() -> levels.get().levelWithSpread(absorbed));
        boil = new LazyValue<>(() -> cooking.get().boil(absorbed));
        settles = new LazyValue<>(() -> cooking.get().settlingCelsius(absorbed));
        steam = new LazyValue<>(() -> cooking.get().steamRates(absorbed));
        cloud = new LazyValue<>(() -> cooking.get().cloudEffect(absorbed, 0, CLOUD_SECONDS));
        hold = new LazyValue<>(() -> cooking.get().secondsAbove(settlesCelsius().likely(), holdCelsius()));
    }

    /**
     * For the traced light on the faces of the pan of {@code scenario}; empty for a bare disc.
     *
     * @param useful the {@link UsefulPower} of that light
     */
    public static Optional<HeatResult> of(Scenario scenario, CaughtByFace faces, Estimate useful) {
        return scenario.cooking()
                .map(kitchen -> new HeatResult(kitchen, PanIrradiation.absorbed(faces, scenario, kitchen), useful));
    }

    /**
     * How hot its bottom gets.
     *
     * @param maps of the same trace
     * @param likely light that such cookers take up, if that was worked out, W: {@link LikelyResult#lightPerLoss}
     */
    PlateResult plate(FluxMaps maps, Optional<LikelyRange> likely) {
        PlateResult found = plate.get();
        if (found == null || (found.range().isEmpty() && likely.isPresent())) {
            found = PlateResult.of(this, maps, likely);
            plate.set(found);
        }
        return found;
    }

    /** Pan, water, weather and heat levels. */
    public CookingSetup cooking() {
        return kitchen;
    }

    /** What the pan takes up. */
    public AbsorbedLight absorbed() {
        return absorbed;
    }

    /**
     * Cooking power: net heat flow into the water at {@link #cookingCelsius} for the likely losses, W, with the standard error
     * from sampling; see {@link CookingModel#cookingPowerWatts}.
     */
    public Estimate cookingPower() {
        return cookingPower;
    }

    /** Temperature of the water for which {@link #cookingPower} holds, °C. */
    public double cookingCelsius() {
        return cooking.get().cookingPowerCelsius();
    }

    /** What the pan loses at that temperature for the likely losses, W. */
    public double cookingLossWatts() {
        return cooking.get().cookingLossWatts(absorbed);
    }

    /** Local boiling point, °C. */
    public double boilingCelsius() {
        return cooking.get().boilingCelsius();
    }

    /** Heat level for the likely losses. */
    public HeatLevel level() {
        return levels.get().level(absorbed);
    }

    /** Heat level with its spread. */
    public HeatLevelRange levelRange() {
        return levelRange.get();
    }

    /** Whether and when the water boils. */
    public BoilingOutcome boil() {
        return boil.get();
    }

    /** The same for the likely losses alone, without a range, to a thousandth. */
    public BoilingOutcome quickBoil() {
        return BoilingOutcome.exact(
                cooking.get().quickBoilSeconds(absorbed, LossFactors.LIKELY),
                () -> cooking.get().settlingCelsius(absorbed, LossFactors.LIKELY));
    }

    /** Temperature the water settles at, °C. */
    public LikelyRange settlesCelsius() {
        return settles.get();
    }

    /** Steam once it has settled. */
    public SteamRates steam() {
        return steam.get();
    }

    /** All steam of pans that take up other light of the same kind, W, with the likely losses, kg/h. */
    public LikelyRange steam(LikelyRange light) {
        return light.map(watts -> cooking.get().likelySteamRate(absorbed.scaledTo(Math.max(0, watts))));
    }

    /** What a cloud of {@link #CLOUD_SECONDS} that takes all light does once the water has settled. */
    public CloudEffect cloud() {
        return cloud.get();
    }

    /** Temperature down to which food counts as hot, °C; at most local boiling. */
    public double holdCelsius() {
        return Math.min(kitchen.levels().holdCelsius(), boilingCelsius());
    }

    /** How long settled water stays above {@link #holdCelsius} without the sun, s; 0 if it never gets there. */
    public LikelyRange holdSeconds() {
        return hold.get();
    }

    /** Watts to spare at the border where {@code level} begins, see {@link HeatLevelModel#spareWatts}. */
    public double spareWatts(HeatLevel level) {
        return levels.get().spareWatts(level, absorbed);
    }

    /** Absorbed watts at which {@code level} begins for light shared between the faces as this is. */
    public LikelyRange begins(HeatLevel level) {
        return levels.get().thresholdWatts(level, absorbed);
    }

    /**
     * Cooking power with which {@code level} begins, W: that of just so much light, shared between the faces as this is. The
     * range is that of {@link #begins}; cooking power itself is by the likely losses.
     */
    public LikelyRange beginsWithPower(HeatLevel level) {
        return begins(level).map(this::powerOfLight);
    }

    /** The same for the likely losses alone, W. */
    public double beginsWithPowerLikely(HeatLevel level) {
        return powerOfLight(beginsLikely(level));
    }

    private double powerOfLight(double watts) {
        return Double.isFinite(watts)
                ? cooking.get().cookingPowerWatts(absorbed.scaledTo(watts))
                : Double.POSITIVE_INFINITY;
    }

    /** The absorbed watts at which {@code level} begins for the likely losses alone, W. */
    public double beginsLikely(HeatLevel level) {
        return levels.get().likelyThresholdWatts(level, absorbed);
    }
}
