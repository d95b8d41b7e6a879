package simmerpoint.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import simmerpoint.fuzz.Fuzz;
import simmerpoint.fuzz.RandomValues;
import simmerpoint.report.SampleResults;

/** Command lines put together at random: an answer, or one sentence, an exit code of 2 or 1 and nothing written. */
@Tag("fuzz")
class CommandLineFuzzTest {
    private static final List<String> VALUES = List.of(
            "",
            "-",
            "--",
            "0",
            "-1",
            "1k",
            "5%",
            "1e99",
            "NaN",
            "metric",
            "inch",
            "a4",
            "tea.yaml",
            "absent.yaml",
            "out.json",
            "out.png",
            "../scenarios/tea-kitchen.yaml",
            "dish.hub=60 mm",
            "dish.hub",
            "=",
            "a=b",
            "é",
            "\u001b[31m",
            "\u0000",
            "-x",
            "--json",
            "2026-06-21",
            "10cm..20cm",
            "stand.pull-back=0cm..10cm:5cm",
            "/",
            ".",
            "1..2");

    /** The others take long: their lines are only read, with one word that stops them, but for some of {@code trace}. */
    private static final List<String> QUICK = List.of("check", "example", "materials", "schema", "completion", "help");

    private static final Terminal SILENT =
            new Terminal(InputStream.nullInputStream(), System.out, System.err, false, false, 0);

    private static final Set<String> FILE_OPTIONS = fileOptions(CommandLines.of(SILENT, null, null));

    @TempDir
    Path folder;

    @Test
    void isAnsweredOrRefusedInASentence() {
        CommandLine program = CommandLines.of(SILENT, null, null);
        List<String> commands = new ArrayList<>(program.getSubcommands().keySet());
        new Fuzz<List<String>>("line.txt", this::check, line -> String.join("\n", line))
                .run(1, random -> line(program, RandomValues.pick(commands, random), random));
    }

    private static Set<String> fileOptions(CommandLine program) {
        return program.getSubcommands().values().stream()
                .flatMap(command -> command.getCommandSpec().options().stream())
                .filter(option -> option.paramLabel().contains("FILE")
                        || option.paramLabel().contains("FOLDER"))
                .flatMap(option -> Stream.of(option.names()))
                .collect(Collectors.toSet());
    }

    private Fuzz.Case<List<String>> line(CommandLine program, String command, SplittableRandom random) {
        List<UnaryOperator<List<String>>> edits = new ArrayList<>();
        List<String> options = new ArrayList<>(program.getSubcommands()
                .get(command)
                .getCommandSpec()
                .optionsMap()
                .keySet());
        options.add("--no-such");
        if (!QUICK.contains(command) && (!command.equals("trace") || random.nextInt(8) > 0)) {
            edits.add(more("--no-such-option"));
        }
        int words = random.nextInt(5);
        for (int i = 0; i < words; i++) {
            String option = RandomValues.pick(options, random);
            String value = RandomValues.pick(VALUES, random);
            switch (random.nextInt(4)) {
                case 0 -> edits.add(more(value));
                case 1 -> edits.add(more(option));
                case 2 -> edits.add(more(option + "=" + value));
                default -> edits.add(more(option, value));
            }
        }
        return new Fuzz.Case<>(List.of(command), edits);
    }

    private static UnaryOperator<List<String>> more(String... words) {
        return before -> {
            List<String> after = new ArrayList<>(before);
            after.addAll(List.of(words));
            return after;
        };
    }

    private void check(List<String> line) throws IOException {
        String[] args = inFolder(line);
        ProgramRun run = ProgramRun.of((scenario, options, progress) -> SampleResults.tight(), false, args);
        assertTrue(run.code() >= 0 && run.code() <= 2, "exit code " + run.code());
        assertFalse(run.err().contains("went wrong inside"), run.err());
        assertFalse(run.err().codePoints().anyMatch(c -> Character.isISOControl(c) && c != '\n'), run.err());
        List<Path> written = written();
        if (run.code() != 0) {
            assertTrue(run.err().startsWith("simmerpoint: "), run.err());
            assertEquals(List.of(), written);
        }
        for (Path file : written) {
            Files.delete(file);
        }
    }

    /** Files to be written go into the test's folder: what stands behind an option that names one. */
    private String[] inFolder(List<String> line) {
        String[] args = line.toArray(String[]::new);
        for (int i = 0; i < args.length; i++) {
            int equals = args[i].indexOf('=');
            if (i > 0 && FILE_OPTIONS.contains(args[i - 1])) {
                args[i] = inFolder(args[i]);
            } else if (equals > 0 && FILE_OPTIONS.contains(args[i].substring(0, equals))) {
                args[i] = args[i].substring(0, equals + 1) + inFolder(args[i].substring(equals + 1));
            }
        }
        return args;
    }

    private String inFolder(String name) {
        boolean file = !name.isEmpty() && !name.startsWith("-") && !name.contains("\u0000");
        return file ? folder + "/" + name : name;
    }

    private List<Path> written() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.toList();
        }
    }
}
