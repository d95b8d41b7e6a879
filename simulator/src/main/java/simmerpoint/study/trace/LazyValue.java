package simmerpoint.study.trace;

import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;

/**
 * A figure that is worked out when it is first asked for and then kept. Safe for several threads: two that ask at the same time may
 * both work it out; they find the same.
 *
 * @param <T> the figure
 */
public final class LazyValue<T> implements Supplier<T> {
    private final Supplier<T> work;
    private final AtomicReference<T> found = new AtomicReference<>();

    /** What {@code work} gives, which is never null. */
    public LazyValue(Supplier<T> work) {
        this.work = work;
    }

    @Override
    public T get() {
        if (found.get() == null) {
            found.set(work.get());
        }
        return found.get();
    }
}
