package simmerpoint.viewer.understand;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Executor;
import simmerpoint.input.InputFileException;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.study.trace.ImpossibleSetupException;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.trial.AsBuilt;
import simmerpoint.trial.ClassStudy;
import simmerpoint.trial.TrialResult;
import simmerpoint.trial.TrialStudy;
import simmerpoint.trial.log.TrialLogs;
import simmerpoint.viewer.live.OnDemandStudy;

/** The logs that were chosen, and the study of them. Files are read on its thread, anew each time, so that a mended log can be tried again. */
final class TrialModel implements AutoCloseable {
    private final TraceOptions options;
    private final OnDemandStudy<LogsResult> study;
    private volatile List<Path> files = List.of();

    /** Without logs. */
    TrialModel(TraceOptions options, long pauseMillis, Executor delivery) {
        this.options = options;
        study = new OnDemandStudy<>("trial", pauseMillis, delivery, this::find);
    }

    OnDemandStudy<LogsResult> study() {
        return study;
    }

    /** Whether there is anything to hold against a design. */
    boolean hasLogs() {
        return !files.isEmpty();
    }

    /** Takes logs of one cooker, or the folder of a class, in place of those before, and begins; without any nothing changes. */
    void open(List<Path> chosen, CheckedScenario read) {
        if (!chosen.isEmpty()) {
            files = List.copyOf(chosen);
            study.forget();
            study.start(read);
        }
    }

    private LogsResult find(CheckedScenario read, Progress progress) throws ScenarioException, InputFileException {
        if (read.scenario().cooking().isEmpty()) {
            throw new ImpossibleSetupException("a trial heats water in a pan, and this design has a bare disc");
        }
        List<Path> now = files;
        if (now.size() == 1 && Files.isDirectory(now.get(0))) {
            return new LogsResult.Cookers(ClassStudy.run(read, TrialLogs.ofClass(now.get(0)), options, progress));
        }
        TrialResult trial = TrialStudy.run(read, TrialLogs.read(now), options, progress);
        return LogsResult.OneCooker.of(trial, AsBuilt.of(trial, options));
    }

    @Override
    public void close() {
        study.close();
    }
}
