package simmerpoint.viewer.live;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;

/** Collects every state of an engine, delivered on the engine's own thread. */
final class StateLog<S> {
    private final List<S> states = new ArrayList<>();

    synchronized void add(S state) {
        states.add(state);
        notifyAll();
    }

    /** The first state that is {@code wanted}; fails if none comes within a minute. */
    synchronized S await(Predicate<S> wanted) throws InterruptedException {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(60);
        while (states.stream().noneMatch(wanted)) {
            assertTrue(System.nanoTime() < end, "no such state came");
            wait(100);
        }
        return states.stream().filter(wanted).findFirst().orElseThrow();
    }

    synchronized List<S> all() {
        return List.copyOf(states);
    }
}
