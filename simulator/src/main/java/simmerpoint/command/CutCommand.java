package simmerpoint.command;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import simmerpoint.answer.cut.CutAnswer;
import simmerpoint.drawing.output.Paper;
import simmerpoint.report.CutFiles;
import simmerpoint.report.ResultFiles;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.study.build.BuildTrace;
import simmerpoint.study.trace.ImpossibleSetupException;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.workshop.CutPlan;
import simmerpoint.workshop.CuttingException;

/** What to cut. */
@Command(
        name = "cut",
        mixinStandardHelpOptions = true,
        versionProvider = RootCommand.Versions.class,
        description =
                "What to cut for this dish: ribs, panels, film, patterns at full size, sheets to buy, weight and wind.",
        sortOptions = false)
final class CutCommand extends StudyCommand {
    @Parameters(
            arity = "0..1",
            paramLabel = "FILE",
            description = "The scenario; - is standard input (default: the example that is built in).")
    private Path file;

    @Option(names = "--pdf", paramLabel = "FILE", description = "Write the patterns at full size, to print at 100 %%.")
    private String pdf;

    @Option(names = "--svg", paramLabel = "FILE", description = "Write the sheets for a cutter, in millimetres.")
    private String svg;

    @Option(names = "--dxf", paramLabel = "FILE", description = "Write the same as DXF.")
    private String dxf;

    @Option(
            names = "--ribs",
            paramLabel = "FILE",
            description =
                    "Write a table of every rib's planned depths, to overwrite with measured ones and read back (as-built.ribs).")
    private String ribs;

    @Option(
            names = "--paper",
            paramLabel = "a4|letter",
            description = "Paper of the patterns; a4 unless inches are asked for.")
    private PaperSize paper;

    /** Paper to print on. */
    enum PaperSize {
        /** ISO 216. */
        A4,
        /** 8.5 × 11 in. */
        LETTER;

        private Paper sheet() {
            return this == A4 ? Paper.A4 : Paper.LETTER;
        }
    }

    CutCommand(Terminal terminal) {
        super(terminal);
    }

    @Override
    public Integer call() throws Exception {
        outputs.check(file, named());
        CheckedScenario read = read(file);
        tellOddities(read);
        CutPlan untraced = plan(read);
        if (ribs != null && untraced.rib().isEmpty()) {
            throw new WrongUse("--ribs: this dish has no ribs.");
        }
        // The printed check of the build has tolerances in millimetres, which need a trace.
        boolean needsWatts = !isBrief() || pdf != null || untraced.cost().isPresent();
        CutPlan plan = needsWatts ? traced(untraced, read) : untraced;
        outputs.write(ResultFiles.of(plan, units), more(plan), terminal);
        say(plan, (found, in) -> CutAnswer.brief(found, in, pdf != null), CutAnswer::of);
        return 0;
    }

    /** With what it brings, by which cost and tolerances are judged; as it is where its pan cannot stand or no sun is named. */
    private CutPlan traced(CutPlan plan, CheckedScenario read) {
        if (read.timeless().isPresent()) {
            return plan;
        }
        TraceOptions options = rays.options(BuildTrace.USUAL_RAYS);
        try (ProgressLine progress = progress()) {
            return plan.with(BuildTrace.run(read.scenario(), plan.checkedRadii(), options, progress));
        } catch (ImpossibleSetupException e) {
            tellNotes(List.of(e.getMessage() + "; so there are no watts and no tolerances here."));
            return plan;
        }
    }

    private CutPlan plan(CheckedScenario read) throws WrongUse {
        try {
            return CutPlan.of(read, units).comparedWithSmaller(read);
        } catch (CuttingException e) {
            throw new WrongUse(ScenarioInput.name(file) + ": " + e.getMessage());
        }
    }

    private Map<String, String> named() {
        Map<String, String> names = new LinkedHashMap<>();
        names.put("--pdf", pdf);
        names.put("--svg", svg);
        names.put("--dxf", dxf);
        names.put("--ribs", ribs);
        return names;
    }

    /** Name of each further file and what goes into it. */
    private Map<String, Supplier<byte[]>> more(CutPlan plan) {
        CutFiles files = CutFiles.of(plan, paper(), units);
        Map<String, Supplier<byte[]>> more = new LinkedHashMap<>();
        put(more, pdf, files.pdf());
        put(more, svg, files.svg());
        put(more, dxf, files.dxf());
        put(more, ribs, files.ribs());
        return more;
    }

    private static void put(Map<String, Supplier<byte[]>> more, String name, Supplier<byte[]> bytes) {
        if (name != null) {
            more.put(name, bytes);
        }
    }

    private Paper paper() {
        return paper == null ? Paper.usual(units) : paper.sheet();
    }
}
