package simmerpoint.study.trace;

import java.util.concurrent.CancellationException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLongArray;
import java.util.concurrent.atomic.AtomicReference;

/**
 * Works on replicates with the caller's thread and some more, while the caller's reports progress and listens for a stop. The
 * others are kept between traces, since to start and wake them takes as long as a few thousand rays; those idle for a minute end.
 */
public final class ReplicateWorkers implements AutoCloseable {
    private static final long LISTEN_MILLIS = 50;
    private static final int STEPS_PER_LOOK = 64;

    /** The other threads. */
    static final ExecutorService HELPERS = Executors.newCachedThreadPool(work -> {
        Thread thread = new Thread(work, "replicate-worker");
        thread.setDaemon(true);
        return thread;
    });

    private final int threads;
    private final int replicates;
    private final Progress progress;
    private final AtomicLongArray permille;
    private volatile boolean stopped;
    private String detail = "";

    /** So many threads for so many replicates, telling {@code progress}. */
    public ReplicateWorkers(int threads, int replicates, Progress progress) {
        this.threads = Math.min(threads, replicates);
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
        for (int r = 0; r < replicates; r++) {
            permille.set(r, 0);
        }
        Run run = new Run(job, from, to);
        for (int t = 1; t < threads; t++) {
            HELPERS.execute(() -> run.work(false));
        }
        run.work(true);
        run.await();
        report(to);
    }

    /** One run of a job for all replicates. */
    private final class Run {
        private final Job job;
        private final double from;
        private final double to;
        private final AtomicInteger next = new AtomicInteger();
        private final CountDownLatch left = new CountDownLatch(replicates);
        private final AtomicReference<Throwable> failure = new AtomicReference<>();
        private long lastReport = System.nanoTime();

        Run(Job job, double from, double to) {
            this.job = job;
            this.from = from;
            this.to = to;
        }

        /** Takes one replicate after the other until none is left. */
        void work(boolean callers) {
            int r = next.getAndIncrement();
            while (r < replicates) {
                int replicate = r;
                try {
                    job.work(replicate, (done, all) -> look(replicate, done, all, callers));
                } catch (RuntimeException | Error e) {
                    stop(e);
                }
                left.countDown();
                r = next.getAndIncrement();
            }
        }

        private void stop(Throwable cause) {
            failure.compareAndSet(null, cause);
            stopped = true;
            next.set(replicates);
            while (left.getCount() > 0) {
                left.countDown();
            }
        }

        private void look(int replicate, long done, long all, boolean callers) {
            if (done % STEPS_PER_LOOK == 0 || done == all) {
                permille.set(replicate, 1000 * done / all);
                if (callers) {
                    listen();
                }
                if (stopped) {
                    throw new CancellationException("stopped");
                }
            }
        }

        private void listen() {
            if (Thread.currentThread().isInterrupted()) {
                throw new CancellationException("interrupted");
            }
            if (System.nanoTime() - lastReport > TimeUnit.MILLISECONDS.toNanos(LISTEN_MILLIS)) {
                report(from + (to - from) * share());
                lastReport = System.nanoTime();
            }
        }

        /** Waits until the other threads are done, too; throws what any of them threw. */
        void await() {
            try {
                while (!left.await(LISTEN_MILLIS, TimeUnit.MILLISECONDS)) {
                    report(from + (to - from) * share());
                }
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                stopped = true;
                throw new CancellationException("interrupted");
            }
            Throwable cause = failure.get();
            if (cause != null) {
                throw cause instanceof RuntimeException known ? known : new IllegalStateException(cause);
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
        stopped = true;
    }
}
