package simmerpoint.command;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import simmerpoint.answer.trial.CardAnswer;
import simmerpoint.answer.trial.ClassAnswer;
import simmerpoint.answer.trial.TrialAnswer;
import simmerpoint.report.LessonFile;
import simmerpoint.report.ResultFiles;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.trial.AsBuilt;
import simmerpoint.trial.ClassResult;
import simmerpoint.trial.ClassStudy;
import simmerpoint.trial.TrialResult;
import simmerpoint.trial.TrialStudy;
import simmerpoint.trial.log.ClassLogs;
import simmerpoint.trial.log.TrialLog;
import simmerpoint.trial.log.TrialLogs;
import simmerpoint.trial.spot.CardReading;
import simmerpoint.trial.spot.CardResult;
import simmerpoint.trial.spot.CardStudy;
import simmerpoint.trial.spot.CardTable;

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
            "one log: where the pan stood (# stand.pull-back: 8 cm), or that a mask hung over part of the mirror",
            "(# dish.covered.part: lower; or rim or middle, then also # dish.covered.width: 20 cm). # sun: none says that it had",
            "no sun. In the folder of a class a folder is one cooker with several logs.",
            "A cooker whose logs cannot be read is named and left out.",
            "Cells may be parted by semicolons; then decimals may take a comma.",
            "Times since the start may also be written 0:05:30."
        },
        sortOptions = false)
final class TrialCommand extends StudyCommand {
    @Parameters(index = "0", arity = "1", paramLabel = "FILE", description = "The scenario; - is standard input.")
    private Path file;

    @Parameters(
            index = "1..*",
            arity = "0..*",
            paramLabel = "LOG",
            description =
                    "Logs of this cooker, with the pan in the same place or in others, with masks over the mirror or without, "
                            + "heated or cooling without sun; or one "
                            + "folder of a class, in which every log is another cooker.")
    private List<Path> logs = new ArrayList<>();

    @Option(
            names = "--as-built",
            paramLabel = "FILE",
            description = "Write the scenario of the cooker as its logs show it, for all other commands.")
    private String asBuilt;

    @Option(
            names = "--sheet",
            paramLabel = "FILE",
            description = "Write a page to print for a lesson, with a blank log (PDF); needs no log.")
    private String sheet;

    @Option(
            names = "--card",
            paramLabel = "FILE",
            description =
                    "In place of logs: widths or photographs of the spot on a card, to fit slope error and focal length. First "
                            + "line from_middle_cm,width_cm or from_middle_cm,photo,pixels_per_cm.")
    private Path card;

    TrialCommand(Terminal terminal) {
        super(terminal);
    }

    @Override
    public Integer call() throws Exception {
        outputs.check(file, named());
        CheckedScenario read = read(file);
        tellOddities(read);
        if (read.scenario().cooking().isEmpty()) {
            throw new WrongUse(ScenarioInput.name(file)
                    + ": a trial heats water in a pan, and the scenario has a bare disc (plane).");
        }
        if (card != null) {
            ofCard(read);
        } else if (logs.size() == 1 && Files.isDirectory(logs.get(0))) {
            ofClass(read, TrialLogs.ofClass(logs.get(0)));
        } else if (!logs.isEmpty()) {
            ofOne(read, TrialLogs.read(logs));
        } else if (sheet != null) {
            outputs.write(sheet(read), terminal);
            sayWritten();
        } else {
            throw new WrongUse("a log is missing; name one, a folder of them, or --sheet for a blank one");
        }
        return 0;
    }

    private Map<String, String> named() {
        Map<String, String> named = new LinkedHashMap<>();
        named.put("--as-built", asBuilt);
        named.put("--sheet", sheet);
        return named;
    }

    /** The sheet for a lesson, if it is wanted. */
    private Map<String, Supplier<byte[]>> sheet(CheckedScenario read) {
        Map<String, Supplier<byte[]>> files = new LinkedHashMap<>();
        if (sheet != null) {
            files.put(sheet, () -> LessonFile.pdf(read.scenario(), units));
        }
        return files;
    }

    private void ofCard(CheckedScenario read) throws Exception {
        if (!logs.isEmpty() || asBuilt != null) {
            throw new WrongUse("--card stands alone, without logs and --as-built.");
        }
        List<CardReading> readings = CardTable.read(card);
        CardResult result =
                study(ScenarioInput.name(file), progress -> CardStudy.run(read, readings, rays.options(), progress));
        outputs.write(ResultFiles.of(result, units), sheet(read), terminal);
        say(result, CardAnswer::brief, CardAnswer::of);
    }

    private void ofOne(CheckedScenario read, List<TrialLog> all) throws Exception {
        TrialResult result =
                study(ScenarioInput.name(file), progress -> TrialStudy.run(read, all, rays.options(), progress));
        outputs.write(ResultFiles.of(result, units), more(read, result), terminal);
        say(result, TrialAnswer::brief, TrialAnswer::of);
    }

    private void ofClass(CheckedScenario read, ClassLogs cookers) throws Exception {
        if (asBuilt != null) {
            throw new WrongUse("--as-built is for the logs of one cooker.");
        }
        ClassResult result =
                study(ScenarioInput.name(file), progress -> ClassStudy.run(read, cookers, rays.options(), progress));
        outputs.write(ResultFiles.of(result, units), sheet(read), terminal);
        say(result, ClassAnswer::brief, ClassAnswer::of);
    }

    /** The further files and what goes into them. */
    private Map<String, Supplier<byte[]>> more(CheckedScenario read, TrialResult result)
            throws ScenarioException, WrongUse {
        Map<String, Supplier<byte[]>> files = sheet(read);
        if (asBuilt == null) {
            return files;
        }
        String text = AsBuilt.of(result, rays.options())
                .map(AsBuilt.Found::text)
                .orElseThrow(() -> new WrongUse("--as-built: no log heats the water from well below the boil."));
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        files.put(asBuilt, () -> bytes);
        return files;
    }
}
