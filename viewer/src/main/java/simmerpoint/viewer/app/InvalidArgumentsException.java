package simmerpoint.viewer.app;

/** An invalid command line; the message is one sentence for the user. */
final class InvalidArgumentsException extends Exception {
    private static final long serialVersionUID = 1L;

    InvalidArgumentsException(String message) {
        super(message);
    }
}
