package simmerpoint.command;

import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import simmerpoint.answer.day.DayAnswer;
import simmerpoint.answer.day.YearAnswer;
import simmerpoint.report.ResultFiles;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.scenario.values.ScenarioValues;
import simmerpoint.study.day.DayPlan;
import simmerpoint.study.day.DayResult;
import simmerpoint.study.day.DayStudy;
import simmerpoint.study.day.YearResult;
import simmerpoint.study.day.YearStudy;

/** A cooker through a day or a year. */
@Command(
        name = "day",
        mixinStandardHelpOptions = true,
        versionProvider = RootCommand.Versions.class,
        description = "From when to when it cooks on a day, hour by hour, and how it must stand; or through a year.",
        sortOptions = false)
final class DayCommand extends StudyCommand {
    @Parameters(arity = "1", paramLabel = "FILE", description = "The scenario; it needs a place. - is standard input.")
    private Path file;

    @Option(
            names = "--date",
            paramLabel = "DATE",
            converter = Converters.Date.class,
            description = "Day to look at: 2026-10-05 (default: that of the scenario).")
    private LocalDate date;

    @Option(
            names = "--step",
            paramLabel = "TIME",
            converter = Converters.Step.class,
            description = "Time between two rows of the day, 5 min to 3 h (default: 1 h).")
    private Duration step;

    @Option(
            names = "--year",
            description = "Instead of one day the 21st of every month, hour by hour, with few rays for each.")
    private boolean year;

    DayCommand(Terminal terminal) {
        super(terminal);
    }

    @Override
    public Integer call() throws Exception {
        outputs.check(file);
        if (year && step != null) {
            throw new WrongUse("--step belongs to a single day: a year goes by full hours.");
        }
        CheckedScenario read = read(file);
        tellOddities(read);
        Scenario scenario = read.scenario();
        needs(scenario);
        try (ProgressLine progress = progress()) {
            if (year) {
                year(read, progress);
            } else {
                day(read, progress);
            }
        }
        return 0;
    }

    /** Where the file's own date has no sun, the date that was asked for takes its place. */
    @Override
    CheckedScenario read(Path file) throws ScenarioException, WrongUse {
        ScenarioValues values = reading(file, () -> input.values(file, terminal));
        CheckedScenario read = checked(values);
        outputs.checkInputs();
        return read;
    }

    private CheckedScenario checked(ScenarioValues values) throws ScenarioException {
        try {
            return CheckedScenario.of(values);
        } catch (ScenarioException e) {
            if (date == null || !values.hasSection("when")) {
                throw e;
            }
            return CheckedScenario.of(values.with(Map.of("when.date", date.toString())));
        }
    }

    private void needs(Scenario scenario) throws WrongUse {
        if (scenario.cooking().isEmpty()) {
            throw new WrongUse(ScenarioInput.name(file)
                    + ": a day needs a pan to cook in, and the scenario has a bare disc (plane).");
        }
        if (scenario.site().isEmpty()) {
            throw new WrongUse(ScenarioInput.name(file)
                    + ": a day needs a place; add for instance place: {latitude: 47.3°, longitude: 9.4°, "
                    + "altitude: 600 m, zone: Europe/Berlin}.");
        }
    }

    private LocalDate date(Scenario scenario) {
        return date != null ? date : scenario.site().orElseThrow().when().toLocalDate();
    }

    private void day(CheckedScenario read, ProgressLine progress) throws Exception {
        DayPlan plan = new DayPlan(
                date(read.scenario()), step == null ? DayPlan.USUAL_STEP : step, DayPlan.USUAL_LEAST_ELEVATION);
        DayResult result = DayStudy.run(read, plan, rays.options(), progress);
        progress.close();
        outputs.write(ResultFiles.of(result, units), terminal);
        say(result, DayAnswer::brief, DayAnswer::of);
    }

    private void year(CheckedScenario read, ProgressLine progress) throws Exception {
        YearResult result = YearStudy.run(
                read, date(read.scenario()).getYear(), outputs.any(), rays.options(YearStudy.DEFAULT_RAYS), progress);
        progress.close();
        outputs.write(ResultFiles.of(result, units), terminal);
        say(result, YearAnswer::brief, YearAnswer::of);
    }
}
