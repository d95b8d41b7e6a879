package simmerpoint.scenario;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads scenario files. Whatever is wrong becomes one {@link ScenarioException} with every problem found. */
public final class ScenarioReader {
    private ScenarioReader() {}

    /** Reads a file; other files it names are looked for in its folder. */
    public static ReadScenario read(Path file) throws ScenarioException {
        return read(file, Map.of());
    }

    /**
     * Reads a file with some of its values replaced.
     *
     * @param file to read
     * @param overrides value by full path of the key, each as it would be typed in the file. If one of them chooses
     *     another cut or kind, the file's keys that do not belong to it are left out; another mirror.material than
     *     the file's brings its own figures
     */
    public static ReadScenario read(Path file, Map<String, String> overrides) throws ScenarioException {
        Path folder = file.getParent();
        return parse(file.toString(), FileText.read(file), folder == null ? Path.of("") : folder, overrides);
    }

    /**
     * Reads a text.
     *
     * @param name what to call it in messages
     * @param text the whole scenario
     * @param baseFolder where other files that it names are looked for
     */
    public static ReadScenario parse(String name, String text, Path baseFolder) throws ScenarioException {
        return parse(name, text, baseFolder, Map.of());
    }

    /** Reads a text with some of its values replaced, see {@link #read(Path, Map)} and {@link #parse(String, String, Path)}. */
    public static ReadScenario parse(String name, String text, Path baseFolder, Map<String, String> overrides)
            throws ScenarioException {
        FileText.refuseTooLong(name, text);
        Problems problems = new Problems(name);
        Node.Section root = YamlText.read(text, problems);
        Overrides.apply(root, overrides, problems);
        Values values = KeyReader.read(root, overrides.keySet(), problems);
        problems.throwIfAny();
        DayLight light = DayLightReader.read(values, problems);
        CrossChecks.check(values, light.elevationRadians(), problems);
        problems.throwIfAny();
        Scenario scenario = new ScenarioBuilder(values, light, baseFolder, problems).build();
        MeshChecks.check(scenario.dish(), values, problems);
        TileChecks.check(scenario.dish(), values, problems);
        WorkmanshipChecks.check(scenario, values, problems);
        problems.throwIfAny();
        Optional<ScenarioException> timeless =
                light.timeless().map(problem -> new ScenarioException(name, List.of(problem)));
        List<String> warnings = Warnings.of(scenario, timeless.isPresent());
        return new ReadScenario(scenario, text, warnings, timeless, Defaults.of(values));
    }

    /** The scenario built into the program, the same as {@link ExampleScenario#text()}. */
    public static ReadScenario builtIn() {
        try {
            return parse("the built-in example", ExampleScenario.text(), Path.of(""));
        } catch (ScenarioException e) {
            throw new IllegalStateException(String.join("; ", List.copyOf(e.sentences())), e);
        }
    }
}
