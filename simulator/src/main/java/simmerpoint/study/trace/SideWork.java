package simmerpoint.study.trace;

import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;

/**
 * Work that is done on a thread of its own while the caller does something else.
 *
 * @param <T> what comes of it
 */
public final class SideWork<T> implements AutoCloseable {
    private final FutureTask<T> task;
    private volatile boolean stopped;

    /**
     * Work that asks now and then whether to go on.
     *
     * @param <T> what comes of it
     */
    public interface Work<T> {
        /** Does it. */
        T run(Progress progress);
    }

    /** Begins at once, or where it is not to be done {@code beside} other work, when its result is asked for. */
    public SideWork(boolean beside, Work<T> work) {
        task = new FutureTask<>(() -> work.run((done, detail) -> !stopped));
        if (beside) {
            Thread thread = new Thread(task, "side-work");
            thread.setDaemon(true);
            thread.start();
        }
    }

    /** Waits for it, or does it if nobody has begun; throws what it threw. */
    public T result() {
        task.run();
        try {
            return task.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new CancellationException("interrupted");
        } catch (ExecutionException e) {
            throw e.getCause() instanceof RuntimeException cause ? cause : new IllegalStateException(e.getCause());
        }
    }

    /** Stops it if it is not done. */
    @Override
    public void close() {
        stopped = true;
    }
}
