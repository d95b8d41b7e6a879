package simmerpoint.frozen;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import simmerpoint.command.ProgramRun;
import simmerpoint.quantities.Version;

/**
 * One line of {@code cases.txt}: a command line and which of its outputs are frozen.
 *
 * @param name begins the names of its files
 * @param kinds ends of the names of its files: txt (what it prints), json, csv, png, html, svg, dxf, yaml (scenarios it writes)
 * @param arguments of the command line, without the files to write
 */
record FrozenCase(String name, List<String> kinds, List<String> arguments) {
    private static final Path FOLDER = Path.of("src/test/resources/simmerpoint/frozen");
    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");
    private static final Pattern RUN = Pattern.compile("\"run\" : \\{[^{}]*}");
    private static final Map<String, String> OPTIONS = Map.of(
            "json", "--json", "csv", "--csv", "png", "--png", "html", "--html", "yaml", "--write", "svg", "--svg",
            "dxf", "--dxf");

    private static final int LONG_TABLE = 1000;
    private static final int ONE_LINE_OF = 31;

    /** Where the frozen results are kept. */
    static final Path RESULTS = FOLDER.resolve("results");

    /** Every line of the table. */
    static List<FrozenCase> all() throws IOException {
        return Files.readAllLines(FOLDER.resolve("cases.txt")).stream()
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .map(FrozenCase::parse)
                .toList();
    }

    private static FrozenCase parse(String line) {
        String[] cells = line.split("\\|", 3);
        return new FrozenCase(cells[0].strip(), words(cells[1]), words(cells[2]));
    }

    private static List<String> words(String text) {
        List<String> words = new ArrayList<>();
        Matcher word = WORD.matcher(text);
        while (word.find()) {
            words.add((word.group(1) != null ? word.group(1) : word.group(2))
                    .replaceFirst("^shipped/", "../scenarios/")
                    .replaceFirst("^small/", FOLDER + "/scenarios/"));
        }
        return words;
    }

    /** Runs the command; its outputs by the end of their names. */
    Map<String, byte[]> run(Path folder) throws IOException {
        List<String> all = new ArrayList<>(arguments);
        for (String kind : kinds) {
            if (OPTIONS.containsKey(kind)) {
                all.add(OPTIONS.get(kind));
                all.add(folder.resolve(kind).toString());
            }
        }
        ProgramRun run = ProgramRun.of(all.toArray(String[]::new));
        Map<String, byte[]> outputs = new TreeMap<>();
        for (String kind : kinds) {
            outputs.put(kind, output(kind, run, folder));
        }
        return outputs;
    }

    private static byte[] output(String kind, ProgramRun run, Path folder) throws IOException {
        if (kind.equals("png")) {
            return Files.readAllBytes(folder.resolve(kind));
        }
        String text = text(kind, run, folder);
        return text.replace(Version.text(), "VERSION").getBytes(StandardCharsets.UTF_8);
    }

    private static String text(String kind, ProgramRun run, Path folder) throws IOException {
        return switch (kind) {
            case "txt" -> printed(run).replace(folder.toString(), "FOLDER");
            case "yaml" -> scenarios(folder.resolve(kind));
            case "json" -> RUN.matcher(Files.readString(folder.resolve(kind))).replaceFirst("\"run\" : {}");
            case "csv" -> sample(Files.readString(folder.resolve(kind)));
            default -> Files.readString(folder.resolve(kind));
        };
    }

    /** Of a table as long as a map only some lines and how many there are: a map takes a megabyte. */
    private static String sample(String table) {
        List<String> lines = table.lines().toList();
        if (lines.size() <= LONG_TABLE) {
            return table;
        }
        StringBuilder sample = new StringBuilder();
        for (int k = 0; k < lines.size(); k++) {
            if (k < ONE_LINE_OF || k % ONE_LINE_OF == 0) {
                sample.append(lines.get(k)).append('\n');
            }
        }
        return sample.append("-- of ").append(lines.size()).append(" lines\n").toString();
    }

    private static String printed(ProgramRun run) {
        String err = run.err().isEmpty() ? "" : "-- standard error\n" + run.err();
        return run.text() + err + (run.code() == 0 ? "" : "-- exit code " + run.code() + "\n");
    }

    private static String scenarios(Path folder) throws IOException {
        StringBuilder text = new StringBuilder();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.sorted().toList()) {
                text.append("-- ").append(file.getFileName()).append('\n').append(Files.readString(file));
            }
        }
        return text.toString();
    }
}
