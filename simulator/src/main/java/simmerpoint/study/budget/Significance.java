package simmerpoint.study.budget;

import simmerpoint.sampling.Estimate;

/** Whether a difference is more than noise. */
public final class Significance {
    /**
     * A difference counts if it is over so many of its standard errors: with 16 replicates noise alone gets there once
     * in 110 times (Student's law, 15 degrees of freedom).
     */
    public static final double ERRORS = 3;

    private Significance() {}

    /** Whether {@code difference} is not 0 for all that sampling can tell. */
    public static boolean of(Estimate difference) {
        return Math.abs(difference.value()) > ERRORS * difference.standardError();
    }
}
