package simmerpoint.sampling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.apache.commons.math3.exception.NoBracketingException;
import org.junit.jupiter.api.Test;

class RootFinderTest {
    /** Where cos x = x: 0.739085133215160641655 (OEIS A003957, from memory). */
    private static final double DOTTIE = 0.7390851332151607;

    @Test
    void findsAKnownRoot() {
        assertEquals(DOTTIE, RootFinder.to(1e-12, 100).find(x -> Math.cos(x) - x, 0, 1), 1e-11);
        assertEquals(DOTTIE, RootFinder.toShare(1e-9, 100).find(x -> Math.cos(x) - x, 0, 1), 1e-8);
    }

    @Test
    void isContentWithAValueNearZero() {
        double place = new RootFinder(0, 1e-12, 0.5, 100).find(x -> x - 2, 1.8, 9);
        assertEquals(2, place, 0.5);
    }

    @Test
    void refusesEndsOfOneSign() {
        RootFinder finder = RootFinder.to(1e-9, 100);
        assertThrows(NoBracketingException.class, () -> finder.find(x -> x * x + 1, -1, 1));
    }
}
