package simmerpoint.command;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import simmerpoint.input.InputFileException;
import simmerpoint.report.AtomicFile;
import simmerpoint.report.CookerReport;
import simmerpoint.report.PageStudy;
import simmerpoint.safety.SafetyStudy;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.trial.TrialResult;
import simmerpoint.trial.TrialStudy;
import simmerpoint.trial.log.TrialLog;
import simmerpoint.trial.log.TrialLogs;

/** Everything about one cooker on one page. */
@Command(
        name = "report",
        mixinStandardHelpOptions = true,
        versionProvider = RootCommand.Versions.class,
        description = "Write one HTML page with everything about the cooker, to open, print or send to a friend.",
        sortOptions = false)
final class ReportCommand extends InputCommand {
    private static final String ENDING = ".html";
    private static final int TOP_BYTES = 4096;

    @Parameters(arity = "1", paramLabel = "FILE", description = "The scenario; - is standard input.")
    private Path file;

    @Mixin
    private final RayOptions rays = new RayOptions();

    @Option(
            names = "--html",
            paramLabel = "FILE|-",
            description =
                    "The page (default: the scenario's name with .html in the current folder); - is standard output.")
    private String html;

    @Option(
            names = "--log",
            paramLabel = "LOG",
            description = "A log of the built cooker, as trial reads it, for a chapter of its own; as often as wanted.")
    private List<Path> logs = new ArrayList<>();

    ReportCommand(Terminal terminal) {
        super(terminal);
    }

    @Override
    public Integer call() throws Exception {
        boolean toTerminal = OutputFile.STANDARD.equals(html);
        Path page = toTerminal ? null : page();
        CheckedScenario read = read(file);
        if (page != null) {
            OutputFile.check("--html", page, null);
        }
        read.atOneMoment();
        List<TrialLog> tried = logs(read);
        tellOddities(read);
        PageStudy all = study(
                ScenarioInput.name(file),
                progress -> PageStudy.run(read, units, rays.options(), rays.options(SafetyStudy.USUAL_RAYS), progress));
        byte[] bytes = CookerReport.bytes(
                read, all.cooker(), all.safety(), trial(read, tried), ScenarioInput.fileName(file), units);
        if (toTerminal) {
            terminal.out().write(bytes, 0, bytes.length);
            terminal.out().flush();
        } else {
            AtomicFile.write(page, bytes);
            terminal.say(page + " is written: " + Math.max(1, bytes.length / 1000) + " kB, everything in one file.");
        }
        return 0;
    }

    /** The logs, read before anything is worked out. */
    private List<TrialLog> logs(CheckedScenario read) throws WrongUse, InputFileException {
        if (!logs.isEmpty() && read.scenario().cooking().isEmpty()) {
            throw new WrongUse("--log: a log heats water in a pan, and the scenario has a bare disc (plane).");
        }
        return logs.isEmpty() ? List.of() : TrialLogs.read(logs);
    }

    /** What the logs say, if there are any. */
    private Optional<TrialResult> trial(CheckedScenario read, List<TrialLog> tried) throws WrongUse, ScenarioException {
        return tried.isEmpty()
                ? Optional.empty()
                : Optional.of(study(
                        ScenarioInput.name(file), progress -> TrialStudy.run(read, tried, rays.options(), progress)));
    }

    /** Where to write, once it is sure that nothing of someone else's is lost there. */
    private Path page() throws WrongUse {
        Path page = html == null ? Path.of(usualName()) : OutputFile.named("--html", html);
        OutputFile.check("--html", page, ScenarioInput.onDisk(file));
        if (html == null && Files.exists(page) && !isOurs(page)) {
            throw new WrongUse(page + " is there already and is no page of simmerpoint's; name another with --html.");
        }
        return page;
    }

    private String usualName() {
        String name = ScenarioInput.fileName(file);
        return name.replaceFirst("\\.ya?ml$", "") + ENDING;
    }

    private static boolean isOurs(Path page) throws WrongUse {
        try (InputStream in = Files.newInputStream(page)) {
            return CookerReport.isOurs(new String(in.readNBytes(TOP_BYTES), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new WrongUse(page + " is there already and cannot be read; name another with --html.");
        }
    }
}
