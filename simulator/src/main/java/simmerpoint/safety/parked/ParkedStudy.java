package simmerpoint.safety.parked;

import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import simmerpoint.geometry.Direction;
import simmerpoint.geometry.Vec;
import simmerpoint.safety.field.Surface;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.SiteConditions;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.sun.SunMoment;

/** Follows the hot spot of a dish that is left uncovered: by the angle of the sun, and hour by hour where the scenario names a place. */
public final class ParkedStudy {
    /** Rays of each moment, unless fewer are asked for. */
    private static final long RAYS = 1L << 14;

    private static final double[] ANGLES = {0, 2, 5, 10, 15, 20, 30, 45, 60, 75};

    /** An upright dish leans back a little: its axis is 5° above level. */
    private static final double UPRIGHT = Math.toRadians(5);

    /** Lower suns are hidden by hedges and roofs, and weak. */
    private static final double LEAST_ELEVATION = Math.toRadians(3);

    private static final int SEASON_STEP_HOURS = 2;

    private final Scenario scenario;
    private final List<Surface> things;
    private final List<Vec> stand;
    private final ParkedLight light;

    private ParkedStudy(Scenario scenario, List<Surface> things, TraceOptions options) {
        this.things = things;
        this.scenario = scenario;
        stand = StandPlaces.of(scenario);
        light = new ParkedLight(scenario, options.withRays(Math.min(RAYS, options.rays())));
    }

    /**
     * The parked dish of {@code scenario}.
     *
     * @param things to tell the light of while the dish is left as it was aimed
     * @param seasons whether days of all seasons are looked at, too
     * @throws java.util.concurrent.CancellationException if {@code progress} says stop
     */
    public static ParkedResult run(
            Scenario scenario, List<Surface> things, boolean seasons, TraceOptions options, Progress progress) {
        return new ParkedStudy(scenario, things, options).run(seasons, progress);
    }

    private ParkedResult run(boolean seasons, Progress progress) {
        List<OffAxis> angles = new ArrayList<>();
        for (double degrees : ANGLES) {
            progress.report(0.3 * angles.size() / ANGLES.length, "sun off the axis");
            angles.add(offAxis(Math.toRadians(degrees)));
        }
        Optional<SiteConditions> site = scenario.site();
        if (site.isEmpty()) {
            return new ParkedResult(angles, Optional.empty(), List.of());
        }
        LocalDate date = site.get().when().toLocalDate();
        List<ZonedDateTime> times = times(site.get(), date, seasons);
        List<ParkedWay> ways = new ArrayList<>();
        for (Parking parking : Parking.values()) {
            progress.report(0.3 + 0.7 * ways.size() / Parking.values().length, "parked dish");
            ways.add(way(parking, site.get(), times));
        }
        return new ParkedResult(angles, Optional.of(date), ways);
    }

    private OffAxis offAxis(double radians) {
        double elevation = scenario.sun().elevationRadians();
        double beam = scenario.sun().beamWattsPerSquareMetre();
        ParkedSpot side = light.at(elevation, 0, radians, beam, List.of(), stand, Progress.NONE);
        ParkedSpot up = radians == 0 ? side : light.at(elevation, radians, 0, beam, List.of(), stand, Progress.NONE);
        return new OffAxis(radians, up.or(side));
    }

    private static List<ZonedDateTime> times(SiteConditions site, LocalDate date, boolean seasons) {
        Stream<ZonedDateTime> day = hours(site, date, 1);
        Stream<LocalDate> others = Stream.of(3, 6, 9, 12)
                .map(month -> LocalDate.of(date.getYear(), month, 21))
                .filter(other -> !other.equals(date));
        return Stream.concat(
                        day, seasons ? others.flatMap(other -> hours(site, other, SEASON_STEP_HOURS)) : Stream.of())
                .toList();
    }

    private static Stream<ZonedDateTime> hours(SiteConditions site, LocalDate date, int step) {
        return IntStream.range(0, 24 / step)
                .mapToObj(k -> date.atStartOfDay(site.place().zone()).plusHours((long) k * step))
                .filter(time -> SunMoment.at(site.place(), time).position().elevationRadians() > LEAST_ELEVATION);
    }

    private ParkedWay way(Parking parking, SiteConditions site, List<ZonedDateTime> times) {
        double[] axis = axis(parking, site, times);
        // Things and stand are where the scenario says while the dish is aimed as there.
        boolean there = parking == Parking.AS_AIMED;
        List<ParkedHour> hours =
                times.stream().map(time -> hour(axis, site, time, there)).toList();
        return new ParkedWay(parking, axis[0], axis[1], hours);
    }

    /** Azimuth and elevation of the parked axis. */
    private static double[] axis(Parking parking, SiteConditions site, List<ZonedDateTime> times) {
        return switch (parking) {
            case ON_ITS_BACK -> new double[] {0, Math.PI / 2};
            case FACING_AWAY -> new double[] {site.place().southern() ? Math.PI : 0, UPRIGHT};
            case AS_AIMED -> {
                ZonedDateTime aimed = site.timed() && lit(site, site.when()) ? site.when() : noon(site, times);
                SunMoment moment = SunMoment.at(site.place(), aimed);
                yield new double[] {
                    moment.position().azimuthRadians(),
                    Math.max(UPRIGHT, moment.position().elevationRadians())
                };
            }
        };
    }

    private static boolean lit(SiteConditions site, ZonedDateTime time) {
        return SunMoment.at(site.place(), time).position().isUp();
    }

    /** The hour of the highest sun of the day of the scenario. */
    private static ZonedDateTime noon(SiteConditions site, List<ZonedDateTime> times) {
        return times.stream()
                .filter(time -> time.toLocalDate().equals(site.when().toLocalDate()))
                .max(Comparator.comparingDouble(
                        time -> SunMoment.at(site.place(), time).position().elevationRadians()))
                .orElse(site.when());
    }

    private ParkedHour hour(double[] axis, SiteConditions site, ZonedDateTime time, boolean there) {
        SunMoment moment = SunMoment.at(site.place(), time);
        Vec sun = moment.position().towardsSun().vec();
        Vec along = towards(axis[0], axis[1]);
        Vec up = towards(axis[0], axis[1] + Math.PI / 2);
        Vec right = new Vec(Math.cos(axis[0]), -Math.sin(axis[0]), 0);
        double u = sun.dot(up);
        double s = sun.dot(right);
        double off = Math.atan2(Math.hypot(u, s), sun.dot(along));
        double elevation = moment.position().elevationRadians();
        double beam = site.sky().at(moment).likelyWattsPerSquareMetre();
        boolean dark = off > Math.PI / 2 + rimSlope() || !(beam > 0);
        double scale = Math.hypot(u, s) > 0 ? off / Math.hypot(u, s) : 1;
        ParkedSpot spot = dark
                ? ParkedSpot.NONE
                : light.at(
                        axis[1],
                        u * scale,
                        s * scale,
                        beam,
                        there ? things : List.of(),
                        there ? stand : List.of(),
                        Progress.NONE);
        return new ParkedHour(time, elevation, off, spot);
    }

    /** How far behind the plane of the rim the sun still reaches the mirror: by the slope of the far wall at the rim, rad. */
    private double rimSlope() {
        return scenario.dish().rimAngle() / 2;
    }

    /** Ground frame: east, north, up. */
    private static Vec towards(double azimuth, double elevation) {
        double level = Math.cos(elevation);
        return Direction.of(new Vec(level * Math.sin(azimuth), level * Math.cos(azimuth), Math.sin(elevation)))
                .vec();
    }
}
