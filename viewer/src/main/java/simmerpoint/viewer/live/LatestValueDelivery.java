package simmerpoint.viewer.live;

import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;

/** Delivers values to a listener through an executor; intermediate values of a burst are dropped. */
final class LatestValueDelivery<T> {
    private final Executor delivery;
    private final Consumer<T> listener;
    private final AtomicReference<T> newest = new AtomicReference<>();

    LatestValueDelivery(Executor delivery, Consumer<T> listener) {
        this.delivery = delivery;
        this.listener = listener;
    }

    void deliver(T value) {
        if (newest.getAndSet(value) == null) {
            delivery.execute(() -> listener.accept(newest.getAndSet(null)));
        }
    }
}
