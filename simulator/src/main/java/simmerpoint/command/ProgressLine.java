package simmerpoint.command;

import simmerpoint.quantities.OneLine;
import simmerpoint.study.trace.Progress;

/** One line on standard error that says how far the work is: only for work of over half a second, erased at its end. */
final class ProgressLine implements Progress, AutoCloseable {
    private static final long PATIENCE_NANOS = 500_000_000L;
    private static final long PAUSE_NANOS = 100_000_000L;
    private static final int ROOM = 70;

    private final Terminal terminal;
    private final boolean silent;
    private final long start = System.nanoTime();
    private final Thread atEnd = new Thread(this::stop, "erase progress");
    private long last = start;
    private int shown;
    private volatile boolean stopped;

    ProgressLine(Terminal terminal, boolean silent) {
        this.terminal = terminal;
        this.silent = silent;
        Runtime.getRuntime().addShutdownHook(atEnd);
    }

    @Override
    public boolean report(double done, String detail) {
        long now = System.nanoTime();
        if (!silent && !stopped && now - start > PATIENCE_NANOS && (shown == 0 || now - last > PAUSE_NANOS)) {
            last = now;
            show(done, detail);
        }
        return !stopped;
    }

    private synchronized void show(double done, String detail) {
        int percent = (int) Math.round(100 * Math.max(0, Math.min(1, done)));
        String line = "tracing: " + percent + " %  " + OneLine.of(detail);
        line = line.substring(0, Math.min(ROOM, line.length()));
        String text = terminal.ascii() ? simmerpoint.report.Ascii.of(line) : line;
        terminal.err().print("\r" + text + " ".repeat(Math.max(0, shown - text.length())));
        terminal.err().flush();
        shown = text.length();
    }

    private synchronized void erase() {
        if (shown > 0) {
            terminal.err().print("\r" + " ".repeat(shown) + "\r");
            terminal.err().flush();
            shown = 0;
        }
    }

    /** The program is being ended from outside. */
    private void stop() {
        stopped = true;
        erase();
    }

    @Override
    public void close() {
        erase();
        try {
            Runtime.getRuntime().removeShutdownHook(atEnd);
        } catch (IllegalStateException e) {
            // The program is ending already: the hook has done or is doing the same.
            stopped = true;
        }
    }
}
