package simmerpoint.command;

import picocli.CommandLine.Option;
import simmerpoint.report.TextReport;

/** How wide a text is. */
final class ShowOptions {
    private static final int USUAL = 80;
    private static final int WIDEST_TO_READ = 100;

    @Option(
            names = "--width",
            paramLabel = "COLUMNS",
            converter = Converters.Width.class,
            description = "Width of the text, 40 to 1000 (default: COLUMNS if set, up to 100, else 80).")
    private Integer width;

    int columns(Terminal terminal) {
        if (width != null) {
            return width;
        }
        return terminal.columns() >= TextReport.NARROWEST ? Math.min(terminal.columns(), WIDEST_TO_READ) : USUAL;
    }
}
