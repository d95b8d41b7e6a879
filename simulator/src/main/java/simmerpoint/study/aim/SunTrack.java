package simmerpoint.study.aim;

import java.time.ZonedDateTime;
import java.util.Optional;
import simmerpoint.geometry.Direction;
import simmerpoint.geometry.Vec;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.SiteConditions;
import simmerpoint.sun.SunMoment;
import simmerpoint.sun.SunMotion;

/**
 * Where the sun goes after it has been aimed at, as drift seen by a dish that stands still. With a place and a time it is
 * the sun's real way, curved as it is; else a straight one at {@link #FASTEST}, in a direction that is given.
 *
 * @param from place and time of the aiming, if they are known
 * @param elevationRadians of the sun then
 * @param upRadiansPerMinute speed upwards at first, rad/min
 * @param sideRadiansPerMinute speed to the right of whoever looks at the sun (+y) at first, rad/min
 */
public record SunTrack(
        Optional<SunMoment> from, double elevationRadians, double upRadiansPerMinute, double sideRadiansPerMinute) {
    /**
     * The sun's fastest walk, rad/min: a quarter of a degree, 15° an hour, which is 360° in 24 h. At a declination δ it
     * walks cos δ of that (derived here), so it is never below 0.229° in a minute, and no interval is shorter than what
     * this speed says, refraction near the horizon aside.
     */
    public static final double FASTEST = Math.toRadians(0.25);

    /** No way is followed farther, rad: the light of a dish is not asked for beyond. */
    private static final double FARTHEST = Math.toRadians(30);

    private static final double MINUTE_NANOS = 60e9;
    private static final int HALVINGS = 40;

    /** Whether place and time are known, so that this is the sun's real way. */
    public boolean isReal() {
        return from.isPresent();
    }

    /** Speed at first, rad/min. */
    public double radiansPerMinute() {
        return Math.hypot(upRadiansPerMinute, sideRadiansPerMinute);
    }

    /** The real way for a scenario whose file says where and when; empty if it does not. */
    static Optional<SunTrack> real(Scenario scenario) {
        return scenario.site()
                .filter(SiteConditions::timed)
                .map(outdoors -> real(SunMoment.at(outdoors.place(), outdoors.when())));
    }

    /** The real way from a moment on. */
    static SunTrack real(SunMoment moment) {
        SunMotion motion = SunMotion.at(moment);
        return new SunTrack(
                Optional.of(moment),
                moment.position().elevationRadians(),
                motion.upRadiansPerMinute(),
                motion.sideRadiansPerMinute());
    }

    /** A straight way at the fastest walk, the way {@code way} goes. */
    static SunTrack fastest(Scenario scenario, MisaimDirection way) {
        return new SunTrack(
                Optional.empty(), scenario.sun().elevationRadians(), FASTEST * way.up(), FASTEST * way.side());
    }

    /** The drift {@code minutes} after the aiming: how much higher the sun stands and how far to the right, rad. */
    public Drift after(double minutes) {
        if (from.isEmpty()) {
            return new Drift(minutes * upRadiansPerMinute, minutes * sideRadiansPerMinute);
        }
        SunMoment start = from.get();
        ZonedDateTime then = start.time().plusNanos(Math.round(minutes * MINUTE_NANOS));
        Direction towards = SunMoment.at(start.site(), then).position().towardsSun();
        return seen(start, towards);
    }

    /** {@code towards} (ground frame) seen by a dish aimed at the sun of {@code start}: parts of the angle between. */
    private static Drift seen(SunMoment start, Direction towards) {
        double elevation = start.position().elevationRadians();
        double azimuth = start.position().azimuthRadians();
        double level = -Math.sin(elevation);
        Vec up = new Vec(level * Math.sin(azimuth), level * Math.cos(azimuth), Math.cos(elevation));
        Vec right = new Vec(Math.cos(azimuth), -Math.sin(azimuth), 0);
        double u = towards.vec().dot(up);
        double s = towards.vec().dot(right);
        double across = Math.hypot(u, s);
        double along = towards.dot(start.position().towardsSun());
        double scale = across > 0 ? Math.atan2(across, along) / across : 1;
        return new Drift(u * scale, s * scale);
    }

    /** How long the way can be followed, min: to the horizon, or until the sun has walked 30°. */
    double minutesToFollow() {
        double all = FARTHEST / radiansPerMinute();
        if (isUpAfter(all)) {
            return all;
        }
        double up = 0;
        double down = all;
        for (int k = 0; k < HALVINGS; k++) {
            double middle = (up + down) / 2;
            if (isUpAfter(middle)) {
                up = middle;
            } else {
                down = middle;
            }
        }
        return up;
    }

    private boolean isUpAfter(double minutes) {
        if (from.isEmpty()) {
            return elevationRadians + minutes * upRadiansPerMinute > 0;
        }
        ZonedDateTime then = from.get().time().plusNanos(Math.round(minutes * MINUTE_NANOS));
        return SunMoment.at(from.get().site(), then).position().isUp()
                && elevationRadians + after(minutes).upRadians() > 0;
    }

    /**
     * How far the sun has gone from where it was aimed at.
     *
     * @param upRadians higher
     * @param sideRadians to the right of whoever looks at the sun (+y)
     */
    public record Drift(double upRadians, double sideRadians) {
        /** All of it, rad. */
        public double radians() {
            return Math.hypot(upRadians, sideRadians);
        }
    }
}
