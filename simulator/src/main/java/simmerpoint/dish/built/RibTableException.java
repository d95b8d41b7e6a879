package simmerpoint.dish.built;

/** A file of measured ribs that cannot be used; the message is a sentence for the user. */
public final class RibTableException extends Exception {
    private static final long serialVersionUID = 1;

    RibTableException(String message) {
        super(message);
    }
}
