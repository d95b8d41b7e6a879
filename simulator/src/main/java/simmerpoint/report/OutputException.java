package simmerpoint.report;

/** A file could not be written; the message is one sentence for whoever asked for it. */
public final class OutputException extends Exception {
    private static final long serialVersionUID = 1;

    /** With the sentence and what caused it (may be null). */
    public OutputException(String message, Throwable cause) {
        super(message, cause);
    }
}
