package simmerpoint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import simmerpoint.command.ProgramRun;
import simmerpoint.scenario.file.ExampleScenario;

/** The answers that the README shows are what its commands print; a line of "..." stands for lines left out. */
@Tag("slow")
class ReadmeAnswersTest {
    private static final Path README = Path.of("..", "README.md");
    private static final String INDENT = "    ";
    private static final String PROGRAM = "simmerpoint ";
    private static final String FENCE = "```";

    @TempDir
    Path folder;

    /** One answer of the README and the last command before it. */
    private record Shown(String command, List<String> lines) {}

    private static List<Shown> shown() throws IOException {
        List<Shown> all = new ArrayList<>();
        String command = "";
        List<String> block = null;
        for (String line : Files.readAllLines(README)) {
            if (block == null && line.startsWith(INDENT + PROGRAM)) {
                command = line.strip();
            } else if (block == null && line.equals(INDENT + "mvn -q compile exec:java")) {
                command = PROGRAM;
            } else if (block == null && line.startsWith(FENCE)) {
                block = new ArrayList<>();
                all.add(new Shown(line.equals(FENCE) ? command : "", block));
            } else if (block != null && line.equals(FENCE)) {
                block = null;
            } else if (block != null) {
                block.add(line);
            }
        }
        return all.stream().filter(each -> !each.command().isEmpty()).toList();
    }

    @Test
    void answersAreWhatTheCommandsPrint() throws IOException {
        int compared = 0;
        for (Shown each : shown()) {
            if (!each.command().startsWith(PROGRAM + "design")) {
                check(each, each.command());
                compared++;
            }
        }
        assertEquals(8, compared);
    }

    /** The same dishes are found within narrower limits, which takes less time. */
    @Test
    void theSearchFindsWhatIsShown() throws IOException {
        Shown search = search();
        check(search, search.command().replace("..96", "..24").replace("60cm..1.4m", "80cm..1.4m"));
    }

    @Test
    @Tag("thorough")
    void theSearchAsItStandsThereFindsWhatIsShown() throws IOException {
        check(search(), search().command());
    }

    private static Shown search() throws IOException {
        return shown().stream()
                .filter(each -> each.command().startsWith(PROGRAM + "design"))
                .findFirst()
                .orElseThrow();
    }

    private void check(Shown shown, String command) throws IOException {
        ProgramRun run = ProgramRun.of(arguments(command));
        assertEquals(0, run.code(), run.err());
        List<String> printed = run.text().lines().toList();
        int from = 0;
        for (List<String> part : parts(shown.lines())) {
            int at = Collections.indexOfSubList(printed.subList(from, printed.size()), part);
            assertTrue(at >= 0, () -> command + " prints\n" + run.text() + "\nand not\n" + String.join("\n", part));
            from += at + part.size();
        }
    }

    private static List<List<String>> parts(List<String> lines) {
        List<List<String>> parts = new ArrayList<>(List.of(new ArrayList<>()));
        for (String line : lines) {
            if (line.strip().equals("...")) {
                parts.add(new ArrayList<>());
            } else {
                parts.get(parts.size() - 1).add(line);
            }
        }
        return parts;
    }

    /** Files stand in a folder of the test's own, and the user's scenario is the example. */
    private String[] arguments(String command) throws IOException {
        Path mine = Files.writeString(folder.resolve("mine.yaml"), ExampleScenario.text());
        String[] words = command.substring(PROGRAM.length()).strip().split(" +");
        for (int k = 0; k < words.length; k++) {
            boolean written = k > 0
                    && List.of("--png", "--pdf", "--sheet", "--as-built", "--write")
                            .contains(words[k - 1]);
            words[k] = written
                    ? folder.resolve(words[k]).toString()
                    : words[k].replace("mine.yaml", mine.toString()).replaceFirst("^scenarios/", "../scenarios/");
        }
        return Arrays.stream(words).filter(word -> !word.isEmpty()).toArray(String[]::new);
    }
}
