package simmerpoint.command;

import picocli.CommandLine.Command;
import simmerpoint.answer.pan.PanAnswer;
import simmerpoint.report.ResultFiles;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.study.pan.PanResult;
import simmerpoint.study.pan.PanStudy;

/** Where to put the pan for a boil, for a simmer. */
@Command(
        name = "pan",
        mixinStandardHelpOptions = true,
        versionProvider = RootCommand.Versions.class,
        description = "Where to put the pan for a boil, for a simmer; how long to boil; how it fries.",
        sortOptions = false)
final class PanCommand extends ScenarioCommand {
    PanCommand(Terminal terminal) {
        super(terminal);
    }

    @Override
    public Integer call() throws Exception {
        outputs.check(file);
        CheckedScenario read = read();
        Scenario scenario = read.atOneMoment();
        if (scenario.cooking().isEmpty()) {
            throw new WrongUse(
                    name() + ": only a pan can be asked for its place; this scenario has a bare disc (plane). "
                            + "Write pan: instead, or use trace.");
        }
        tellOddities(read);
        PanResult result = study(name(), progress -> PanStudy.run(read, rays.options(), progress));
        outputs.write(ResultFiles.of(result, units), terminal);
        say(result, PanAnswer::brief, PanAnswer::of);
        return 0;
    }
}
