package simmerpoint.study.trace;

/** The things a scenario names cannot stand as it asks; the message is one sentence for the user. */
public final class ImpossibleSetupException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    /** With one sentence for the user. */
    public ImpossibleSetupException(String message) {
        super(message);
    }
}
