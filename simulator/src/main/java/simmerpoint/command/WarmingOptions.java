package simmerpoint.command;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import picocli.CommandLine.Option;
import simmerpoint.report.ResultFiles;
import simmerpoint.study.trace.WarmingResult;
import simmerpoint.units.UnitSystem;

/** Files of the warming curve. */
final class WarmingOptions {
    @Option(names = "--warming", description = "Print how fast the water warms: minutes against its temperature.")
    private boolean rows;

    @Option(
            names = "--warming-csv",
            paramLabel = "FILE",
            description = "Write the water's temperature minute by minute as CSV.")
    private String csv;

    @Option(names = "--warming-png", paramLabel = "FILE", description = "Write the same as a picture.")
    private String png;

    /** Whether rows are to be printed. */
    boolean printed() {
        return rows;
    }

    /** Whether any of it is asked for. */
    boolean wanted() {
        return rows || csv != null || png != null;
    }

    /** The files: option and name, null if it is not wanted. */
    Map<String, String> named() {
        Map<String, String> names = new LinkedHashMap<>();
        names.put("--warming-csv", csv);
        names.put("--warming-png", png);
        return names;
    }

    /** Name of each file that is wanted and what goes into it. */
    Map<String, Supplier<byte[]>> files(WarmingResult result, UnitSystem units) {
        ResultFiles files = ResultFiles.of(result, units);
        Map<String, Supplier<byte[]>> wanted = new LinkedHashMap<>();
        if (csv != null) {
            wanted.put(csv, files.csv());
        }
        if (png != null) {
            wanted.put(png, files.png());
        }
        return wanted;
    }
}
