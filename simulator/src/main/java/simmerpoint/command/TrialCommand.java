package simmerpoint.command;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import simmerpoint.answer.trial.TrialAnswer;
import simmerpoint.input.InputFileException;
import simmerpoint.report.ResultFiles;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.trial.AsBuilt;
import simmerpoint.trial.TrialResult;
import simmerpoint.trial.TrialStudy;
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

    @Option(
            names = "--as-built",
            paramLabel = "FILE",
            description = "Write the scenario of the cooker as its logs show it, for all other commands.")
    private String asBuilt;

    TrialCommand(Terminal terminal) {
        super(terminal);
    }

    @Override
    public Integer call() throws Exception {
        Map<String, String> named = new LinkedHashMap<>();
        named.put("--as-built", asBuilt);
        outputs.check(file, named);
        CheckedScenario read = read(file);
        tellOddities(read);
        if (read.scenario().cooking().isEmpty()) {
            throw new WrongUse(ScenarioInput.name(file)
                    + ": a trial heats water in a pan, and the scenario has a bare disc (plane).");
        }
        List<TrialLog> all = logs();
        TrialResult result =
                study(ScenarioInput.name(file), progress -> TrialStudy.run(read, all, rays.options(), progress));
        outputs.write(ResultFiles.of(result, units), more(result), terminal);
        say(result, TrialAnswer::brief, TrialAnswer::of);
        return 0;
    }

    /** The further file and what goes into it. */
    private Map<String, Supplier<byte[]>> more(TrialResult result) throws ScenarioException, WrongUse {
        if (asBuilt == null) {
            return Map.of();
        }
        String text = AsBuilt.text(result, rays.options())
                .orElseThrow(() -> new WrongUse("--as-built: no log heats the water from well below the boil."));
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        return Map.of(asBuilt, () -> bytes);
    }

    private List<TrialLog> logs() throws WrongUse {
        List<TrialLog> read = new ArrayList<>();
        for (Path log : logs) {
            try {
                read.add(LogReader.read(log));
            } catch (InputFileException e) {
                throw new WrongUse(e.getMessage());
            }
        }
        return read;
    }
}
