package simmerpoint.command;

/** A wrong command line; the message is one sentence. */
final class WrongUse extends Exception {
    private static final long serialVersionUID = 1;

    WrongUse(String message) {
        super(message);
    }
}
