package simmerpoint.dish.sheet;

/**
 * Film without stiffness, stretched evenly over ribs on the parabola z = r²/4f, with an air pressure from the light's side: a membrane, whose
 * height has T·∇²z = p (any text on membranes). On its own, p = 0, it stands out towards the light between ribs that are hollow, as a
 * saddle; with p = T/f it is the paraboloid itself.
 *
 * <p>With β = π/n, the strip straight across has ∇²z = 1/(2f·cos²β) and w = h·(x² − y²/tan²β)/X², nothing at the ribs and h midway at the rim, ∇²w =
 * −2h·(1 − tan²β)/(X²·tan²β), X·tan β = R·sin β, which together make p/T for the h given here (derived here).
 */
public final class FilmBulge {
    /** Between fewer ribs no such shape is in balance. */
    public static final int FEWEST_RIBS = 5;

    private FilmBulge() {}

    /**
     * How far it stands out towards the light midway between two ribs at the rim, m.
     *
     * @param pressure from the light's side, Pa
     * @param tension along and across, N/m
     * @param focalLength of the ribs' parabola, m
     * @param rim distance of their tips from the axis, m
     * @param ribs how many all round, {@link #FEWEST_RIBS} or more
     */
    public static double betweenRibs(double pressure, double tension, double focalLength, double rim, int ribs) {
        double half = Math.PI / ribs;
        double tan = Math.tan(half);
        double middle = rim * Math.sin(half);
        double straight = 1 / (2 * focalLength * Math.pow(Math.cos(half), 2));
        return middle * middle * (straight - pressure / tension) / (2 * (1 - tan * tan));
    }
}
