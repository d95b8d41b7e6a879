package simmerpoint.sun;

import java.nio.file.Path;

/** A table of the sun's brightness cannot be used; the message is one sentence for the person who wrote it. */
public final class MeasuredSunException extends Exception {
    private static final long serialVersionUID = 1;

    MeasuredSunException(Path file, String sentence) {
        super(file + ": " + sentence);
    }

    MeasuredSunException(Path file, int line, String sentence) {
        super(file + ", line " + line + ": " + sentence);
    }
}
