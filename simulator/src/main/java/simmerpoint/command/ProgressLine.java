package simmerpoint.command;

import simmerpoint.study.trace.Progress;

/** One line on standard error that says how far the work is: only for work of over half a second, erased at its end. */
final class ProgressLine implements Progress, AutoCloseable {
    private static final long PATIENCE_NANOS = 500_000_000L;
    private static final long PAUSE_NANOS = 100_000_000L;

    private final StatusLine line;
    private final boolean silent;
    private final long start = System.nanoTime();
    private final Thread atEnd = new Thread(this::stop, "erase progress");
    private long last = start;
    private volatile boolean stopped;

    ProgressLine(Terminal terminal, boolean silent) {
        line = new StatusLine(terminal);
        this.silent = silent;
        Runtime.getRuntime().addShutdownHook(atEnd);
    }

    @Override
    public boolean report(double done, String detail) {
        long now = System.nanoTime();
        if (!silent && !stopped && now - start > PATIENCE_NANOS && (!line.shows() || now - last > PAUSE_NANOS)) {
            last = now;
            int percent = (int) Math.round(100 * Math.max(0, Math.min(1, done)));
            line.show("tracing: " + percent + " % " + detail);
        }
        return !stopped;
    }

    /** The program is being ended from outside. */
    private void stop() {
        stopped = true;
        line.erase();
    }

    @Override
    public void close() {
        line.erase();
        try {
            Runtime.getRuntime().removeShutdownHook(atEnd);
        } catch (IllegalStateException e) {
            // The program is ending already: the hook has done or is doing the same.
            stopped = true;
        }
    }
}
