package simmerpoint.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import simmerpoint.answer.design.DesignAnswer;
import simmerpoint.dish.cut.MeasuredRibs;
import simmerpoint.heat.HeatLevel;
import simmerpoint.report.AtomicFile;
import simmerpoint.report.OutputException;
import simmerpoint.report.ResultFiles;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.study.design.DesignChoice;
import simmerpoint.study.design.DesignGoal;
import simmerpoint.study.design.DesignLimits;
import simmerpoint.study.design.DesignResult;
import simmerpoint.study.design.DesignStudy;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.workshop.CuttingStock;
import simmerpoint.workshop.UsualStock;

/** A dish that does what is wanted. */
@Command(
        name = "design",
        mixinStandardHelpOptions = true,
        versionProvider = RootCommand.Versions.class,
        description =
                "Which dish does what you want: fewest panels, smallest diameter, best focal length for the scenario's pan, "
                        + "mirror and sun.",
        sortOptions = false)
final class DesignCommand extends StudyCommand {
    @Parameters(
            arity = "1",
            paramLabel = "FILE",
            description =
                    "The scenario; its dish is where the search starts, all else stays as it is. - is standard input.")
    private Path file;

    @Mixin
    private final DesignOptions design = new DesignOptions();

    @Option(
            names = "--write",
            paramLabel = "FOLDER",
            description =
                    "Write the scenarios found there: fewest-panels.yaml, smallest-dish.yaml, easiest-aim.yaml, and with prices cheapest.yaml. "
                            + "The folder is made if it is not there; files that exist are not replaced.")
    private Path folder;

    DesignCommand(Terminal terminal) {
        super(terminal);
    }

    @Override
    public Integer call() throws Exception {
        outputs.check(file);
        refuseOptions();
        CheckedScenario read = read(file);
        if (read.scenario().dish().cut() instanceof MeasuredRibs) {
            throw new WrongUse(ScenarioInput.name(file)
                    + ": a search looks for dishes that are not built yet; leave the section as-built out.");
        }
        if (!read.scenario().dish().cut().zones().isEmpty()) {
            throw new WrongUse(ScenarioInput.name(file)
                    + ": a search looks for dishes of one cut and one mirror; leave dish.zones out.");
        }
        tellOddities(read);
        Scenario scenario = read.atOneMoment();
        DesignLimits limits = design.limits(scenario, CuttingStock.of(UsualStock.in(read.values(), units)));
        TraceOptions options = rays.options();
        DesignGoal goal = goal(scenario, options);
        DesignResult result =
                study(ScenarioInput.name(file), progress -> DesignStudy.run(read, goal, limits, options, progress));
        outputs.write(ResultFiles.of(result, units), terminal);
        List<String> written = write(result, read);
        say(result, DesignAnswer::brief, DesignAnswer::of);
        if (folder != null) {
            tellWritten(written);
        }
        return 0;
    }

    private void refuseOptions() throws WrongUse, OutputException {
        if (design.watts != null && design.level != null) {
            throw new WrongUse("--watts and --level both say what is wanted; give one of them.");
        }
        if (rays.options().precision() > 0) {
            throw new WrongUse("--precision does not go with a search: dishes are compared by equally many rays; "
                    + "use --rays.");
        }
        if (folder != null) {
            refuseFolder();
        }
        for (String name : folder == null ? List.<String>of() : Chosen.NAMES) {
            if (Files.exists(folder.resolve(name))) {
                throw new WrongUse("--write: " + folder.resolve(name) + " exists already; move it away or name another "
                        + "folder.");
            }
        }
    }

    /** One that is there, or can be made in a folder that is. */
    private void refuseFolder() throws WrongUse {
        if (folder.toString().isBlank()) {
            throw new WrongUse("--write needs the name of a folder; . is the current one.");
        }
        if (Files.isDirectory(folder)) {
            return;
        }
        if (Files.exists(folder)) {
            throw new WrongUse("--write: " + folder + " is a file; name a folder.");
        }
        Path parent = folder.toAbsolutePath().getParent();
        if (parent == null || !Files.isDirectory(parent)) {
            throw new WrongUse(
                    "--write: there is no folder " + folder.getParent() + " to make " + folder.getFileName() + " in.");
        }
    }

    private DesignGoal goal(Scenario scenario, TraceOptions options) throws WrongUse, ScenarioException {
        if (design.watts != null) {
            return new DesignGoal(design.watts, Optional.empty());
        }
        if (scenario.cooking().isEmpty()) {
            throw new WrongUse(ScenarioInput.name(file)
                    + ": a bare disc (plane) has no heat level; say how many watts: --watts 400W.");
        }
        HeatLevel level = design.level == null ? HeatLevel.BOIL : design.level;
        double watts =
                study(ScenarioInput.name(file), progress -> DesignStudy.wattsFor(level, scenario, options, progress));
        if (!Double.isFinite(watts)) {
            throw new WrongUse(ScenarioInput.name(file)
                    + ": no amount of light gets this pan that far; close its lid or keep the wind off it.");
        }
        return new DesignGoal(watts, Optional.of(level));
    }

    /** The files of the chosen dishes. */
    private static final class Chosen {
        static final List<String> NAMES =
                List.of("fewest-panels.yaml", "smallest-dish.yaml", "easiest-aim.yaml", "cheapest.yaml");

        static Map<String, DesignChoice> of(DesignResult result) {
            Map<String, DesignChoice> out = new LinkedHashMap<>();
            result.fewestPanels().ifPresent(c -> out.put(NAMES.get(0), c));
            result.smallestDish().ifPresent(c -> out.put(NAMES.get(1), c));
            result.easiestAim().ifPresent(c -> out.put(NAMES.get(2), c));
            result.cheapest().ifPresent(c -> out.put(NAMES.get(3), c));
            return out;
        }
    }

    /** The names of the files that were written. */
    private List<String> write(DesignResult result, CheckedScenario base) throws OutputException, ScenarioException {
        List<String> written = new ArrayList<>();
        for (Map.Entry<String, DesignChoice> each : folder == null
                ? Set.<Map.Entry<String, DesignChoice>>of()
                : Chosen.of(result).entrySet()) {
            makeFolder();
            String text = base.with(each.getValue().candidate().keys()).sourceText();
            AtomicFile.write(folder.resolve(each.getKey()), text.getBytes(StandardCharsets.UTF_8));
            written.add(folder.resolve(each.getKey()).toString());
        }
        return written;
    }

    private void makeFolder() throws OutputException {
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw new OutputException("the folder " + folder + " cannot be made", e);
        }
    }

    private void tellWritten(List<String> written) {
        if (written.isEmpty()) {
            tellBeside("Nothing is written to " + folder + ": no dish does it.");
        }
        written.forEach(file -> tellBeside(file + " is written."));
    }
}
