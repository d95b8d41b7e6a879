package simmerpoint.command;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import simmerpoint.answer.TraceAnswer;
import simmerpoint.report.TextReport;
import simmerpoint.scenario.ReadScenario;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.ScenarioReader;
import simmerpoint.study.ImpossibleSetupException;
import simmerpoint.study.TraceResult;
import simmerpoint.units.UnitSystem;

/** The main job: from a scenario file to watts in the pan. */
@Command(
        name = "trace",
        mixinStandardHelpOptions = true,
        versionProvider = RootCommand.Versions.class,
        description = "How much sunlight reaches the pan, how it is spread, where the rest goes.",
        sortOptions = false)
final class TraceCommand implements Callable<Integer> {
    private final Terminal terminal;
    private final Tracer tracer;

    @Parameters(
            arity = "0..1",
            paramLabel = "FILE",
            description = "The scenario (default: the example that is built in).")
    private Path file;

    @Mixin
    private final RayOptions rays = new RayOptions();

    @Option(
            names = "--units",
            paramLabel = "metric|inch",
            converter = Converters.Units.class,
            description = "Units of the answer (default: metric).")
    private UnitSystem units = UnitSystem.METRIC;

    @Mixin
    private final ShowOptions show = new ShowOptions();

    @Mixin
    private final OutputOptions outputs = new OutputOptions();

    @Option(names = "--no-progress", description = "Show no progress.")
    private boolean noProgress;

    @Option(names = "--quiet", description = "Show neither progress nor notes.")
    private boolean quiet;

    TraceCommand(Terminal terminal, Tracer tracer) {
        this.terminal = terminal;
        this.tracer = tracer;
    }

    @Override
    public Integer call() throws Exception {
        outputs.check(file);
        ReadScenario read = file == null ? ScenarioReader.builtIn() : ScenarioReader.read(file);
        Scenario scenario = read.atOneMoment();
        if (!quiet) {
            read.warnings().forEach(warning -> terminal.complain("simmerpoint: note: " + warning));
        }
        TraceResult result = trace(scenario);
        outputs.write(result, units, terminal);
        if (!outputs.takesStandardOutput()) {
            TextReport.lines(TraceAnswer.of(result, units), show.columns(terminal), terminal.ascii())
                    .forEach(terminal::say);
        }
        return 0;
    }

    private TraceResult trace(Scenario scenario) throws WrongUse {
        boolean silent = quiet || noProgress || !terminal.errIsConsole();
        try (ProgressLine progress = new ProgressLine(terminal, silent)) {
            return tracer.trace(scenario, rays.options(), progress);
        } catch (ImpossibleSetupException e) {
            throw new WrongUse((file == null ? "the built-in example" : file) + ": " + e.getMessage() + ".");
        }
    }
}
