package simmerpoint.input;

import java.nio.file.Path;

/** A file that a scenario names cannot be used. The message is one sentence for its author, with file and line. */
public class InputFileException extends Exception {
    private static final long serialVersionUID = 1;
    private static final int LONGEST_QUOTE = 60;

    private final String place;
    private final String sentence;

    /** About a whole file; the sentence with its full stop. */
    public InputFileException(Path file, String sentence) {
        this(file.toString(), "", sentence, null);
    }

    /** About one line, counted from 1; the sentence with its full stop. */
    public InputFileException(Path file, int line, String sentence) {
        this(file + ", line " + line, "", sentence, null);
    }

    /** The system cannot read the file. */
    public InputFileException(Path file, Throwable cause) {
        this(file.toString(), "", "the file cannot be read.", cause);
    }

    /**
     * About what stands in one line.
     *
     * @param file as the user knows it
     * @param line counted from 1
     * @param found what stands there
     * @param allowed what may stand there, without full stop
     */
    public InputFileException(Path file, int line, String found, String allowed) {
        this(file + ", line " + line, "found " + quoted(found) + "; ", allowed + ".", null);
    }

    private InputFileException(String place, String quote, String sentence, Throwable cause) {
        super(place + ": " + quote + sentence, cause);
        this.place = place;
        this.sentence = sentence;
    }

    private static String quoted(String found) {
        String shown = found.length() <= LONGEST_QUOTE ? found : found.substring(0, LONGEST_QUOTE) + "...";
        return "'" + shown.replaceAll("\\p{Cntrl}", "?") + "'";
    }

    /** The same sentence without a letter of what the file holds, for a file that may be somebody else's. */
    public String withoutQuote() {
        return place + ": " + sentence;
    }
}
