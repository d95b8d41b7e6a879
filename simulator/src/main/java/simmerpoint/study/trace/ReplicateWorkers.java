package simmerpoint.study.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicLongArray;

/** Works on replicates with several threads while the caller's thread reports progress and listens for a stop. */
public final class ReplicateWorkers implements AutoCloseable {
    private static final long LISTEN_MILLIS = 50;
    private static final int STEPS_PER_LOOK = 64;

    private final ExecutorService pool;
    private final int replicates;
    private final Progress progress;
    private final AtomicLongArray permille;
    private volatile boolean stopped;
    private String detail = "";

    /** So many threads for so many replicates, telling {@code progress}. */
    public ReplicateWorkers(int threads, int replicates, Progress progress) {
        pool = Executors.newFixedThreadPool(threads, work -> {
            Thread t = new Thread(work, "replicate-worker");
            t.setDaemon(true);
            return t;
        });
        this.replicates = replicates;
        this.progress = progress;
        permille = new AtomicLongArray(replicates);
    }

    /** Work on one replicate. */
    public interface Job {
        /** Does the work and tells {@code watch} of it. */
        void work(int replicate, Watch watch);
    }

    /** What a job tells now and then; throws {@link CancellationException} when the work is to stop. */
    public interface Watch {
        /** {@code done} of {@code all} steps are done. */
        void step(long done, long all);
    }

    /** Words for the progress report from now on. */
    void say(String words) {
        detail = words;
    }

    /** Runs the job for every replicate; returns when all are done. Progress goes from {@code from} to {@code to}. */
    public void run(double from, double to, Job job) {
        List<Future<?>> futures = new ArrayList<>();
        for (int r = 0; r < replicates; r++) {
            int replicate = r;
            permille.set(r, 0);
            futures.add(pool.submit(() -> job.work(replicate, (done, all) -> look(replicate, done, all))));
        }
        for (Future<?> f : futures) {
            await(f, from, to);
        }
        report(to);
    }

    private void look(int replicate, long done, long all) {
        if (done % STEPS_PER_LOOK == 0 || done == all) {
            permille.set(replicate, 1000 * done / all);
            if (stopped) {
                throw new CancellationException("stopped");
            }
        }
    }

    private void await(Future<?> future, double from, double to) {
        while (true) {
            try {
                future.get(LISTEN_MILLIS, TimeUnit.MILLISECONDS);
                return;
            } catch (TimeoutException e) {
                report(from + (to - from) * share());
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                stopped = true;
                throw new CancellationException("interrupted");
            } catch (ExecutionException e) {
                stopped = true;
                throw e.getCause() instanceof RuntimeException cause ? cause : new IllegalStateException(e.getCause());
            }
        }
    }

    private double share() {
        double sum = 0;
        for (int r = 0; r < replicates; r++) {
            sum += permille.get(r) / 1000.0;
        }
        return sum / replicates;
    }

    private void report(double done) {
        if (!progress.report(Math.min(1, done), detail)) {
            stopped = true;
            throw new CancellationException("stopped");
        }
    }

    @Override
    public void close() {
        stopped = stopped || Thread.currentThread().isInterrupted();
        pool.shutdownNow();
    }
}
