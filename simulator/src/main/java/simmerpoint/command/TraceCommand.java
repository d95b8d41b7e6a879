package simmerpoint.command;

import picocli.CommandLine.Command;
import simmerpoint.answer.trace.TraceAnswer;
import simmerpoint.report.ResultFiles;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.study.likely.LikelyStudy;
import simmerpoint.study.trace.PartialProgress;
import simmerpoint.study.trace.TraceResult;

/** The main job: from a scenario file to watts in the pan. */
@Command(
        name = "trace",
        mixinStandardHelpOptions = true,
        versionProvider = RootCommand.Versions.class,
        description = "How much sunlight reaches the pan, how it is spread, where the rest goes.",
        sortOptions = false)
final class TraceCommand extends ScenarioCommand {
    private static final double TRACED = 0.5;

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
        TraceResult result = study(name(), progress -> {
            TraceResult traced = tracer.trace(scenario, rays.options(), new PartialProgress(progress, 0, TRACED));
            return traced.withLikely(LikelyStudy.run(
                    read, LikelyStudy.FOR_RANGE, rays.options(), new PartialProgress(progress, TRACED, 1)));
        });
        outputs.write(ResultFiles.of(result, units), terminal);
        say(TraceAnswer.of(result, units));
        return 0;
    }
}
