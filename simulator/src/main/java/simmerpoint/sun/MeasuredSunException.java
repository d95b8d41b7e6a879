package simmerpoint.sun;

import java.nio.file.Path;

/** A table of a measured sun shape cannot be used; the message is one sentence for the user. */
public final class MeasuredSunException extends Exception {
    private static final long serialVersionUID = 1;

    MeasuredSunException(Path file, String sentence) {
        super(file + ": " + sentence);
    }

    MeasuredSunException(Path file, int line, String sentence) {
        super(file + ", line " + line + ": " + sentence);
    }
}
