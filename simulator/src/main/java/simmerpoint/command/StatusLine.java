package simmerpoint.command;

import simmerpoint.quantities.OneLine;
import simmerpoint.report.Ascii;

/** One line on standard error that is written over again and again and erased at last. */
final class StatusLine {
    private static final int ROOM = 70;

    private final Terminal terminal;
    private int shown;

    StatusLine(Terminal terminal) {
        this.terminal = terminal;
    }

    /** Whether there is anything on the line. */
    synchronized boolean shows() {
        return shown > 0;
    }

    synchronized void show(String words) {
        String line = OneLine.of(words);
        line = line.substring(0, Math.min(ROOM, line.length()));
        String text = terminal.ascii() ? Ascii.of(line) : line;
        terminal.err().print("\r" + text + " ".repeat(Math.max(0, shown - text.length())));
        terminal.err().flush();
        shown = text.length();
    }

    synchronized void erase() {
        if (shown > 0) {
            terminal.err().print("\r" + " ".repeat(shown) + "\r");
            terminal.err().flush();
            shown = 0;
        }
    }
}
