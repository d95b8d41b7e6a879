package simmerpoint.sun;

import simmerpoint.geometry.Direction;
import simmerpoint.geometry.Vec;

/**
 * Position of the sun's centre in the ground frame (east, north, up), and its distance.
 *
 * @param elevationRadians apparent elevation, refraction included, −π/2 to π/2
 * @param geometricElevationRadians elevation without refraction, −π/2 to π/2; equal to the other far below the horizon
 * @param azimuthRadians from north over east, 0 to 2π; ill-conditioned at the zenith
 * @param distanceAstronomicalUnits distance Earth to sun, 0.98 to 1.02
 */
public record SunPosition(
        double elevationRadians,
        double geometricElevationRadians,
        double azimuthRadians,
        double distanceAstronomicalUnits) {
    /** Checks the ranges. */
    public SunPosition {
        if (!(Math.abs(elevationRadians) <= Math.PI / 2 && Math.abs(geometricElevationRadians) <= Math.PI / 2)) {
            throw new IllegalArgumentException("elevation " + elevationRadians + " rad (" + geometricElevationRadians
                    + " rad without air) is outside -pi/2 to pi/2");
        }
        if (!(azimuthRadians >= 0 && azimuthRadians <= 2 * Math.PI)) {
            throw new IllegalArgumentException("azimuth " + azimuthRadians + " rad is outside 0 to 2 pi");
        }
        if (!(distanceAstronomicalUnits > 0.98 && distanceAstronomicalUnits < 1.02)) {
            throw new IllegalArgumentException("distance " + distanceAstronomicalUnits + " au is outside 0.98 to 1.02");
        }
    }

    /** Whether the sun's centre is above a level horizon. */
    public boolean isUp() {
        return elevationRadians > 0;
    }

    /** Apparent direction to the sun, in the ground frame (east, north, up). */
    public Direction towardsSun() {
        return towards(elevationRadians);
    }

    /** Direction to the sun without refraction, in the ground frame (east, north, up). */
    Direction towardsSunWithoutAir() {
        return towards(geometricElevationRadians);
    }

    /** The same with both elevations at least {@code elevation} (rad). */
    SunPosition atLeast(double elevation) {
        return new SunPosition(
                Math.max(elevation, elevationRadians),
                Math.max(elevation, geometricElevationRadians),
                azimuthRadians,
                distanceAstronomicalUnits);
    }

    private Direction towards(double elevation) {
        double level = Math.cos(elevation);
        return Direction.of(
                new Vec(level * Math.sin(azimuthRadians), level * Math.cos(azimuthRadians), Math.sin(elevation)));
    }
}
