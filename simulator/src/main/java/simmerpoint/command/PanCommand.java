package simmerpoint.command;

import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import simmerpoint.answer.PanAnswer;
import simmerpoint.report.PanCsv;
import simmerpoint.report.PanJson;
import simmerpoint.report.PanPicture;
import simmerpoint.scenario.ReadScenario;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.ScenarioReader;
import simmerpoint.study.ImpossibleSetupException;
import simmerpoint.study.PanResult;
import simmerpoint.study.PanStudy;

/** Where to put the pan for a boil, for a simmer. */
@Command(
        name = "pan",
        mixinStandardHelpOptions = true,
        versionProvider = RootCommand.Versions.class,
        description = "Where to put the pan for a boil, for a simmer; how long to boil; how it fries.",
        sortOptions = false)
final class PanCommand extends StudyCommand {
    @Parameters(
            arity = "0..1",
            paramLabel = "FILE",
            description = "The scenario (default: the example that is built in).")
    private Path file;

    PanCommand(Terminal terminal) {
        super(terminal);
    }

    @Override
    public Integer call() throws Exception {
        outputs.check(file);
        ReadScenario read = file == null ? ScenarioReader.builtIn() : ScenarioReader.read(file);
        Scenario scenario = read.atOneMoment();
        if (scenario.kitchen().isEmpty()) {
            throw new WrongUse(
                    name() + ": only a pan can be asked for its place; this scenario has a bare disc (plane). "
                            + "Write pan: instead, or use trace.");
        }
        tellOddities(read);
        PanResult result = study(scenario);
        outputs.write(
                () -> PanJson.bytes(result),
                () -> PanCsv.bytes(result),
                () -> PanPicture.bytes(result, units),
                terminal);
        say(PanAnswer.of(result, units));
        return 0;
    }

    private String name() {
        return file == null ? "the built-in example" : file.toString();
    }

    private PanResult study(Scenario scenario) throws WrongUse {
        try (ProgressLine progress = progress()) {
            return PanStudy.run(scenario, rays.options(), progress);
        } catch (ImpossibleSetupException e) {
            throw new WrongUse(name() + ": " + e.getMessage() + ".");
        }
    }
}
