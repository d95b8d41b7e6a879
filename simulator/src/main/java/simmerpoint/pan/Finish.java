package simmerpoint.pan;

/**
 * The outer surface of a pan.
 *
 * @param name as in the catalogue, for instance "black enamel"
 * @param absorptance share of sunlight absorbed at normal incidence, 0 to 1
 */
public record Finish(String name, double absorptance) {
    /** Checks the share. */
    public Finish {
        if (!(absorptance >= 0 && absorptance <= 1)) {
            throw new IllegalArgumentException("absorptance " + absorptance + " is outside 0 to 1");
        }
    }
}
