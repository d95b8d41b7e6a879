package simmerpoint.command;

import picocli.CommandLine.Command;
import simmerpoint.answer.budget.BudgetAnswer;
import simmerpoint.report.ResultFiles;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.study.budget.BudgetResult;
import simmerpoint.study.budget.BudgetStudy;
import simmerpoint.study.likely.LikelyStudy;
import simmerpoint.study.trace.Progress;

/** What each flaw costs. */
@Command(
        name = "budget",
        mixinStandardHelpOptions = true,
        versionProvider = RootCommand.Versions.class,
        description = "What each flaw of mirrors, aim and place costs in watts, and what one step more or less of it.",
        sortOptions = false)
final class BudgetCommand extends ScenarioCommand {
    BudgetCommand(Terminal terminal) {
        super(terminal);
    }

    @Override
    public Integer call() throws Exception {
        outputs.check(file);
        CheckedScenario read = read();
        Scenario scenario = read.atOneMoment();
        tellOddities(read);
        BudgetResult result = study(name(), progress -> {
            BudgetResult costs = BudgetStudy.run(scenario, rays.options(BudgetStudy.USUAL_RAYS), progress);
            return costs.withLikely(
                    isBrief()
                            ? LikelyStudy.run(read, LikelyStudy.FOR_RANGE, rays.options(), Progress.NONE)
                            : LikelyStudy.withShares(read, rays.options(), Progress.NONE));
        });
        outputs.write(ResultFiles.of(result, units), terminal);
        say(result, BudgetAnswer::brief, BudgetAnswer::of);
        return 0;
    }
}
