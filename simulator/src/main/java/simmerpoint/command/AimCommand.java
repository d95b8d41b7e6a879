package simmerpoint.command;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import simmerpoint.answer.aim.AimAnswer;
import simmerpoint.report.ResultFiles;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.study.aim.AimPlan;
import simmerpoint.study.aim.AimResult;
import simmerpoint.study.aim.AimStudy;
import simmerpoint.study.aim.AimTolerance;

/** How exactly and how often to aim. */
@Command(
        name = "aim",
        mixinStandardHelpOptions = true,
        versionProvider = RootCommand.Versions.class,
        description = "How often to aim again, what aiming ahead of the sun buys, and how exactly to aim.",
        sortOptions = false)
final class AimCommand extends ScenarioCommand {
    @Option(
            names = "--loss",
            paramLabel = "PERCENT",
            converter = Converters.Loss.class,
            description =
                    "How much of the watts may be lost before it is time to aim, for instance 5%% (default: 10%%).")
    private double loss = AimTolerance.USUAL_LOSS;

    @Option(
            names = "--stick",
            paramLabel = "LENGTH",
            converter = Converters.Stick.class,
            description = "Length of the sighting stick whose shadow you aim by (default: 10 cm or 4 in).")
    private Double stick;

    AimCommand(Terminal terminal) {
        super(terminal);
    }

    private AimPlan plan() {
        return new AimPlan(loss, stick == null ? AimPlan.usual(units).stickMetres() : stick);
    }

    @Override
    public Integer call() throws Exception {
        outputs.check(file);
        CheckedScenario read = read();
        read.atOneMoment();
        tellOddities(read);
        AimResult result =
                study(name(), progress -> AimStudy.run(read, plan(), rays.options(), outputs.any(), progress));
        outputs.write(ResultFiles.of(result, units), terminal);
        say(result, AimAnswer::brief, AimAnswer::of);
        return 0;
    }
}
