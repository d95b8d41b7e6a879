package simmerpoint.command;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import picocli.CommandLine.Option;
import simmerpoint.report.AtomicFile;
import simmerpoint.report.OutputException;
import simmerpoint.report.ResultFiles;

/** Files to write besides the answer. */
final class OutputOptions {
    private static final String STANDARD = OutputFile.STANDARD;

    @Option(names = "--json", paramLabel = "FILE|-", description = "Write all figures as JSON; - is standard output.")
    private String json;

    @Option(
            names = "--csv",
            paramLabel = "FILE|-",
            description = "Write the map or table behind the answer as CSV; - is standard output.")
    private String csv;

    @Option(names = "--png", paramLabel = "FILE", description = "Write the answer's picture.")
    private String png;

    private Map<String, Path> wanted = Map.of();
    private final List<String> written = new ArrayList<>();

    /** JSON of several scenarios, a line each; null where one scenario is answered. */
    private ByteArrayOutputStream lines;

    /** Whether any file is wanted. */
    boolean any() {
        return json != null || csv != null || png != null;
    }

    /**
     * From now on there are several scenarios: JSON is one line for each, and nothing else is written.
     *
     * @param more further files: option and name, null if it is not wanted
     */
    void checkSeveral(Map<String, String> more) throws WrongUse {
        Map<String, String> single = new LinkedHashMap<>();
        single.put("--csv", csv);
        single.put("--png", png);
        single.putAll(more);
        for (Map.Entry<String, String> each : single.entrySet()) {
            if (each.getValue() != null) {
                throw new WrongUse(each.getKey() + " holds one scenario; name one, or write --json.");
            }
        }
        lines = new ByteArrayOutputStream();
    }

    /** Whether standard output belongs to one of the files, so that no text may go there. */
    boolean takesStandardOutput() {
        return STANDARD.equals(json) || STANDARD.equals(csv);
    }

    /** Refuses what could not be written, before any work is done for it. */
    void check(Path file) throws WrongUse {
        check(file, Map.of());
    }

    /** The same where there are further files: option and name, null if it is not wanted. */
    void check(Path file, Map<String, String> more) throws WrongUse {
        for (Map.Entry<String, String> each : more.entrySet()) {
            if (STANDARD.equals(each.getValue())) {
                throw new WrongUse(each.getKey() + " needs the name of a file: that does not go to standard output.");
            }
        }
        if (STANDARD.equals(png)) {
            throw new WrongUse("--png needs the name of a file: a picture does not go to standard output.");
        }
        if (STANDARD.equals(json) && STANDARD.equals(csv)) {
            throw new WrongUse("--json and --csv cannot both go to standard output.");
        }
        Path scenario = ScenarioInput.onDisk(file);
        Map<String, Path> files = files();
        for (Map.Entry<String, String> each : more.entrySet()) {
            put(files, each.getKey(), each.getValue());
        }
        for (Map.Entry<String, Path> entry : files.entrySet()) {
            check(entry.getKey(), entry.getValue(), scenario, files);
        }
        wanted = files;
    }

    /** One more file was written. */
    void wrote(String name) {
        written.add(name);
    }

    /** Names of the files written, in that order. */
    List<String> written() {
        return List.copyOf(written);
    }

    /** Refuses files that the scenario turned out to read, now that it is read and before it is worked on. */
    void checkInputs() throws WrongUse {
        for (Map.Entry<String, Path> entry : wanted.entrySet()) {
            OutputFile.check(entry.getKey(), entry.getValue(), null);
        }
    }

    private Map<String, Path> files() throws WrongUse {
        Map<String, Path> files = new LinkedHashMap<>();
        put(files, "--json", json);
        put(files, "--csv", csv);
        put(files, "--png", png);
        return files;
    }

    private static void put(Map<String, Path> files, String option, String name) throws WrongUse {
        if (name == null || name.equals(STANDARD)) {
            return;
        }
        files.put(option, OutputFile.named(option, name));
    }

    private static void check(String option, Path file, Path scenario, Map<String, Path> files) throws WrongUse {
        OutputFile.check(option, file, scenario);
        for (Map.Entry<String, Path> other : files.entrySet()) {
            if (other.getKey().equals(option)) {
                return;
            }
            if (OutputFile.same(file, other.getValue())) {
                throw new WrongUse(other.getKey() + " and " + option + " name one and the same file " + file + ".");
            }
        }
    }

    /** Makes the bytes of every file that is wanted first, then writes them. */
    void write(ResultFiles files, Terminal terminal) throws OutputException {
        write(files, Map.of(), terminal);
    }

    /** The same with further files: name and what goes into it. */
    void write(ResultFiles files, Map<String, Supplier<byte[]>> more, Terminal terminal) throws OutputException {
        Map<String, byte[]> moreBytes = made(more);
        byte[] jsonBytes = json == null ? null : files.json().get();
        if (lines != null && jsonBytes != null) {
            line(jsonBytes, terminal);
            return;
        }
        byte[] csvBytes = csv == null ? null : files.csv().get();
        byte[] pngBytes = png == null ? null : files.png().get();
        put(json, jsonBytes, terminal);
        put(csv, csvBytes, terminal);
        put(png, pngBytes, terminal);
        putAll(moreBytes, terminal);
    }

    /** Writes further files where nothing else was found that could be written. */
    void write(Map<String, Supplier<byte[]>> more, Terminal terminal) throws OutputException {
        putAll(made(more), terminal);
    }

    private static Map<String, byte[]> made(Map<String, Supplier<byte[]>> files) {
        Map<String, byte[]> made = new LinkedHashMap<>();
        files.forEach((name, bytes) -> made.put(name, bytes.get()));
        return made;
    }

    private void putAll(Map<String, byte[]> files, Terminal terminal) throws OutputException {
        for (Map.Entry<String, byte[]> each : files.entrySet()) {
            put(each.getKey(), each.getValue(), terminal);
        }
    }

    /** A line of its own: line breaks in JSON stand between values only, never in one. */
    private void line(byte[] bytes, Terminal terminal) {
        String line = new String(bytes, StandardCharsets.UTF_8).replaceAll("\\R *", "") + "\n";
        byte[] utf8 = line.getBytes(StandardCharsets.UTF_8);
        if (json.equals(STANDARD)) {
            terminal.out().write(utf8, 0, utf8.length);
            terminal.out().flush();
        } else {
            lines.writeBytes(utf8);
        }
    }

    /** Writes the file of lines, now that all scenarios are answered. */
    void writeLines() throws OutputException {
        if (json != null && !json.equals(STANDARD)) {
            AtomicFile.write(Path.of(json), lines.toByteArray());
            written.add(json);
        }
    }

    private void put(String name, byte[] bytes, Terminal terminal) throws OutputException {
        if (name == null) {
            return;
        }
        if (name.equals(STANDARD)) {
            terminal.out().write(bytes, 0, bytes.length);
            terminal.out().flush();
        } else {
            AtomicFile.write(Path.of(name), bytes);
            written.add(name);
        }
    }
}
