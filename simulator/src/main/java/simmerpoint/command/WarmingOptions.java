package simmerpoint.command;

import java.nio.file.Path;
import picocli.CommandLine.Option;
import simmerpoint.report.AtomicFile;
import simmerpoint.report.OutputException;
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

    /** Refuses files for several scenarios. */
    void checkSeveral() throws WrongUse {
        if (csv != null || png != null) {
            throw new WrongUse((csv != null ? "--warming-csv" : "--warming-png") + " holds one scenario; name one.");
        }
    }

    /** Refuses what could not be written, before any work is done for it. */
    void check(Path scenarioFile) throws WrongUse {
        Path scenario = ScenarioInput.onDisk(scenarioFile);
        check("--warming-csv", csv, scenario);
        check("--warming-png", png, scenario);
        if (csv != null && png != null && OutputFile.same(Path.of(csv), Path.of(png))) {
            throw new WrongUse("--warming-csv and --warming-png name one and the same file " + csv + ".");
        }
    }

    private static void check(String option, String name, Path scenario) throws WrongUse {
        if (OutputFile.STANDARD.equals(name)) {
            throw new WrongUse(option + " needs the name of a file.");
        }
        if (name != null) {
            OutputFile.check(option, OutputFile.named(option, name), scenario);
        }
    }

    /** Writes the files that are wanted. */
    void write(WarmingResult result, UnitSystem units) throws OutputException {
        ResultFiles files = ResultFiles.of(result, units);
        if (csv != null) {
            AtomicFile.write(Path.of(csv), files.csv().get());
        }
        if (png != null) {
            AtomicFile.write(Path.of(png), files.png().get());
        }
    }
}
