package simmerpoint.command;

import simmerpoint.scenario.ScenarioException;

/** Says how long something takes that cannot say how far it is: from the first second on, erased at its end. */
final class WaitingLine {
    private static final long SECOND_MILLIS = 1000;

    private final StatusLine line;
    private final String work;
    private final Thread ticking;

    private WaitingLine(Terminal terminal, String work) {
        this.line = new StatusLine(terminal);
        this.work = work;
        ticking = new Thread(this::tick, "waiting");
        ticking.setDaemon(true);
        ticking.start();
    }

    private void tick() {
        try {
            for (int seconds = 1; ; seconds++) {
                Thread.sleep(SECOND_MILLIS);
                line.show(work + ": " + seconds + " s");
            }
        } catch (InterruptedException e) {
            line.erase();
        }
    }

    private void end() {
        ticking.interrupt();
        try {
            ticking.join();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** Work that takes its time. */
    interface Work<T> {
        T run() throws ScenarioException;
    }

    /** Does the work, for instance "reading dish.yaml", and says how long it takes unless {@code silent}. */
    static <T> T during(String words, Terminal terminal, boolean silent, Work<T> work) throws ScenarioException {
        if (silent || !terminal.errIsConsole()) {
            return work.run();
        }
        WaitingLine line = new WaitingLine(terminal, words);
        try {
            return work.run();
        } finally {
            line.end();
        }
    }
}
