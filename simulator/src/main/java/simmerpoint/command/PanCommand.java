package simmerpoint.command;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import simmerpoint.answer.PanAnswer;
import simmerpoint.report.PanCsv;
import simmerpoint.report.PanJson;
import simmerpoint.report.PanPicture;
import simmerpoint.report.TextReport;
import simmerpoint.scenario.ReadScenario;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.ScenarioReader;
import simmerpoint.study.ImpossibleSetupException;
import simmerpoint.study.PanResult;
import simmerpoint.study.PanStudy;
import simmerpoint.units.UnitSystem;

/** Where to put the pan for a boil, for a simmer. */
@Command(
        name = "pan",
        mixinStandardHelpOptions = true,
        versionProvider = RootCommand.Versions.class,
        description = "Where to put the pan for a boil, for a simmer; how long to boil; how it fries.",
        sortOptions = false)
final class PanCommand implements Callable<Integer> {
    private final Terminal terminal;

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

    PanCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws Exception {
        outputs.check(file);
        ReadScenario read = file == null ? ScenarioReader.builtIn() : ScenarioReader.read(file);
        Scenario scenario = read.atOneMoment();
        if (scenario.kitchen().isEmpty()) {
            throw new WrongUse(
                    name() + ": only a pan can be asked for its place; this scenario has a bare disc (plane). "
                            + "Write pan: instead, or use trace.");
        }
        if (!quiet) {
            read.warnings().forEach(warning -> terminal.complain("simmerpoint: note: " + warning));
        }
        PanResult result = study(scenario);
        outputs.write(
                () -> PanJson.bytes(result),
                () -> PanCsv.bytes(result),
                () -> PanPicture.bytes(result, units),
                terminal);
        if (!outputs.takesStandardOutput()) {
            TextReport.lines(PanAnswer.of(result, units), show.columns(terminal), terminal.ascii())
                    .forEach(terminal::say);
        }
        return 0;
    }

    private String name() {
        return file == null ? "the built-in example" : file.toString();
    }

    private PanResult study(Scenario scenario) throws WrongUse {
        boolean silent = quiet || noProgress || !terminal.errIsConsole();
        try (ProgressLine progress = new ProgressLine(terminal, silent)) {
            return PanStudy.run(scenario, rays.options(), progress);
        } catch (ImpossibleSetupException e) {
            throw new WrongUse(name() + ": " + e.getMessage() + ".");
        }
    }
}
