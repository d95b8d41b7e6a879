package simmerpoint.sun;

import simmerpoint.geometry.Direction;
import simmerpoint.geometry.Vec;

/**
 * Angular velocity of the sun on the sky, in the components of drift: {@code up} towards the zenith, {@code side} towards
 * the +y axis of a dish aimed at it, which is the right hand of someone who looks at the sun (z = axis to the sun, x =
 * upper edge, y = z × x). Both are angles on the sky, not azimuths, so they are finite with the sun at the zenith.
 *
 * @param upRadiansPerMinute rate towards the zenith, rad/min
 * @param sideRadiansPerMinute rate towards the right of someone who looks at the sun, rad/min
 */
public record SunMotion(double upRadiansPerMinute, double sideRadiansPerMinute) {
    private static final long STEP_SECONDS = 60;

    /**
     * The motion at the time of {@code moment}, from the positions a minute before and a minute after: relative error 1e-5.
     * Without refraction if the sun is not up during these two minutes.
     */
    public static SunMotion at(SunMoment moment) {
        SunMoment before = SunMoment.at(moment.site(), moment.time().minusSeconds(STEP_SECONDS));
        SunMoment after = SunMoment.at(moment.site(), moment.time().plusSeconds(STEP_SECONDS));
        boolean seen = before.position().isUp() && after.position().isUp();
        Vec walked = towards(after, seen).vec().minus(towards(before, seen).vec());
        Vec perMinute = walked.times(60.0 / (2 * STEP_SECONDS));
        return new SunMotion(perMinute.dot(upwards(moment)), perMinute.dot(sideways(moment)));
    }

    /** Speed on the sky, rad/min. At most 4.4 mrad/min apart from refraction. */
    public double radiansPerMinute() {
        return Math.hypot(upRadiansPerMinute, sideRadiansPerMinute);
    }

    /** Minutes until the sun has moved by {@code angleRadians} (rad, at least 0). */
    public double minutesFor(double angleRadians) {
        if (!(angleRadians >= 0)) {
            throw new IllegalArgumentException("angle " + angleRadians + " rad is below 0");
        }
        return angleRadians / radiansPerMinute();
    }

    private static Direction towards(SunMoment moment, boolean seen) {
        return seen ? moment.position().towardsSun() : moment.position().towardsSunWithoutAir();
    }

    private static Vec upwards(SunMoment moment) {
        double elevation = moment.position().elevationRadians();
        double azimuth = moment.position().azimuthRadians();
        double level = -Math.sin(elevation);
        return new Vec(level * Math.sin(azimuth), level * Math.cos(azimuth), Math.cos(elevation));
    }

    private static Vec sideways(SunMoment moment) {
        double azimuth = moment.position().azimuthRadians();
        return new Vec(Math.cos(azimuth), -Math.sin(azimuth), 0);
    }
}
