package simmerpoint.study.day;

import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import simmerpoint.heat.AbsorbedLight;
import simmerpoint.heat.BoilingOutcome;
import simmerpoint.heat.HeatLevel;
import simmerpoint.heat.HeatLevelRange;
import simmerpoint.heat.balance.CookingModel;
import simmerpoint.heat.balance.HeatLevelModel;
import simmerpoint.heat.balance.StandardCookingPower;
import simmerpoint.scenario.CookingSetup;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.SiteConditions;
import simmerpoint.setup.FocusTravel;
import simmerpoint.setup.StandGeometry;
import simmerpoint.study.aim.AimAgain;
import simmerpoint.study.aim.AimTolerance;
import simmerpoint.study.trace.HeatResult;
import simmerpoint.study.trace.ImpossibleSetupException;
import simmerpoint.study.trace.MaximumFlux;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.study.trace.TraceStudy;
import simmerpoint.sun.BeamRange;
import simmerpoint.sun.SunMoment;
import simmerpoint.sun.SunMotion;
import simmerpoint.sun.Sunlight;
import simmerpoint.target.Ledger;
import simmerpoint.uncertainty.LikelyRange;

/** One cooker at any instant: traced anew at the sun's elevation then, with the same samples every time. */
final class HourStudy {
    private final Scenario scenario;
    private final SiteConditions outdoors;
    private final CookingSetup kitchen;
    private final CookingModel cooking;
    private final HeatLevelModel levels;
    private final TraceOptions options;
    private final boolean full;
    private long rays;

    /** With every question of the heat balance, or ({@code full} false) only the likely heat level. */
    HourStudy(Scenario scenario, TraceOptions options, boolean full) {
        this.scenario = scenario;
        this.options = options;
        this.full = full;
        outdoors = scenario.site().orElseThrow(() -> new IllegalArgumentException("a day needs a place"));
        kitchen = scenario.cooking()
                .orElseThrow(() -> new IllegalArgumentException("a day needs a pan, not a bare disc"));
        cooking = kitchen.cooking();
        levels = kitchen.heatLevels();
    }

    /** Rays traced so far. */
    long rays() {
        return rays;
    }

    DayHour at(ZonedDateTime time, Progress progress) {
        SunMoment moment = SunMoment.at(outdoors.place(), time);
        BeamRange beam = outdoors.sky().at(moment);
        double elevation = moment.position().elevationRadians();
        StandGeometry stand = StandGeometry.of(
                scenario.dish(),
                elevation,
                scenario.aim().mountMetres(),
                scenario.heights().tripodHeightMetres(),
                scenario.stand());
        if (!(beam.likelyWattsPerSquareMetre() > 0)) {
            return dark(moment, beam, stand, "no beam comes through the air");
        }
        Scenario then = scenario.withSun(new Sunlight(
                elevation, beam.likelyWattsPerSquareMetre(), scenario.sun().shape()));
        try {
            HourLight light = light(beam, then, progress);
            return new DayHour(moment, beam, stand, walk(moment, then), Optional.of(light), "");
        } catch (ImpossibleSetupException e) {
            return dark(moment, beam, stand, e.getMessage());
        }
    }

    private static DayHour dark(SunMoment moment, BeamRange beam, StandGeometry stand, String why) {
        return new DayHour(moment, beam, stand, Optional.empty(), Optional.empty(), why);
    }

    /** How often to aim then, and how far the focus walks in between. */
    private Optional<FocusTravel> walk(SunMoment moment, Scenario then) {
        SunMotion motion = SunMotion.at(moment);
        return AimAgain.at(moment, then, AimTolerance.USUAL_LOSS, options, Progress.NONE)
                .minutes()
                .map(minutes -> FocusTravel.of(
                        then.dish(),
                        then.aim(),
                        minutes.value(),
                        then.stand().pullBackMetres(),
                        then.sun().elevationRadians(),
                        motion));
    }

    private HourLight light(BeamRange beam, Scenario then, Progress progress) {
        double likely = beam.likelyWattsPerSquareMetre();
        TraceResult traced = TraceStudy.run(then, options, progress);
        rays += traced.run().rays();
        HeatResult heat = traced.heat().orElseThrow();
        AbsorbedLight absorbed = heat.absorbed();
        AbsorbedLight low = absorbed.times(beam.lowWattsPerSquareMetre() / likely);
        AbsorbedLight high = absorbed.times(beam.highWattsPerSquareMetre() / likely);
        return new HourLight(
                traced.ledger(),
                heat.cookingPower(),
                cooking.cookingPowerWatts(low),
                cooking.cookingPowerWatts(high),
                low.total(),
                high.total(),
                level(low, absorbed, high),
                levels.spareWatts(HeatLevel.SIMMER, absorbed),
                boil(absorbed),
                full ? cooking.likelyBoilSeconds(low) : OptionalDouble.empty(),
                full ? cooking.likelyBoilSeconds(high) : OptionalDouble.empty(),
                traced.spot().peakFlux(),
                MaximumFlux.of(traced),
                full ? begins(heat) : Map.of(),
                limits(traced.ledger(), likely));
    }

    private HeatLevelRange level(AbsorbedLight low, AbsorbedLight likely, AbsorbedLight high) {
        HeatLevel dim = levels.level(low);
        HeatLevel bright = levels.level(high);
        if (!full) {
            return new HeatLevelRange(dim, levels.level(likely), bright);
        }
        HeatLevelRange spread = levels.levelWithSpread(likely);
        return new HeatLevelRange(
                Collections.min(List.of(dim, spread.lowest())),
                spread.likely(),
                Collections.max(List.of(bright, spread.highest())));
    }

    private static Map<HeatLevel, Double> begins(HeatResult heat) {
        Map<HeatLevel, Double> begins = new EnumMap<>(HeatLevel.class);
        for (HeatLevel level : HeatLevel.values()) {
            begins.put(level, heat.beginsWithPowerLikely(level));
        }
        return begins;
    }

    private BoilingOutcome boil(AbsorbedLight absorbed) {
        if (full) {
            return cooking.boil(absorbed);
        }
        OptionalDouble seconds = cooking.likelyBoilSeconds(absorbed);
        return seconds.isPresent()
                ? new BoilingOutcome.Boils(LikelyRange.exact(seconds.getAsDouble()))
                : new BoilingOutcome.Never(
                        LikelyRange.exact(cooking.settlingCelsius(absorbed).likely()));
    }

    private static List<LightLimit> limits(Ledger ledger, double beam) {
        List<LightLimit> limits = new ArrayList<>();
        add(limits, LightLimit.Kind.WEAK_BEAM, 1 - beam / StandardCookingPower.STANDARD_IRRADIANCE);
        add(
                limits,
                LightLimit.Kind.MISSES,
                ledger.missed().value() / ledger.reflected().value());
        add(
                limits,
                LightLimit.Kind.CLIMBS_WALL,
                ledger.wall().value() / ledger.caught().value());
        limits.sort(Comparator.comparingDouble(LightLimit::share).reversed());
        return limits;
    }

    private static void add(List<LightLimit> limits, LightLimit.Kind kind, double share) {
        if (share >= LightLimit.LEAST) {
            limits.add(new LightLimit(kind, share));
        }
    }
}
