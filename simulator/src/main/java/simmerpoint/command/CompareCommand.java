package simmerpoint.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import simmerpoint.answer.compare.CompareAnswer;
import simmerpoint.quantities.VariantNames;
import simmerpoint.report.ResultFiles;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.values.ScenarioValues;
import simmerpoint.scenario.variants.Variant;
import simmerpoint.scenario.variants.Variants;
import simmerpoint.scenario.variants.VariedKey;
import simmerpoint.study.compare.CompareStudy;
import simmerpoint.study.compare.Comparison;
import simmerpoint.workshop.UsualStock;

/** Several cookers held against each other. */
@Command(
        name = "compare",
        mixinStandardHelpOptions = true,
        versionProvider = RootCommand.Versions.class,
        description = "Which of several cookers is best, and what the cheaper one costs in watts.",
        footer = {
            "",
            "simmerpoint compare a.yaml b.yaml",
            "simmerpoint compare mine.yaml --vary dish.surface.sectors=12,16,24 --vary \"pan.diameter=20 cm,24 cm\"",
            "Files and values are multiplied: every file with every combination, at most 1000 in all."
        },
        sortOptions = false)
final class CompareCommand extends StudyCommand {
    @Parameters(
            arity = "0..*",
            paramLabel = "FILE",
            description = "The scenarios; - is standard input (default with --vary: the example that is built in).")
    private List<Path> files = new ArrayList<>();

    @Option(
            names = "--vary",
            arity = "1",
            paramLabel = "KEY=VALUE,VALUE",
            description =
                    "Any key of the scenario by its full path, and values as in the file; once for each key. A value with "
                            + "a comma in it goes in quotes, or takes a backslash before the comma.")
    private List<String> varied = new ArrayList<>();

    @Option(
            names = "--quick",
            description =
                    "Only watts and boiling times, for the figures exactly as given: no ranges, no luck of gluing, no"
                            + " best places, no aiming.")
    private boolean quick;

    CompareCommand(Terminal terminal) {
        super(terminal);
    }

    @Override
    public Integer call() throws Exception {
        if (files.isEmpty() && varied.isEmpty()) {
            throw new WrongUse(
                    "there is nothing to compare; name two scenario files, or one and what to vary, for instance"
                            + " --vary dish.surface.sectors=12,24");
        }
        for (Path file : files) {
            outputs.check(file);
        }
        if (files.isEmpty()) {
            outputs.check(null);
        }
        List<Variant> variants = variants();
        refuseImpossible(variants);
        tellOddities(variants);
        Comparison comparison = compare(variants);
        outputs.write(ResultFiles.of(comparison, units), terminal);
        say(comparison, CompareAnswer::brief, CompareAnswer::of);
        return 0;
    }

    private List<Variant> variants() throws ScenarioException, WrongUse {
        List<VariedKey> keys = new ArrayList<>();
        for (String typed : varied) {
            VariedKey key = VariedKey.parse(typed);
            input.refuseVaried(key.path());
            keys.add(key);
        }
        List<ScenarioValues> scenarios = new ArrayList<>();
        for (Path file : files) {
            scenarios.add(values(file));
        }
        List<ScenarioValues> all = scenarios.isEmpty() ? List.of(values(null)) : scenarios;
        return reading(files.isEmpty() ? null : files.get(0), () -> Variants.of(all, keys));
    }

    private ScenarioValues values(Path file) throws ScenarioException {
        return UsualStock.in(input.values(file, terminal), units);
    }

    private static void refuseImpossible(List<Variant> variants) throws WrongUse {
        Optional<CompareStudy.Impossible> bad = CompareStudy.firstImpossible(variants);
        if (bad.isPresent()) {
            Variant variant = bad.get().variant();
            String how = variant.varied().isEmpty() ? "" : "--vary " + variant.assignments() + " in ";
            throw new WrongUse(how + variant.file() + ": " + bad.get().reason() + ".");
        }
    }

    /** The first oddity of each key, and of how many cookers something is said. */
    private void tellOddities(List<Variant> variants) {
        VariantNames names = new VariantNames(variants);
        Map<String, String> first = new LinkedHashMap<>();
        Map<String, Set<Variant>> whose = new LinkedHashMap<>();
        for (Variant variant : variants) {
            for (String warning : variant.read().warnings()) {
                String key = warning.substring(0, Math.max(0, warning.indexOf(": ")));
                first.putIfAbsent(key, warning);
                whose.computeIfAbsent(key, w -> new LinkedHashSet<>()).add(variant);
            }
        }
        List<String> notes = new ArrayList<>();
        first.forEach((key, warning) -> {
            List<Variant> those = List.copyOf(whose.get(key));
            boolean all = those.size() == variants.size()
                    && those.stream().allMatch(v -> v.read().warnings().contains(warning));
            String more = those.size() > 1 ? ", and " + (those.size() - 1) + " more like it" : "";
            notes.add(all ? warning : warning + " (" + names.name(those.get(0)) + more + ")");
        });
        tellNotes(notes);
    }

    private Comparison compare(List<Variant> variants) {
        try (ProgressLine progress = progress()) {
            return quick
                    ? CompareStudy.quick(variants, rays.options(CompareStudy.QUICK_RAYS), progress)
                    : CompareStudy.run(variants, rays.options(), progress);
        }
    }
}
