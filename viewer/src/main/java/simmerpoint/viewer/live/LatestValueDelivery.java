package simmerpoint.viewer.live;

import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;

/** Hands values to a listener on another thread; of a burst only the last arrives. */
final class LatestValueDelivery<T> {
    private final Executor delivery;
    private final Consumer<T> listener;
    private final AtomicReference<T> newest = new AtomicReference<>();

    LatestValueDelivery(Executor delivery, Consumer<T> listener) {
        this.delivery = delivery;
        this.listener = listener;
    }

    void put(T value) {
        if (newest.getAndSet(value) == null) {
            delivery.execute(() -> listener.accept(newest.getAndSet(null)));
        }
    }
}
