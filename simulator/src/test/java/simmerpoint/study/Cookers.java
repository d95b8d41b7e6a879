package simmerpoint.study;

import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.Optional;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.cut.FlatRings;
import simmerpoint.dish.cut.RingSpacing;
import simmerpoint.dish.mirror.Mirror;
import simmerpoint.pan.Finish;
import simmerpoint.pan.Pan;
import simmerpoint.scenario.CookingSetup;
import simmerpoint.scenario.GroundHeights;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.SiteConditions;
import simmerpoint.setup.Aim;
import simmerpoint.setup.Stand;
import simmerpoint.study.day.DayPlan;
import simmerpoint.study.day.DayResult;
import simmerpoint.study.day.DayStudy;
import simmerpoint.study.day.YearResult;
import simmerpoint.study.day.YearStudy;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.sun.AirType;
import simmerpoint.sun.BeamRangeModel;
import simmerpoint.sun.EsraSky;
import simmerpoint.sun.Site;
import simmerpoint.sun.Sunlight;
import simmerpoint.sun.UniformDiscSun;

/** Cookers and places for the tests of days. */
public final class Cookers {
    /** A hillside in the middle of Europe. */
    public static final Site HILLSIDE = Site.ofDegrees(47.3, 9.4, 600, ZoneId.of("Europe/Berlin"));

    /** North of the polar circle. */
    public static final Site FAR_NORTH = Site.ofDegrees(69.6, 18.9, 20, ZoneId.of("Europe/Oslo"));

    /** A clear sky of the open country, with its range. */
    public static final BeamRangeModel COUNTRY = BeamRangeModel.around(EsraSky.of(AirType.RURAL));

    private Cookers() {}

    /** A dish of flat panels, 1.2 m across and of 0.8 m focal length, under a level pan of 24 x 11 cm. */
    public static Scenario usual(Site place, BeamRangeModel sky) {
        Pan pan = new Pan(0.24, 0.11, new Finish("black", 1));
        DishPlan dish = new DishPlan(1.2, 0.8, 0.06, 0, new FlatRings(24, 6, RingSpacing.EQUAL_WIDTH));
        ZonedDateTime when = LocalDate.of(2026, 6, 21).atTime(12, 0).atZone(place.zone());
        return new Scenario(
                "Any cooker",
                dish,
                Mirror.plain(0.85, 5e-3),
                new Sunlight(Math.toRadians(50), 850, new UniformDiscSun(4.65e-3)),
                Aim.PERFECT,
                pan,
                Stand.AT_FOCUS,
                Optional.of(CookingSetup.usual(pan)),
                Optional.of(new SiteConditions(place, when, sky)),
                GroundHeights.USUAL);
    }

    /** The hours of a day with few rays. */
    public static DayResult day(Scenario scenario, LocalDate date) {
        return Once.of(
                () -> DayStudy.run(scenario, DayPlan.hourly(date), quick(), Progress.NONE), "day", scenario, date);
    }

    /** The year 2026 with few rays. */
    public static YearResult year(Scenario scenario) {
        return Once.of(() -> YearStudy.run(scenario, 2026, quick(), Progress.NONE), "year", scenario);
    }

    /** Few rays, one thread. */
    public static TraceOptions quick() {
        return TraceOptions.defaults().withRays(1L << 13).withThreads(1).withSeed(5);
    }
}
