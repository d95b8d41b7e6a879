package simmerpoint.study.aim;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.cut.Smooth;
import simmerpoint.dish.mirror.Mirror;
import simmerpoint.pan.Plane;
import simmerpoint.sampling.Estimate;
import simmerpoint.scenario.GroundHeights;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.SiteConditions;
import simmerpoint.setup.Aim;
import simmerpoint.setup.Stand;
import simmerpoint.study.Cookers;
import simmerpoint.study.Once;
import simmerpoint.study.paired.PairedStudy;
import simmerpoint.study.paired.PairedWatts;
import simmerpoint.study.trace.ImpossibleSetupException;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.sun.Site;
import simmerpoint.sun.SunMoment;
import simmerpoint.sun.Sunlight;
import simmerpoint.sun.UniformDiscSun;

class AimStudyTest {
    private static final TraceOptions FEW =
            TraceOptions.defaults().withRays(1 << 13).withThreads(2).withSeed(3);

    /** A smooth dish, hence a round and even one, whose disc stands square to the axis. */
    private static Scenario round(Aim.PanCarrier carrier) {
        return new Scenario(
                "Round",
                new DishPlan(1.2, 0.8, 0.06, 0, new Smooth()),
                Mirror.plain(0.85, 5e-3),
                new Sunlight(Math.toRadians(50), 850, new UniformDiscSun(4.65e-3)),
                new Aim(0, 0, 0, 0, 0, 0.05, carrier),
                new Plane(0.16, 0),
                Stand.AT_FOCUS);
    }

    private static Scenario flat(Aim.PanCarrier carrier) {
        Scenario deep = round(carrier);
        return new Scenario(
                "Flat",
                new DishPlan(0.6, 1.2, 0.06, 0, new Smooth()),
                deep.mirror(),
                deep.sun(),
                deep.aim(),
                deep.target(),
                deep.stand());
    }

    private static AimResult study(Scenario scenario) {
        return Once.of(() -> AimStudy.run(scenario, AimPlan.USUAL, FEW, Progress.NONE), "aim", scenario);
    }

    /** Only the time between aimings, for the sun at its fastest, going up. */
    private static AimIntervals.Found intervals(Scenario scenario) {
        PairedWatts deadOn =
                PairedStudy.watts(List.of(scenario), FEW, Progress.NONE).get(0);
        SunTrack way = SunTrack.fastest(scenario, MisaimDirection.DRIFT_UP);
        AimAgain again = AimAgain.along(way, scenario, AimTolerance.USUAL_LOSS, FEW, Progress.NONE);
        return new AimIntervals(deadOn, way, AimTolerance.USUAL_LOSS).find(again.minutes(), FEW, Progress.NONE);
    }

    private static double stretch(AimIntervals.Found found) {
        return found.twice().minutes() / found.single().minutes();
    }

    private static double watts(AimInterval interval, int moment) {
        return interval.moments().get(moment).watts().value();
    }

    private static void isTolerated(double first, Estimate watts) {
        assertEquals(0.9 * first, watts.value(), 4 * watts.standardError() + 0.01 * first);
    }

    /**
     * On a round, flat dish (a rim ray's way is 1.6 % longer than the vertex ray's) the sun's way does not matter, so aiming
     * ahead lasts twice as long for the same loss at both ends, 4 % allowed for that rim and for sampling.
     */
    @Test
    void aimingAheadDoublesTheIntervalForTheSameLoss() {
        for (Aim.PanCarrier carrier : Aim.PanCarrier.values()) {
            AimIntervals.Found found = intervals(flat(carrier));
            AimLead lead = found.lead().orElseThrow();
            assertEquals(2, stretch(found), 0.08, carrier.toString());
            double first = watts(found.single(), 0);
            isTolerated(first, lead.interval().least());
            isTolerated(first, found.single().moments().get(8).watts());
            assertTrue(lead.interval().mean().value() > found.twice().mean().value());
            assertTrue(found.twice().least().value() < 0.75 * first);
            double half = SunTrack.FASTEST * lead.interval().minutes() / 2;
            double share = carrier == Aim.PanCarrier.DISH ? 1 : 1.2 / 2.45;
            assertEquals(share * half, lead.radians(), 1e-9);
        }
    }

