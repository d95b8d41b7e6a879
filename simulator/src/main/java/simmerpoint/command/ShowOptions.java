package simmerpoint.command;

import picocli.CommandLine.Option;
import simmerpoint.answer.Answer;
import simmerpoint.report.TextReport;
import simmerpoint.units.UnitSystem;

/** How long and how wide an answer is. */
final class ShowOptions {
    private static final int USUAL = 80;
    private static final int WIDEST_TO_READ = 100;

    @Option(names = "--full", description = "The whole answer; without it a dozen lines.")
    private boolean full;

    @Option(
            names = "--width",
            paramLabel = "COLUMNS",
            converter = Converters.Width.class,
            description = "Width of the text, 40 to 1000 (default: COLUMNS if set, up to 100, else 80).")
    private Integer width;

    /** Whether the whole answer is wanted. */
    boolean full() {
        return full;
    }

    /** What is found as an answer, as long as is wanted; only that one is put into words. */
    <R> Answer answer(R found, UnitSystem units, Words<R> brief, Words<R> whole) {
        return (full ? whole : brief).of(found, units);
    }

    /** Puts something found into words. */
    @FunctionalInterface
    interface Words<R> {
        Answer of(R found, UnitSystem units);
    }

    int columns(Terminal terminal) {
        if (width != null) {
            return width;
        }
        return terminal.columns() >= TextReport.NARROWEST ? Math.min(terminal.columns(), WIDEST_TO_READ) : USUAL;
    }
}
