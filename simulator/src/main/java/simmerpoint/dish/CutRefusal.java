package simmerpoint.dish;

/** Values of a cut's parameters do not go together. The message is one clause for whoever wrote them. */
public final class CutRefusal extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final String parameter;

    /** About the value of {@code parameter}. */
    public CutRefusal(CutParameter parameter, String clause) {
        super(clause);
        this.parameter = parameter.name();
    }

    /** Name of the parameter that is easiest to change. */
    public String parameter() {
        return parameter;
    }
}
