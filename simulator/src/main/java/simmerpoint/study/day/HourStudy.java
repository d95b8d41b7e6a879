package simmerpoint.study.day;

import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import simmerpoint.heat.AbsorbedLight;
import simmerpoint.heat.BoilingOutcome;
import simmerpoint.heat.HeatLevel;
import simmerpoint.heat.balance.CookingModel;
import simmerpoint.heat.balance.StandardCookingPower;
import simmerpoint.heat.losses.LossFactors;
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
    private final CookingModel cooking;
    private final TraceOptions options;
    private long rays;

    HourStudy(Scenario scenario, TraceOptions options) {
        this.scenario = scenario;
        this.options = options;
        outdoors = scenario.site().orElseThrow(() -> new IllegalArgumentException("a day needs a place"));
        cooking = scenario.cooking()
                .orElseThrow(() -> new IllegalArgumentException("a day needs a pan, not a bare disc"))
                .cooking();
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
            return dark(moment, beam, stand, "no direct sunlight comes through the air");
        }
        Scenario then = scenario.withSun(new Sunlight(
                elevation, beam.likelyWattsPerSquareMetre(), scenario.sun().shape()));
        try {
            HourLight light = light(beam.likelyWattsPerSquareMetre(), then, progress);
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

    private HourLight light(double beam, Scenario then, Progress progress) {
        TraceResult traced = TraceStudy.run(then, options, progress);
        rays += traced.run().rays();
        HeatResult heat = traced.heat().orElseThrow();
        AbsorbedLight absorbed = heat.absorbed();
        return new HourLight(
                traced.ledger(),
                absorbed,
                heat.cookingPower(),
                heat.level(),
                heat.spareWatts(HeatLevel.SIMMER),
                boil(absorbed),
                traced.spot().peakFlux(),
                MaximumFlux.of(traced),
                begins(heat),
                limits(traced.ledger(), beam),
                Optional.empty());
    }

    private static Map<HeatLevel, Double> begins(HeatResult heat) {
        Map<HeatLevel, Double> begins = new EnumMap<>(HeatLevel.class);
        for (HeatLevel level : HeatLevel.values()) {
            begins.put(level, heat.beginsWithPowerLikely(level));
        }
        return begins;
    }

    private BoilingOutcome boil(AbsorbedLight absorbed) {
        OptionalDouble seconds = cooking.likelyBoilSeconds(absorbed);
        return seconds.isPresent()
                ? new BoilingOutcome.Boils(LikelyRange.exact(seconds.getAsDouble()))
                : new BoilingOutcome.Never(LikelyRange.exact(cooking.settlingCelsius(absorbed, LossFactors.LIKELY)));
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
