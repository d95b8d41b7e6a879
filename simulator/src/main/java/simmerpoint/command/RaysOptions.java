package simmerpoint.command;

import java.nio.file.Path;
import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The file of reflected rays. */
final class RaysOptions {
    static final String NAME = "--rays-csv";

    @Option(
            names = NAME,
            paramLabel = "FILE",
            description = "Write the reflected rays as CSV, a line each: point, direction, watts, panel; "
                    + "a name that ends with .gz packs them.")
    private String csv;

    /** The file: option and name, null if it is not wanted. */
    Map<String, String> named() {
        return Collections.singletonMap(NAME, csv);
    }

    /** Where they go, if they are wanted. */
    Optional<Path> file() {
        return Optional.ofNullable(csv).map(Path::of);
    }
}
