package simmerpoint.units;

/** A quantity that cannot be read. The message is the sentence for the user, without the place where it was found. */
public final class QuantityException extends Exception {
    private static final long serialVersionUID = 1L;

    /** With the sentence for the user. */
    public QuantityException(String message) {
        super(message);
    }
}
