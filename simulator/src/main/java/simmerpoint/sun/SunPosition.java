package simmerpoint.sun;

import simmerpoint.geometry.Direction;
import simmerpoint.geometry.Vec;

/**
 * Where the middle of the sun stands in the ground frame (east, north, up), and how far away it is.
 *
 * @param elevationRadians angle above the level horizon as one sees it, refraction included, −π/2 to π/2
 * @param geometricElevationRadians the same without air, −π/2 to π/2; equal to the other one far below the horizon
 * @param azimuthRadians from north over east, 0 to 2π; unstable within a hair of the zenith
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

    /** Whether the middle of the sun is seen above a level horizon. */
    public boolean isUp() {
        return elevationRadians > 0;
    }

    /** Direction from the ground to the sun as one sees it, in the ground frame (east, north, up). */
    public Direction towardsSun() {
        return towards(elevationRadians);
    }

    /** Direction from the ground to the sun as it were without air, in the ground frame (east, north, up). */
    Direction towardsSunWithoutAir() {
        return towards(geometricElevationRadians);
    }

    /** The same, raised to {@code elevation} (rad, with and without air) where it is lower. */
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
