package simmerpoint.sun;

import java.nio.file.Path;

/** A table of the sun's brightness cannot be used; the message is one sentence for the person who wrote it. */
public final class SunTableException extends Exception {
    private static final long serialVersionUID = 1;

    SunTableException(Path file, String sentence) {
        super(file + ": " + sentence);
    }

    SunTableException(Path file, int line, String sentence) {
        super(file + ", line " + line + ": " + sentence);
    }
}
