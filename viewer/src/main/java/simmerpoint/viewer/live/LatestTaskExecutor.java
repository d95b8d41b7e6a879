package simmerpoint.viewer.live;

import java.util.concurrent.CancellationException;

/**
 * One thread on which the newest job wins. A job's first part always runs to its end, so that something is seen however
 * fast jobs come; its second part is broken off when a newer job arrives. Jobs that were overtaken while they waited are
 * dropped.
 */
final class LatestTaskExecutor implements AutoCloseable {
    /** What is to be done. */
    interface Job {
        /** Short work, not broken off. */
        void first();

        /** Long work, broken off by an interrupt. */
        void rest();
    }

    private final Thread thread;
    private final long pauseNanos;
    private Job waiting;
    private Job wanted;
    private boolean breakable;
    private boolean closed;

    /** A lane that begins a job once {@code pauseMillis} have gone by without a newer one. */
    LatestTaskExecutor(String name, long pauseMillis) {
        pauseNanos = pauseMillis * 1_000_000;
        thread = new Thread(this::work, name);
        thread.setDaemon(true);
        thread.start();
    }

    synchronized void put(Job job) {
        waiting = job;
        wanted = null;
        breakOff();
        notifyAll();
    }

    /** Forgets what waits and breaks off what runs. */
    synchronized void clear() {
        waiting = null;
        wanted = null;
        breakOff();
    }

    /** Whether the running job may go on. */
    synchronized boolean goOn() {
        return wanted != null && !closed && !Thread.currentThread().isInterrupted();
    }

    private void breakOff() {
        if (breakable) {
            thread.interrupt();
        }
    }

    private void work() {
        for (Job job = next(); job != null; job = next()) {
            try {
                job.first();
                rest(job);
            } catch (CancellationException e) {
                // Something newer is wanted, or nothing any more.
            }
        }
    }

    private void rest(Job job) {
        synchronized (this) {
            if (wanted != job || closed) {
                return;
            }
            breakable = true;
        }
        try {
            job.rest();
        } finally {
            synchronized (this) {
                breakable = false;
                // An interrupt was meant for this job; the next one starts without it.
                Thread.interrupted();
            }
        }
    }

    private synchronized Job next() {
        while (!closed) {
            try {
                if (waiting == null) {
                    wait();
                } else {
                    Job job = waiting;
                    pause(job);
                    if (waiting == job && !closed) {
                        waiting = null;
                        wanted = job;
                        return job;
                    }
                }
            } catch (InterruptedException e) {
                // Only close() interrupts here: the loop's condition sees it.
            }
        }
        return null;
    }

    private void pause(Job job) throws InterruptedException {
        long end = System.nanoTime() + pauseNanos;
        for (long left = pauseNanos; left > 0 && waiting == job && !closed; left = end - System.nanoTime()) {
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
