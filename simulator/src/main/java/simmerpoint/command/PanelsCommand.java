package simmerpoint.command;

import picocli.CommandLine.Command;
import simmerpoint.answer.panels.PanelsAnswer;
import simmerpoint.report.ResultFiles;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.study.panels.PanelsResult;
import simmerpoint.study.panels.PanelsStudy;

/** Which panels miss, and how to turn them. */
@Command(
        name = "panels",
        mixinStandardHelpOptions = true,
        versionProvider = RootCommand.Versions.class,
        description = "Watts of each panel, the share of them that lands, and how to turn it so that more does.",
        sortOptions = false)
final class PanelsCommand extends ScenarioCommand {
    PanelsCommand(Terminal terminal) {
        super(terminal);
    }

    @Override
    public Integer call() throws Exception {
        outputs.check(file);
        CheckedScenario read = read();
        Scenario scenario = read.atOneMoment();
        tellOddities(read);
        PanelsResult result = study(name(), progress -> PanelsStudy.run(scenario, rays.options(), progress));
        outputs.write(ResultFiles.of(result, units), terminal);
        say(result, PanelsAnswer::brief, PanelsAnswer::of);
        return 0;
    }
}
