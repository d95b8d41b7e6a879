package simmerpoint.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import simmerpoint.report.AtomicFile;
import simmerpoint.report.OutputException;

/** Names of files to write: refused before any work is done for them if they cannot be. */
final class OutputFile {
    /** Stands for standard output. */
    static final String STANDARD = "-";

    private OutputFile() {}

    /** The file of that name. */
    static Path named(String option, String name) throws WrongUse {
        if (name.isBlank()) {
            throw new WrongUse(option + " needs the name of a file.");
        }
        try {
            return Path.of(name);
        } catch (InvalidPathException e) {
            throw new WrongUse(option + ": \"" + name + "\" cannot be the name of a file.");
        }
    }

    /** Refuses a file that cannot be written or that is the scenario itself, which may be null. */
    static void check(String option, Path file, Path scenario) throws WrongUse {
        try {
            AtomicFile.check(file);
        } catch (OutputException e) {
            throw new WrongUse(option + ": " + e.getMessage());
        }
        if (scenario != null && same(file, scenario)) {
            throw new WrongUse(option + ": " + file + " is the scenario itself; give the result another name.");
        }
    }

    /** Whether two names lead to one file, there already or not. */
    static boolean same(Path a, Path b) {
        if (AtomicFile.destination(a).equals(AtomicFile.destination(b))) {
            return true;
        }
        try {
            return Files.exists(a) && Files.exists(b) && Files.isRegularFile(a) && Files.isSameFile(a, b);
        } catch (IOException e) {
            return false;
        }
    }
}
