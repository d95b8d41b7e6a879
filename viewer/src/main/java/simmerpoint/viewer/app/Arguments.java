package simmerpoint.viewer.app;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import simmerpoint.scenario.keys.Keys;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.theme.Theme;
import simmerpoint.viewer.theme.Zoom;

/**
 * What the command line of the window says.
 *
 * @param scenario the file to open; empty for the example that is built in
 * @param shot where to paint the window to instead of opening it
 * @param size of the window; empty for the usual one
 * @param theme its colours; empty for those of the last time
 * @param units its units; empty for those of the last time
 * @param view which view is seen
 * @param question which question of that view; empty for its first
 * @param drawer whether the drawer with everything that can be changed is pulled open
 * @param keep whether the scenario as it is opened is kept beside the changed one
 * @param logs of the built cooker, or a folder of a class, to be held against the design
 * @param changes values typed in the window once it is open, by full key
 * @param help whether only to say what can be said
 */
record Arguments(
        Optional<Path> scenario,
        Optional<Path> shot,
        Optional<Size> size,
        Optional<Theme> theme,
        Optional<UnitSystem> units,
        View view,
        String question,
        boolean drawer,
        boolean keep,
        List<Path> logs,
        Map<String, String> changes,
        boolean help) {
    /** What can be said, in lines. */
    static final List<String> USAGE = List.of(
            "Usage: simmerpoint-viewer [FILE] [options]",
            "Opens a window on a scenario (default: the example that is built in).",
            "  --scenario FILE       the same as FILE",
            "  --size WIDTHxHEIGHT   size of the window, from 1024x700 to 7680x4320",
            "  --theme light|dark    its colours (default: those of the last time, at first light)",
            "  --units metric|inch   its units (default: those of the last time, at first metric)",
            "  --view NAME           cook, build or understand; with a question of it: build/cut",
            "  --drawer              with the drawer pulled open",
            "  --change KEY=VALUE    with a value typed, as often as wanted: --change \"stand.pull-back=8 cm\"",
            "  --log FILE            a log of the built cooker, as often as wanted, or the folder of a class",
            "  --keep                keep the scenario as it is opened, to see it beside the changed one",
            "  --shot FILE           paint the window to a PNG file and end",
            "  --help                this");

    private static final List<String> FLAGS = List.of("--drawer", "--keep", "--help");
    private static final Pattern SIZE = Pattern.compile("([0-9]{1,5})[xX\u00d7]([0-9]{1,5})");
    private static final int WIDEST = 7680;
    private static final int HIGHEST = 4320;

    /**
     * Width and height.
     *
     * @param width px
     * @param height px
     */
    record Size(int width, int height) {}

    /** Reads a command line. */
    static Arguments parse(List<String> words) throws InvalidArgumentsException {
        return new Reader(words).read();
    }

    private static final class Reader {
        private final Deque<String> words;
        private Path scenario;
        private Path shot;
        private Size size;
        private Theme theme;
        private UnitSystem units;
        private View view = View.COOK;
        private String question = "";
        private boolean drawer;
        private boolean keep;
        private final List<Path> logs = new ArrayList<>();
        private final Map<String, String> changes = new LinkedHashMap<>();
        private boolean help;

        Reader(List<String> words) {
            this.words = new ArrayDeque<>(words);
        }

        Arguments read() throws InvalidArgumentsException {
            while (!words.isEmpty()) {
                word(words.poll());
            }
            return new Arguments(
                    Optional.ofNullable(scenario),
                    Optional.ofNullable(shot),
                    Optional.ofNullable(size),
                    Optional.ofNullable(theme),
                    Optional.ofNullable(units),
                    view,
                    question,
                    drawer,
                    keep,
                    List.copyOf(logs),
                    Collections.unmodifiableMap(changes),
                    help);
        }

        private void word(String word) throws InvalidArgumentsException {
            int equals = word.startsWith("--") ? word.indexOf('=') : -1;
            if (equals > 0 && FLAGS.contains(word.substring(0, equals))) {
                throw new InvalidArgumentsException(word.substring(0, equals) + " takes no value.");
            }
            if (equals > 0) {
                words.push(word.substring(equals + 1));
            }
            String name = equals > 0 ? word.substring(0, equals) : word;
            switch (name) {
                case "--scenario" -> open(value(name));
                case "--shot" -> shot = path(value(name));
                case "--size" -> size = size(value(name));
                case "--theme" -> theme = theme(value(name));
                case "--units" -> units = units(value(name));
                case "--view" -> view(value(name));
                case "--drawer" -> drawer = true;
                case "--log" -> logs.add(path(value(name)));
                case "--change" -> change(value(name));
                case "--keep" -> keep = true;
                case "--help", "-h" -> help = true;
                default -> {
                    if (name.startsWith("-")) {
                        throw new InvalidArgumentsException(
                                "there is no option " + name + "; --help names those there are.");
                    }
                    open(word);
                }
            }
        }

        private String value(String name) throws InvalidArgumentsException {
            if (words.isEmpty() || words.peek().isBlank()) {
                throw new InvalidArgumentsException(name + " wants a value; --help names those there are.");
            }
            return words.poll();
        }

        private void open(String name) throws InvalidArgumentsException {
            if (scenario != null) {
                throw new InvalidArgumentsException(
                        "only one scenario can be opened; found " + scenario + " and " + name + ".");
            }
            scenario = path(name);
        }

        private void change(String text) throws InvalidArgumentsException {
            int equals = text.indexOf('=');
            if (equals < 1) {
                throw new InvalidArgumentsException("--change: \"" + text + "\" is not KEY=VALUE; write for instance "
                        + "\"stand.pull-back=8 cm\".");
            }
            String key = text.substring(0, equals).strip();
            if (Keys.find(key).isEmpty()) {
                String near =
                        Keys.nearest(key).map(n -> " Did you mean " + n + "?").orElse("");
                throw new InvalidArgumentsException("--change: there is no key \"" + key + "\"." + near);
            }
            changes.put(key, text.substring(equals + 1).strip());
        }

        private static Path path(String name) throws InvalidArgumentsException {
            try {
                return Path.of(name);
            } catch (InvalidPathException e) {
                throw new InvalidArgumentsException("\"" + name + "\" cannot be the name of a file.");
            }
        }

        private void view(String text) throws InvalidArgumentsException {
            String[] parts = text.strip().split("/", 2);
            view = Stream.of(View.values())
                    .filter(each -> each.word().equals(parts[0]))
                    .findFirst()
                    .orElseThrow(() -> new InvalidArgumentsException(
                            "--view: \"" + text + "\" is not a view: cook, build or understand."));
            question = parts.length > 1 ? parts[1] : "";
        }

        private static Size size(String text) throws InvalidArgumentsException {
            Matcher m = SIZE.matcher(text.strip());
            if (m.matches()) {
                int width = Integer.parseInt(m.group(1));
                int height = Integer.parseInt(m.group(2));
                if (width >= Zoom.LEAST_WIDTH && width <= WIDEST && height >= Zoom.LEAST_HEIGHT && height <= HIGHEST) {
                    return new Size(width, height);
                }
            }
            throw new InvalidArgumentsException("--size: \"" + text
                    + "\" is not a size from 1024x700 to 7680x4320; write for " + "instance 1280x800.");
        }

        private static Theme theme(String text) throws InvalidArgumentsException {
            return StoredDisplaySettings.theme(text)
                    .orElseThrow(() ->
                            new InvalidArgumentsException("--theme: \"" + text + "\" is not a theme: light or dark."));
        }

        private static UnitSystem units(String text) throws InvalidArgumentsException {
            return StoredDisplaySettings.units(text)
                    .orElseThrow(() -> new InvalidArgumentsException(
                            "--units: \"" + text + "\" is not a system of units: metric or inch."));
        }
    }
}
