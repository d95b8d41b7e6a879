package simmerpoint.sun;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class MaximumBeamTest {
    /** Common practice: about 1000 W/m² under a high sun in clean air, near 900 half-way up, far less at the horizon. */
    @Test
    void fallsWithTheSunAndStaysBelowWhatArrivesAboveTheAir() {
        double before = 1367;
        for (int degrees = 90; degrees > 0; degrees--) {
            double beam = MaximumBeam.wattsPerSquareMetre(Math.toRadians(degrees), 0);
            assertTrue(beam < before && beam > 0, degrees + "°: " + beam);
            before = beam;
        }
        assertTrue(at(60) > 1000 && at(30) > 900 && at(10) < 850 && at(3) < 600, at(30) + " " + at(10) + " " + at(3));
    }

    /**
     * Below it lie the clearest noons of a year at a high clean site (NSRDB 2023, 2168 m: January 1042 W/m² at 29°, March 1094
     * at 50°), above it what no sky gives: 1000 W/m² at 30° at sea level.
     */
    @Test
    void holdsTheClearestNoonsOfAHighSite() {
        assertTrue(MaximumBeam.wattsPerSquareMetre(Math.toRadians(29.3), 2168) > 1042);
        assertTrue(MaximumBeam.wattsPerSquareMetre(Math.toRadians(49.8), 2168) > 1094);
        assertTrue(at(30) < 1000, at(30) + "");
    }

    @Test
    void isStrongerOnAMountain() {
        assertTrue(MaximumBeam.wattsPerSquareMetre(0.3, 2500) > MaximumBeam.wattsPerSquareMetre(0.3, 0));
    }

    private static double at(double degrees) {
        return MaximumBeam.wattsPerSquareMetre(Math.toRadians(degrees), 0);
    }
}
