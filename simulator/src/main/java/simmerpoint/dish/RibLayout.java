package simmerpoint.dish;

/**
 * The ribs of a dish and the lengths between which errors along a rib are independent. The array is shared and not
 * modified.
 *
 * @param sectors number of ribs round the axis of a dish that goes all round
 * @param standing how many of them carry a mirror
 * @param curved whether their edges follow the parabola; else they are straight from border to border
 * @param borders distances from the axis at which those lengths begin and end, from hub to rim, m
 */
public record RibLayout(int sectors, int standing, boolean curved, double[] borders) {
    /** Of a dish that goes all round. */
    public RibLayout(int sectors, boolean curved, double[] borders) {
        this(sectors, sectors, curved, borders);
    }

    /** The same with fewer of them. */
    public RibLayout withStanding(int ribs) {
        return new RibLayout(sectors, ribs, curved, borders);
    }
}
