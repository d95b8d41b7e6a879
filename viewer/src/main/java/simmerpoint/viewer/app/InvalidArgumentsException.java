package simmerpoint.viewer.app;

/** A command line that cannot be followed; the message is one sentence for whoever typed it. */
final class InvalidArgumentsException extends Exception {
    private static final long serialVersionUID = 1L;

    InvalidArgumentsException(String message) {
        super(message);
    }
}
