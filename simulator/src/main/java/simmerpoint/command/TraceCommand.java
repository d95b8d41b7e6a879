package simmerpoint.command;

import picocli.CommandLine.Command;
import simmerpoint.answer.trace.TraceAnswer;
import simmerpoint.report.ResultFiles;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.study.trace.TraceResult;

/** The main job: from a scenario file to watts in the pan. */
@Command(
        name = "trace",
        mixinStandardHelpOptions = true,
        versionProvider = RootCommand.Versions.class,
        description = "How much sunlight reaches the pan, how it is spread, where the rest goes.",
        sortOptions = false)
final class TraceCommand extends ScenarioCommand {
    private final Tracer tracer;

    TraceCommand(Terminal terminal, Tracer tracer) {
        super(terminal);
        this.tracer = tracer;
    }

    @Override
    public Integer call() throws Exception {
        outputs.check(file);
        CheckedScenario read = read();
        Scenario scenario = read.atOneMoment();
        tellOddities(read);
        TraceResult result = study(name(), progress -> tracer.trace(scenario, rays.options(), progress));
        outputs.write(ResultFiles.of(result, units), terminal);
        say(TraceAnswer.of(result, units));
        return 0;
    }
}
