package simmerpoint.viewer.cook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** A clock on the wall of 60 seconds a minute and 60 minutes an hour. */
class CountdownTest {
    @Test
    void runsDownFromTheMomentOfAiming() {
        Countdown clock = Countdown.of(4.9);
        assertEquals("4:54", clock.clock(1000));
        assertFalse(clock.over(5000), "it stands");
        Countdown running = clock.aimed(1000);
        assertEquals("4:54", running.clock(1000));
        assertEquals("4:53", running.clock(1000.5 + 0.5));
        assertEquals(0.5, running.share(1000 + 147), 1e-12);
        assertEquals("0:01", running.clock(1000 + 293.2));
        assertFalse(running.over(1000 + 293.9));
        assertTrue(running.over(1000 + 294));
        assertEquals("\u22120:12", running.clock(1000 + 306));
        assertEquals(0, running.share(1000 + 306), 0);
        assertEquals("4:54", running.stopped().clock(1000 + 306));
    }

    @Test
    void anotherDesignChangesHowLongAnAimingLastsAndNotWhenItWas() {
        Countdown running = Countdown.of(5).aimed(100).lasting(10);
        assertEquals("9:00", running.clock(160));
        assertEquals("1:02:00", Countdown.of(62).clock(0));
    }
}
