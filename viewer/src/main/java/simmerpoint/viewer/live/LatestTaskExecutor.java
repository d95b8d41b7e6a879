package simmerpoint.viewer.live;

import java.util.concurrent.CancellationException;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;

/**
 * A single-thread executor that runs only the latest task. The first part of a task is never interrupted, so that there are
 * results however fast tasks come; its second part is interrupted when a newer task arrives. Waiting tasks are replaced by
 * newer ones.
 */
final class LatestTaskExecutor implements AutoCloseable {
    /** A task in two parts. */
    interface Task {
        /** Short work, not interrupted. */
        void runFirst();

        /** Long work, interrupted by a newer task. */
        void runRest();

        /** Time without a newer task between the two, ms. */
        default long pauseMillis() {
            return 0;
        }
    }

    private final Thread thread;
    private final long delayNanos;
    private Task waiting;
    private Task current;
    private boolean interruptible;
    private boolean closed;

    /** Starts a task once {@code delayMillis} have passed without a newer one. */
    LatestTaskExecutor(String name, long delayMillis) {
        delayNanos = delayMillis * 1_000_000;
        thread = new Thread(this::work, name);
        thread.setDaemon(true);
        thread.start();
    }

    synchronized void submit(Task task) {
        waiting = task;
        current = null;
        interruptRunning();
        notifyAll();
    }

    /** Discards the waiting task and interrupts the running one. */
    synchronized void cancel() {
        waiting = null;
        current = null;
        interruptRunning();
    }

    /** Whether the running task is still the latest. */
    synchronized boolean shouldContinue() {
        return current != null && !closed && !Thread.currentThread().isInterrupted();
    }

    private void interruptRunning() {
        if (interruptible) {
            thread.interrupt();
        }
    }

    private void work() {
        for (Task task = next(); task != null; task = next()) {
            try {
                task.runFirst();
                runRest(task);
            } catch (CancellationException e) {
                // Replaced by a newer task, or closed.
            }
        }
    }

    private void runRest(Task task) {
        synchronized (this) {
            pause(task);
            if (current != task || closed) {
                return;
            }
            interruptible = true;
        }
        try {
            task.runRest();
        } finally {
            synchronized (this) {
                interruptible = false;
                // Clears an interrupt that was meant for this task.
                Thread.interrupted();
            }
        }
    }

    private synchronized Task next() {
        while (!closed) {
            try {
                if (waiting == null) {
                    wait();
                } else {
                    Task task = waiting;
                    delay(delayNanos, () -> waiting == task);
                    if (waiting == task && !closed) {
                        waiting = null;
                        current = task;
                        return task;
                    }
                }
            } catch (InterruptedException e) {
                // Only close() interrupts here: the loop's condition sees it.
            }
        }
        return null;
    }

    private void pause(Task task) {
        try {
            delay(TimeUnit.MILLISECONDS.toNanos(task.pauseMillis()), () -> current == task);
        } catch (InterruptedException e) {
            // Only close() interrupts here: the caller looks whether it is closed.
        }
    }

    /** Waits so long, but no longer than {@code latest} holds. */
    private void delay(long nanos, BooleanSupplier latest) throws InterruptedException {
        long end = System.nanoTime() + nanos;
        for (long left = nanos; left > 0 && latest.getAsBoolean() && !closed; left = end - System.nanoTime()) {
            wait(left / 1_000_000, (int) (left % 1_000_000));
        }
    }

    @Override
    public synchronized void close() {
        closed = true;
        thread.interrupt();
        notifyAll();
    }
}
