package simmerpoint.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import simmerpoint.answer.trial.TrialAnswer;
import simmerpoint.report.ResultFiles;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.trial.TrialResult;
import simmerpoint.trial.TrialStudy;
import simmerpoint.trial.log.LogException;
import simmerpoint.trial.log.LogReader;
import simmerpoint.trial.log.TrialLog;

/** Logs of a built cooker. */
@Command(
        name = "trial",
        mixinStandardHelpOptions = true,
        versionProvider = RootCommand.Versions.class,
        description = "How good a built cooker is, and what is wrong with it, from logs of water heated in it.",
        footer = {
            "",
            "A log is a CSV file: a line of names, then readings:",
            "  time_min,water_C,air_C,irradiance_W_m2,beam_W_m2,wind_m_s",
            "  0,18.4,24.1,905,780,0.6",
            "Only time (time_min, time_s, time_h or time_local as 11:05) and water (water_C or water_F) are needed; cells may be",
            "empty. irradiance is all sunlight on a plane that faces the sun. Comments behind # may set keys of the scenario for",
            "one log (# stand.pull-back: 8 cm) or say that it had no sun (# sun: none)."
        },
        sortOptions = false)
final class TrialCommand extends StudyCommand {
    @Parameters(index = "0", arity = "1", paramLabel = "FILE", description = "The scenario; - is standard input.")
    private Path file;

    @Parameters(
            index = "1..*",
            arity = "1..*",
            paramLabel = "LOG",
            description =
                    "Logs of this cooker, with the pan in the same place or in others, heated or cooling without sun.")
    private List<Path> logs = new ArrayList<>();

    TrialCommand(Terminal terminal) {
        super(terminal);
    }

    @Override
    public Integer call() throws Exception {
        outputs.check(file);
        CheckedScenario read = read(file);
        tellOddities(read);
        if (read.scenario().cooking().isEmpty()) {
            throw new WrongUse(ScenarioInput.name(file)
                    + ": a trial heats water in a pan, and the scenario has a bare disc (plane).");
        }
        List<TrialLog> all = logs();
        TrialResult result =
                study(ScenarioInput.name(file), progress -> TrialStudy.run(read, all, rays.options(), progress));
        outputs.write(ResultFiles.of(result, units), terminal);
        say(result, TrialAnswer::brief, TrialAnswer::of);
        return 0;
    }

    private List<TrialLog> logs() throws WrongUse {
        List<TrialLog> read = new ArrayList<>();
        for (Path log : logs) {
            try {
                read.add(LogReader.read(log));
            } catch (LogException e) {
                throw new WrongUse(e.getMessage());
            }
        }
        return read;
    }
}
