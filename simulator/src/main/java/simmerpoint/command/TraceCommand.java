package simmerpoint.command;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import simmerpoint.answer.Answer;
import simmerpoint.answer.trace.TraceAnswer;
import simmerpoint.answer.trace.WarmingSection;
import simmerpoint.report.OutputException;
import simmerpoint.report.RaysFile;
import simmerpoint.report.ResultFiles;
import simmerpoint.sampling.Estimate;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.study.aim.AimAgain;
import simmerpoint.study.likely.LikelyStudy;
import simmerpoint.study.pan.HeightSearch;
import simmerpoint.study.trace.BetterHeight;
import simmerpoint.study.trace.LikelyResult;
import simmerpoint.study.trace.PartialProgress;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.SideWork;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.study.trace.WarmingResult;

/** The main job: from a scenario file to watts in the pan. */
@Command(
        name = "trace",
        mixinStandardHelpOptions = true,
        versionProvider = RootCommand.Versions.class,
        description = "How much sunlight reaches the pan, how it is spread, where the rest goes.",
        sortOptions = false)
final class TraceCommand extends ScenarioCommand {
    private final Tracer tracer;

    @Mixin
    private final WarmingOptions warming = new WarmingOptions();

    @Mixin
    private final RaysOptions reflected = new RaysOptions();

    TraceCommand(Terminal terminal, Tracer tracer) {
        super(terminal);
        this.tracer = tracer;
    }

    @Override
    Map<String, String> moreFiles() {
        Map<String, String> names = new LinkedHashMap<>(warming.named());
        names.putAll(reflected.named());
        return names;
    }

    /** The trace and when to aim again, and beside it what the doubts make of it. */
    private TraceResult trace(CheckedScenario read, Progress whole) {
        Progress tracing = new PartialProgress(whole, 0, 0.5);
        Progress aiming = new PartialProgress(whole, 0.5, 1);
        Scenario scenario = read.scenario();
        TraceOptions options = rays.options();
        try (SideWork<LikelyResult> likely = new SideWork<>(
                options.threads() > 1, progress -> LikelyStudy.run(read, LikelyStudy.FOR_RANGE, options, progress))) {
            TraceResult traced = tracer.trace(scenario, options, tracing);
            Optional<Estimate> minutes = AimAgain.usualMinutes(scenario, options, aiming);
            Optional<BetterHeight> height = HeightSearch.of(scenario, options, Progress.NONE);
            return traced.withLikely(likely.result()).withAimAgain(minutes).withBetterHeight(height);
        }
    }

    /** The rays of the trace: as many, from the same seed. */
    private void writeRays(Scenario scenario, TraceResult result) throws OutputException {
        if (reflected.file().isPresent()) {
            Path to = reflected.file().get();
            TraceOptions options = rays.options().withRays(result.run().rays());
            try (ProgressLine line = progress()) {
                RaysFile.write(to, scenario, options, line);
            }
            outputs.wrote(to.toString());
        }
    }

    @Override
    public Integer call() throws Exception {
        outputs.check(file, moreFiles());
        CheckedScenario read = read();
        Scenario scenario = read.atOneMoment();
        if (warming.wanted() && scenario.cooking().isEmpty()) {
            throw new WrongUse(name() + ": a bare disc (plane) warms no water; write pan: instead.");
        }
        tellOddities(read);
        TraceResult result = study(name(), progress -> trace(read, progress));
        Optional<WarmingResult> curve = warming.wanted() ? WarmingResult.of(result) : Optional.empty();
        outputs.write(
                ResultFiles.of(result, units),
                curve.map(found -> warming.files(found, units)).orElse(Map.of()),
                terminal);
        writeRays(scenario, result);
        say(() -> {
            Answer answer = show.answer(result, units, TraceAnswer::brief, TraceAnswer::of);
            return curve.isPresent() && warming.printed() ? answer.with(WarmingSection.of(curve.get(), units)) : answer;
        });
        return 0;
    }
}