    /**
     * On a deep dish light from the rim is moved farther by a drift than the vertex ray, so that the lead by the vertex ray
     * comes short of the middle: less than twice, and never worse at its ends than the loss asked for.
     */
    @Test
    void aimingADeepDishAheadLastsNearlyTwiceAsLong() {
        AimIntervals.Found found = intervals(round(Aim.PanCarrier.STAND));
        assertTrue(stretch(found) > 1.6 && stretch(found) < 2, "stretch " + stretch(found));
        isTolerated(
                watts(found.single(), 0), found.lead().orElseThrow().interval().least());
        assertEquals(2, stretch(intervals(round(Aim.PanCarrier.DISH))), 0.06);
    }

    /** Simpson's rule over 8 steps against the trapezium rule over 64 traces by the same rays: a thousandth. */
    @Test
    void theMeanIsThatOfEveryMoment() {
        Scenario scenario = round(Aim.PanCarrier.STAND);
        AimInterval interval = intervals(scenario).single();
        SunTrack way = SunTrack.fastest(scenario, MisaimDirection.DRIFT_UP);
        int n = 64;
        List<Scenario> moments = new ArrayList<>();
        for (int k = 0; k <= n; k++) {
            double up = way.after(interval.minutes() * k / n).upRadians();
            moments.add(scenario.withAim(scenario.aim().plusDrift(up, 0)));
        }
        double sum = 0;
        List<PairedWatts> traced = PairedStudy.watts(moments, FEW, Progress.NONE);
        for (int k = 0; k <= n; k++) {
            sum += (k == 0 || k == n ? 0.5 : 1) * traced.get(k).useful().value();
        }
        assertEquals(sum / n, interval.mean().value(), 1e-3 * sum / n);
    }

    /**
     * A map's rows go with up and its columns with the right: the curves along its axes hold the same watts, within 5 standard
     * errors. A turn and the opposite drift share their light.
     */
    @Test
    void mapsHoldTheCurvesAndShareLight() {
        AimResult result = study(Cookers.usual(Cookers.HILLSIDE, Cookers.COUNTRY));
        assertEquals(2 * 25 * 25, result.run().aims());
        assertEquals(25 * 25, result.run().casts());
        assertFalse(result.maps().get(0).turn());
        assertTrue(result.maps().get(1).turn());
        for (AimCurve curve : result.curves()) {
            AimMap map = result.maps().get(curve.turn() ? 1 : 0);
            assertEquals(0, map.radians()[12]);
            for (int k = 0; k < map.radians().length; k++) {
                double angle = map.radians()[k];
                double watts = curve.side() ? map.watts()[12][k] : map.watts()[k][12];
                AimCurve.Point point = curve.points().stream()
                        .filter(p -> Math.abs(p.radians() - angle) < 1e-9)
                        .findFirst()
                        .orElseThrow();
                double error = Math.hypot(map.largestError(), point.watts().standardError());
                assertEquals(point.watts().value(), watts, 5 * error, "turn " + curve.turn() + ", at " + angle);
            }
        }
    }

    @Test
    void refusesADishThatThrowsNothingOnItsTarget() {
        Scenario beside = round(Aim.PanCarrier.STAND).withStand(new Stand(0, 0, 0, 1));
        String said = assertThrows(ImpossibleSetupException.class, () -> study(beside))
                .getMessage();
        assertTrue(said.contains("even when the dish is aimed dead on"), said);
    }

    @Test
    void stopsWhenToldTo() {
        assertThrows(
                CancellationException.class,
                () -> AimStudy.run(round(Aim.PanCarrier.STAND), AimPlan.USUAL, FEW, (done, detail) -> done < 0.5));
    }

