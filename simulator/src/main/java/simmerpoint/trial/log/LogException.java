package simmerpoint.trial.log;

import java.nio.file.Path;

/** A log that cannot be used; the message is a sentence for the user with the file and, where known, the line. */
public final class LogException extends Exception {
    private static final long serialVersionUID = 1;

    LogException(Path file, int line, String sentence) {
        super(file + (line > 0 ? ": line " + line : "") + ": " + sentence);
    }
}
