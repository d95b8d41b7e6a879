package simmerpoint.pages;

import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** Chromium without a window: opens a page, says what happened. Every run has a new profile of its own. */
final class Chromium {
    private static final int PATIENCE_SECONDS = 60;
    private static final List<String> NAMES = List.of("chromium", "chromium-browser", "google-chrome", "chrome");
    private static final List<String> QUIET = List.of(
            "--headless",
            "--no-sandbox",
            "--disable-gpu",
            "--disable-quic",
            "--no-first-run",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync",
            "--disable-dev-shm-usage",
            "--host-resolver-rules=MAP * ~NOTFOUND",
            "--hide-scrollbars",
            "--enable-logging=stderr");

    private final Path folder;
    private int runs;

    /** Keeps profiles and outputs in {@code folder}. */
    Chromium(Path folder) {
        this.folder = folder;
    }

    /** What one run left: standard output and error. */
    record Run(String out, String err) {
        /** What the page itself complained of: errors of scripts, of styles, of the rule it sets itself. */
        List<String> console() {
            return err.lines().filter(line -> line.contains("CONSOLE")).toList();
        }
    }

    private static Path program() {
        return Stream.of(System.getenv("PATH").split(File.pathSeparator))
                .flatMap(place -> NAMES.stream().map(name -> Path.of(place, name)))
                .filter(Files::isExecutable)
                .findFirst()
                .orElseThrow(() -> new AssertionError(
                        "the profile pages needs Chromium, and there is none on the PATH: install Debian's package chromium"
                                + " (apt-get install chromium)"));
    }

    /** Opens {@code page} with more switches. */
    Run open(Path page, String... switches) throws IOException, InterruptedException {
        Path own = Files.createDirectories(folder.resolve("run" + runs++));
        List<String> line = new ArrayList<>(List.of(program().toString()));
        line.addAll(QUIET);
        line.add("--user-data-dir=" + own.resolve("profile"));
        line.addAll(List.of(switches));
        line.add(page.toUri().toString());
        Path out = own.resolve("out");
        Path err = own.resolve("err");
        Process process = new ProcessBuilder(line)
                .redirectOutput(out.toFile())
                .redirectError(err.toFile())
                .start();
        boolean ended = process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS);
        process.destroyForcibly();
        Run run = new Run(Files.readString(out), new String(Files.readAllBytes(err), StandardCharsets.UTF_8));
        assertTrue(ended && process.exitValue() == 0, () -> "Chromium failed: " + run.err());
        return run;
    }

    /** What {@code page}, not the browser for itself, asked of a network; and what its console said. */
    List<String> asks(Path page) throws IOException, InterruptedException {
        Path log = folder.resolve("net" + runs + ".json");
        Run run = open(page, "--log-net-log=" + log, "--virtual-time-budget=3000", "--dump-dom");
        JsonNode root = new ObjectMapper().readTree(log.toFile());
        int start = root.get("constants")
                .get("logEventTypes")
                .get("URL_REQUEST_START_JOB")
                .asInt();
        List<String> asked = new ArrayList<>(run.console());
        for (JsonNode event : root.get("events")) {
            JsonNode told = event.path("params");
            String who = told.path("initiator").asText("not an origin");
            if (event.get("type").asInt() == start && !who.equals("not an origin")) {
                asked.add(who + " asks for " + told.path("url").asText());
            }
        }
        return asked;
    }

    /**
     * What {@code script}, an expression, gives in {@code page}, width by width: in frames of those widths, since no window
     * gets as narrow as a phone.
     */
    Map<Integer, JsonNode> probe(Path page, String script, int... widths) throws IOException, InterruptedException {
        StringBuilder frames = new StringBuilder("<!DOCTYPE html><meta charset=\"utf-8\">");
        for (int width : widths) {
            String probe = "<script>parent.document.documentElement.setAttribute('" + mark(width) + "', JSON.stringify("
                    + script + "))</script></body>";
            String framed =
                    free(page).replace("</body>", probe).replace("&", "&amp;").replace("\"", "&quot;");
            frames.append("<iframe width=\"").append(width).append("\" height=\"900\" style=\"border: 0\" srcdoc=\"");
            frames.append(framed).append("\"></iframe>");
        }
        Path copy = Files.writeString(folder.resolve("probe" + runs + ".html"), frames);
        String dom = open(copy, "--window-size=1500,1000", "--dump-dom").out();
        Map<Integer, JsonNode> found = new TreeMap<>();
        for (int width : widths) {
            found.put(width, found(dom, mark(width) + "=\""));
        }
        return found;
    }

    private static String mark(int width) {
        return "data-probe" + width;
    }

    private static JsonNode found(String dom, String begin) throws IOException {
        int at = dom.indexOf(begin) + begin.length();
        String json = dom.substring(at, dom.indexOf('"', at));
        return new ObjectMapper().readTree(json.replace("&quot;", "\"").replace("&amp;", "&"));
    }

    /** The text of {@code page} without the rule that forbids what tests do with it. */
    private static String free(Path page) throws IOException {
        return Files.readString(page).replaceFirst("<meta http-equiv=\"Content-Security-Policy\"[^>]*/>", "");
    }

    /** Pages of the PDF that {@code page} becomes on paper of that size, a word of CSS. */
    int printed(Path page, String size, Path pdf) throws IOException, InterruptedException {
        String text = free(page).replace("</head>", "<style>@page { size: " + size + " }</style></head>");
        Path copy = Files.writeString(folder.resolve("print" + runs + ".html"), text);
        open(copy, "--print-to-pdf=" + pdf, "--no-pdf-header-footer");
        String bytes = Files.readString(pdf, StandardCharsets.ISO_8859_1);
        return bytes.split("/Type\\s*/Page[^s]", -1).length - 1;
    }

    /** A folder to keep what the runs made, if one is asked for by the property {@code pages.keep}. */
    static Optional<Path> keep() {
        return Optional.ofNullable(System.getProperty("pages.keep"))
                .filter(s -> !s.isBlank())
                .map(Path::of);
    }
}
