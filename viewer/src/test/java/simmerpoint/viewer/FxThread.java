package simmerpoint.viewer;

import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;
import javafx.application.Platform;

/** JavaFX for tests: started once, without a screen. */
public final class FxThread {
    private static final long PATIENCE_SECONDS = 30;

    static {
        CountDownLatch started = new CountDownLatch(1);
        try {
            Platform.startup(started::countDown);
        } catch (IllegalStateException e) {
            started.countDown();
        }
        try {
            if (!started.await(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
                throw new IllegalStateException("JavaFX does not start");
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
        Platform.setImplicitExit(false);
    }

    private FxThread() {}

    /** What {@code work} gives on the FX thread; whatever it throws is thrown here. */
    public static <T> T get(Callable<T> work) {
        FutureTask<T> task = new FutureTask<>(work);
        Platform.runLater(task);
        try {
            return task.get(PATIENCE_SECONDS, TimeUnit.SECONDS);
        } catch (ExecutionException e) {
            if (e.getCause() instanceof Error error) {
                throw error;
            }
            throw new IllegalStateException(e.getCause());
        } catch (InterruptedException | TimeoutException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Does {@code work} on the FX thread and waits for it. */
    public static void run(Runnable work) {
        get(() -> {
            work.run();
            return null;
        });
    }

    /** Waits until two pulses have painted what was changed. */
    public static void settle() {
        for (int k = 0; k < 2; k++) {
            CountDownLatch pulse = new CountDownLatch(1);
            Platform.runLater(() -> {
                javafx.animation.AnimationTimer timer = new javafx.animation.AnimationTimer() {
                    @Override
                    public void handle(long now) {
                        stop();
                        pulse.countDown();
                    }
                };
                timer.start();
            });
            try {
                if (!pulse.await(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
                    throw new IllegalStateException("no pulse");
                }
            } catch (InterruptedException e) {
                throw new IllegalStateException(e);
            }
        }
    }

    /** Waits until {@code condition}, asked on the FX thread, holds; fails with {@code what} if it never does. */
    public static void until(String what, BooleanSupplier condition) {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_SECONDS);
        while (!get(condition::getAsBoolean)) {
            if (System.nanoTime() > end) {
                throw new AssertionError("waited in vain until " + what);
            }
            settle();
        }
    }
}
