package simmerpoint.study;

import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;
import simmerpoint.heat.Absorbed;
import simmerpoint.heat.BoilAnswer;
import simmerpoint.heat.CloudAnswer;
import simmerpoint.heat.Cooking;
import simmerpoint.heat.HeatLevel;
import simmerpoint.heat.HeatLevels;
import simmerpoint.heat.LevelAnswer;
import simmerpoint.heat.Range;
import simmerpoint.heat.SteamAnswer;
import simmerpoint.scenario.Kitchen;
import simmerpoint.scenario.Scenario;
import simmerpoint.target.FaceSums;

/**
 * What a pan's water does with its light if that stays as it is. Every figure is computed when it is first asked for and then
 * kept, since some take several milliseconds and most readers want only a few. Safe for several threads.
 */
public final class HeatResult {
    /** Length of the cloud of {@link #cloud}, s. */
    public static final double CLOUD_SECONDS = 300;

    private final Kitchen kitchen;
    private final Absorbed absorbed;
    private final Supplier<Cooking> cooking;
    private final Supplier<HeatLevels> levels;
    private final Supplier<LevelAnswer> levelRange;
    private final Supplier<BoilAnswer> boil;
    private final Supplier<Range> settles;
    private final Supplier<SteamAnswer> steam;
    private final Supplier<CloudAnswer> cloud;
    private final Supplier<Range> hold;

    /** For the pan and weather of {@code kitchen} and what the pan takes up, face by face. */
    public HeatResult(Kitchen kitchen, Absorbed absorbed) {
        this.kitchen = kitchen;
        this.absorbed = absorbed;
        cooking = once(kitchen::cooking);
        levels = once(kitchen::heatLevels);
        levelRange = once(() -> levels.get().levelWithSpread(absorbed));
        boil = once(() -> cooking.get().boil(absorbed));
        settles = once(() -> cooking.get().settles(absorbed));
        steam = once(() -> cooking.get().steam(absorbed));
        cloud = once(() -> cooking.get().cloud(absorbed, 0, CLOUD_SECONDS));
        hold = once(() -> cooking.get().staysAbove(settlesCelsius().likely(), holdCelsius()));
    }

    /** For the traced light on the faces of the pan of {@code scenario}; empty for a bare disc. */
    static Optional<HeatResult> of(Scenario scenario, FaceSums faces) {
        return scenario.kitchen().map(kitchen -> new HeatResult(kitchen, PanLights.absorbed(faces, scenario, kitchen)));
    }

    /** Two threads that ask at the same time may both compute; they find the same. */
    private static <T> Supplier<T> once(Supplier<T> work) {
        AtomicReference<T> found = new AtomicReference<>();
        return () -> {
            if (found.get() == null) {
                found.set(work.get());
            }
            return found.get();
        };
    }

    /** Pan, water, weather and heat levels. */
    public Kitchen kitchen() {
        return kitchen;
    }

    /** What the pan takes up. */
    public Absorbed absorbed() {
        return absorbed;
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
    public LevelAnswer levelRange() {
        return levelRange.get();
    }

    /** Whether and when the water boils. */
    public BoilAnswer boil() {
        return boil.get();
    }

    /** Temperature the water settles at, °C. */
    public Range settlesCelsius() {
        return settles.get();
    }

    /** Steam once it has settled. */
    public SteamAnswer steam() {
        return steam.get();
    }

    /** What a cloud of {@link #CLOUD_SECONDS} that takes all light does once the water has settled. */
    public CloudAnswer cloud() {
        return cloud.get();
    }

    /** Temperature down to which food counts as hot, °C; at most local boiling. */
    public double holdCelsius() {
        return Math.min(kitchen.levels().holdCelsius(), boilingCelsius());
    }

    /** How long settled water stays above {@link #holdCelsius} without the sun, s; 0 if it never gets there. */
    public Range holdSeconds() {
        return hold.get();
    }

    /** Watts to spare at the border where {@code level} begins, see {@link HeatLevels#spareWatts}. */
    public double spareWatts(HeatLevel level) {
        return levels.get().spareWatts(level, absorbed);
    }

    /** Absorbed watts at which {@code level} begins for light shared between the faces as this is. */
    public Range begins(HeatLevel level) {
        return levels.get().begins(level, absorbed);
    }

    /** The same for the likely losses alone, W. */
    public double beginsLikely(HeatLevel level) {
        return levels.get().beginsLikely(level, absorbed);
    }
}