    @Test
    void saysTheSameOnOneThreadAndTwo() {
        Scenario scenario = Cookers.usual(Cookers.HILLSIDE, Cookers.COUNTRY);
        TraceOptions few = FEW.withRays(1 << 10);
        AimResult one = AimStudy.run(scenario, AimPlan.USUAL, few.withThreads(1), Progress.NONE);
        AimResult two = AimStudy.run(scenario, AimPlan.USUAL, few, Progress.NONE);
        assertEquals(one.minutes(), two.minutes());
        assertEquals(one.tolerance().angles(), two.tolerance().angles());
        assertEquals(
                one.lead().map(l -> l.interval().mean()),
                two.lead().map(l -> l.interval().mean()));
        assertEquals(one.curves(), two.curves());
    }

    private static SunTrack way(Site place, String time) {
        ZonedDateTime when = ZonedDateTime.parse(time);
        double elevation = SunMoment.at(place, when).position().elevationRadians();
        Scenario scenario =
                round(Aim.PanCarrier.STAND).withSun(new Sunlight(elevation, 850, new UniformDiscSun(4.65e-3)));
        Scenario outdoors = new Scenario(
                "",
                scenario.dish(),
                scenario.mirror(),
                scenario.sun(),
                scenario.aim(),
                scenario.target(),
                scenario.stand(),
                Optional.empty(),
                Optional.of(new SiteConditions(place, when, Cookers.COUNTRY)),
                GroundHeights.USUAL);
        return SunTrack.real(outdoors).orElseThrow();
    }

    /**
     * On a day of declination δ the sun walks an arc of 2·asin(cos δ·sin(7.5°·t)) in t hours (haversine on the sphere, the
     * sun's daily turn 15°/h to 0.3 %; derived here). June solstice: δ = 23.44°. Refraction at 60° of elevation: below
     * 0.05 %.
     */
    @Test
    void theRealSunWalksItsDailyArc() {
        Site place = Site.ofDegrees(47.3, 9.4, 600, ZoneId.of("UTC"));
        SunTrack way = way(place, "2026-06-21T10:30:00Z");
        for (double minutes : new double[] {1, 10, 45}) {
            double arc = 2 * Math.asin(Math.cos(Math.toRadians(23.44)) * Math.sin(Math.toRadians(7.5 * minutes / 60)));
            assertEquals(arc, way.after(minutes).radians(), 4e-3 * arc, minutes + " min");
        }
    }

    /** In the north at solar noon the sun goes to the right; before it up and to the right, after it down. */
    @Test
    void theRealSunGoesWhereItGoes() {
        Site place = Site.ofDegrees(47.3, 0, 0, ZoneId.of("UTC"));
        SunTrack.Drift noon = way(place, "2026-03-21T12:07:00Z").after(10);
        assertEquals(Math.toRadians(2.5), noon.sideRadians(), 2e-4);
        assertEquals(0, noon.upRadians(), 2e-3);
        SunTrack.Drift morning = way(place, "2026-03-21T08:07:00Z").after(10);
        assertTrue(morning.upRadians() > 0.01 && morning.sideRadians() > 0.01, morning.toString());
        SunTrack.Drift evening = way(place, "2026-03-21T16:07:00Z").after(10);
        assertTrue(evening.upRadians() < -0.01 && evening.sideRadians() > 0.01, evening.toString());
    }

    /** At the equator on an equinox morning the sun climbs straight up 15° an hour; it sets 6 h after noon. */
    @Test
    void theRealWayEndsAtTheHorizon() {
        Site place = Site.ofDegrees(0, 0, 0, ZoneId.of("UTC"));
        SunTrack evening = way(place, "2026-03-20T17:07:00Z");
        assertEquals(60, evening.minutesToFollow(), 6);
        SunTrack morning = way(place, "2026-03-20T09:07:00Z");
        assertEquals(120, morning.minutesToFollow(), 1);
    }
}
