package simmerpoint.command;

import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import simmerpoint.answer.BudgetAnswer;
import simmerpoint.report.BudgetCsv;
import simmerpoint.report.BudgetJson;
import simmerpoint.report.BudgetPicture;
import simmerpoint.scenario.ReadScenario;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.ScenarioReader;
import simmerpoint.study.BudgetResult;
import simmerpoint.study.BudgetStudy;
import simmerpoint.study.ImpossibleSetupException;

/** What each flaw costs. */
@Command(
        name = "budget",
        mixinStandardHelpOptions = true,
        versionProvider = RootCommand.Versions.class,
        description = "What each flaw of mirrors, aim and place costs in watts, and what one step more or less of it.",
        sortOptions = false)
final class BudgetCommand extends StudyCommand {
    @Parameters(
            arity = "0..1",
            paramLabel = "FILE",
            description = "The scenario (default: the example that is built in).")
    private Path file;

    BudgetCommand(Terminal terminal) {
        super(terminal);
    }

    @Override
    public Integer call() throws Exception {
        outputs.check(file);
        ReadScenario read = file == null ? ScenarioReader.builtIn() : ScenarioReader.read(file);
        Scenario scenario = read.atOneMoment();
        tellOddities(read);
        BudgetResult result = study(scenario);
        outputs.write(
                () -> BudgetJson.bytes(result),
                () -> BudgetCsv.bytes(result),
                () -> BudgetPicture.bytes(result, units),
                terminal);
        say(BudgetAnswer.of(result, units));
        return 0;
    }

    private BudgetResult study(Scenario scenario) throws WrongUse {
        try (ProgressLine progress = progress()) {
            return BudgetStudy.run(scenario, rays.options(), progress);
        } catch (ImpossibleSetupException e) {
            throw new WrongUse((file == null ? "the built-in example" : file) + ": " + e.getMessage() + ".");
        }
    }
}
