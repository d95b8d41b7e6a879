package simmerpoint.command;

import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import simmerpoint.answer.TraceAnswer;
import simmerpoint.scenario.ReadScenario;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.ScenarioReader;
import simmerpoint.study.ImpossibleSetupException;
import simmerpoint.study.TraceResult;

/** The main job: from a scenario file to watts in the pan. */
@Command(
        name = "trace",
        mixinStandardHelpOptions = true,
        versionProvider = RootCommand.Versions.class,
        description = "How much sunlight reaches the pan, how it is spread, where the rest goes.",
        sortOptions = false)
final class TraceCommand extends StudyCommand {
    private final Tracer tracer;

    @Parameters(
            arity = "0..1",
            paramLabel = "FILE",
            description = "The scenario (default: the example that is built in).")
    private Path file;

    TraceCommand(Terminal terminal, Tracer tracer) {
        super(terminal);
        this.tracer = tracer;
    }

    @Override
    public Integer call() throws Exception {
        outputs.check(file);
        ReadScenario read = file == null ? ScenarioReader.builtIn() : ScenarioReader.read(file);
        Scenario scenario = read.atOneMoment();
        tellOddities(read);
        TraceResult result = trace(scenario);
        outputs.write(result, units, terminal);
        say(TraceAnswer.of(result, units));
        return 0;
    }

    private TraceResult trace(Scenario scenario) throws WrongUse {
        try (ProgressLine progress = progress()) {
            return tracer.trace(scenario, rays.options(), progress);
        } catch (ImpossibleSetupException e) {
            throw new WrongUse((file == null ? "the built-in example" : file) + ": " + e.getMessage() + ".");
        }
    }
}
