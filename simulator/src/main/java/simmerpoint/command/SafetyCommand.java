package simmerpoint.command;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Supplier;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;
import simmerpoint.answer.safety.SafetyAnswer;
import simmerpoint.drawing.output.Paper;
import simmerpoint.report.ResultFiles;
import simmerpoint.report.SafetySheet;
import simmerpoint.safety.SafetyResult;
import simmerpoint.safety.SafetyStudy;
import simmerpoint.safety.risk.Hazard;
import simmerpoint.scenario.checks.CheckedScenario;

/** What it can burn, and how far away. */
@Command(
        name = "safety",
        mixinStandardHelpOptions = true,
        versionProvider = RootCommand.Versions.class,
        description = "What the light can burn or light, how far from the focus, with the pan and without it.",
        sortOptions = false)
final class SafetyCommand extends ScenarioCommand {
    @Option(names = "--pdf", paramLabel = "FILE", description = "Write a sheet of one page to keep with the cooker.")
    private String pdf;

    @Option(
            names = "--hazard",
            paramLabel = "WORD",
            split = ",",
            converter = HazardWord.class,
            description =
                    "Tell only of these hazards in the answer's tables: discomfort, pain, smoulder, tinder, char, flash, burst.")
    private List<Hazard> hazards = List.of(Hazard.values());

    /** The name of a hazard. */
    static final class HazardWord implements ITypeConverter<Hazard> {
        @Override
        public Hazard convert(String text) {
            return Hazard.find(text.strip())
                    .orElseThrow(() ->
                            new TypeConversionException("\"" + text + "\" is no hazard; known are " + Hazard.words()));
        }
    }

    SafetyCommand(Terminal terminal) {
        super(terminal);
    }

    @Override
    public Integer call() throws Exception {
        outputs.check(file, moreFiles());
        CheckedScenario read = read();
        read.atOneMoment();
        tellOddities(read);
        SafetyResult result = study(
                name(), progress -> SafetyStudy.run(read, !isBrief(), rays.options(SafetyStudy.USUAL_RAYS), progress));
        outputs.write(ResultFiles.of(result, units), sheet(result), terminal);
        say(
                result,
                (found, system) -> SafetyAnswer.brief(found, hazards, system),
                (found, system) -> SafetyAnswer.of(found, hazards, system));
        return 0;
    }

    @Override
    Map<String, String> moreFiles() {
        Map<String, String> names = new TreeMap<>();
        names.put("--pdf", pdf);
        return names;
    }

    /** A sheet stays with the cooker, so it goes by the strongest sun, whatever the scenario's is. */
    private Map<String, Supplier<byte[]>> sheet(SafetyResult result) {
        return pdf == null
                ? Map.of()
                : Map.of(pdf, () -> SafetySheet.pdf(result.light().inStrongestSun(), Paper.usual(units), units));
    }
}
