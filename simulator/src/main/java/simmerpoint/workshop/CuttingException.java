package simmerpoint.workshop;

/** A dish that cannot be built like this; the message is a sentence for the builder and says what would do. */
public final class CuttingException extends Exception {
    private static final long serialVersionUID = 1;

    CuttingException(String message) {
        super(message);
    }

    /** The message with a capital letter, to stand alone. */
    public String sentence() {
        return Character.toUpperCase(getMessage().charAt(0)) + getMessage().substring(1);
    }
}
