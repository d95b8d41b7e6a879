package simmerpoint.scenario.file;

import java.io.InputStream;
import java.nio.file.Path;
import java.util.List;
import simmerpoint.scenario.Problems;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.scenario.values.ScenarioSource;
import simmerpoint.scenario.values.ScenarioValues;
import simmerpoint.scenario.values.ValuesReader;
import simmerpoint.scenario.yaml.YamlText;

/** Reads scenario files. Whatever is wrong becomes one {@link ScenarioException} with every problem found. */
public final class ScenarioReader {
    /** What messages call a scenario that comes from standard input. */
    public static final String STANDARD_INPUT = "standard input";

    /** What messages call the scenario built into the program. */
    public static final String BUILT_IN = "the built-in example";

    private ScenarioReader() {}

    /** Reads a file and checks what it says; other files it names are looked for in its folder. */
    public static CheckedScenario read(Path file) throws ScenarioException {
        return CheckedScenario.of(values(file));
    }

    /** Reads the values of a file, which are not checked yet but where they are no YAML. */
    public static ScenarioValues values(Path file) throws ScenarioException {
        Path folder = file.getParent();
        return values(file.toString(), FileText.read(file), folder == null ? Path.of("") : folder);
    }

    /** Reads the values of a scenario from standard input; other files it names are looked for in the current folder. */
    public static ScenarioValues values(InputStream standardInput) throws ScenarioException {
        return values(STANDARD_INPUT, FileText.read(STANDARD_INPUT, standardInput), Path.of(""));
    }

    /**
     * Reads a text and checks what it says.
     *
     * @param name what to call it in messages
     * @param text the whole scenario
     * @param baseFolder where other files that it names are looked for
     */
    public static CheckedScenario parse(String name, String text, Path baseFolder) throws ScenarioException {
        return CheckedScenario.of(values(name, text, baseFolder));
    }

    /** Reads the values of a text, see {@link #values(Path)} and {@link #parse}. */
    public static ScenarioValues values(String name, String text, Path baseFolder) throws ScenarioException {
        FileText.refuseTooLong(name, text);
        Problems problems = new Problems(name);
        return ValuesReader.read(new ScenarioSource(name, baseFolder, text), YamlText.read(text, problems), problems);
    }

    /** The scenario built into the program, the same as {@link ExampleScenario#text()}. */
    public static CheckedScenario builtIn() {
        try {
            return parse(BUILT_IN, ExampleScenario.text(), Path.of(""));
        } catch (ScenarioException e) {
            throw new IllegalStateException(String.join("; ", List.copyOf(e.sentences())), e);
        }
    }
}
