package simmerpoint.setup;

import simmerpoint.dish.DishPlan;
import simmerpoint.geometry.Vec;

/**
 * Heights and clearances of a well-aimed dish on its tripod and its pan on level ground, in the vertical plane through the
 * sun. Heights are above the ground; level distances are towards the sun from the tripod's centre, which is under the mount.
 * With α the axis elevation, p, s, h the pull-back, slide and raise (see {@link Setup}), a point at (x, z) from the mount in the dish
 * frame is at (z·cos α − x·sin α, z·sin α + x·cos α); the pan at that of the focus, with z longer by p, plus (s, h) (derived here).
 *
 * <p>Neglects everything behind the mirror (ribs, frame) and turns of the dish.
 *
 * @param elevationRadians elevation of the axis, above 0 to π/2
 * @param panHeightMetres height of the pan's underside
 * @param panDistanceMetres level distance of the pan's centre towards the sun from the tripod's centre; below 0 it is
 *     behind
 * @param panSideMetres level distance of the pan's centre to the right of someone behind the dish who faces the sun
 * @param clearanceMetres height of the mirror's lowest point; below 0 it would be in the ground
 * @param leastMountMetres lowest mount for which the mirror just touches the ground
 * @param legLeanRadians least lean from the vertical of a straight leg from the mount towards the sun that is in the
 *     mirror's beam, or {@link #NO_LEG} if none up to {@link #MOST_LEAN} is
 */
public record StandGeometry(
        double elevationRadians,
        double panHeightMetres,
        double panDistanceMetres,
        double panSideMetres,
        double clearanceMetres,
        double leastMountMetres,
        double legLeanRadians) {
    /** Lean of a tripod's legs from the vertical, rad: 25° (common practice). */
    public static final double USUAL_LEAN = Math.toRadians(25);

    /** Greatest lean considered, rad. */
    public static final double MOST_LEAN = Math.toRadians(45);

    /** No leg is in the beam. */
    public static final double NO_LEG = Double.POSITIVE_INFINITY;

    private static final int LEAN_STEPS = 90;
    private static final int LEG_STEPS = 200;

    /**
     * For one position of the pan.
     *
     * @param dish focal length and diameter
     * @param elevationRadians of the well-aimed axis, above 0 to π/2
     * @param mountBehindMetres the mount's distance behind the vertex
     * @param mountHeightMetres the mount's height above the ground, above 0
     * @param stand the moves of the pan
     */
    public static StandGeometry of(
            DishPlan dish, double elevationRadians, double mountBehindMetres, double mountHeightMetres, Stand stand) {
        if (!(elevationRadians > 0 && elevationRadians <= Math.PI / 2)) {
            throw new IllegalArgumentException("elevation " + elevationRadians + " rad is outside 0 to pi/2");
        }
        if (!(mountHeightMetres > 0)) {
            throw new IllegalArgumentException("mount height " + mountHeightMetres + " m is not above 0");
        }
        double up = Math.sin(elevationRadians);
        double level = Math.cos(elevationRadians);
        Vec fromMount = fromMount(dish, mountBehindMetres, stand);
        Vec mount = dish.mount(mountBehindMetres);
        double clearance = mountHeightMetres - mount.x() * level - mount.z() * up + lowest(dish, elevationRadians);
        return new StandGeometry(
                elevationRadians,
                panHeight(dish, elevationRadians, mountBehindMetres, mountHeightMetres, stand),
                fromMount.z() * level - fromMount.x() * up + stand.slideMetres(),
                stand.sideMetres(),
                clearance,
                mountHeightMetres - clearance,
                legLean(dish, elevationRadians, mountBehindMetres, mountHeightMetres));
    }

    /** Height of the pan's underside alone, m; the parameters are those of {@link #of}. */
    public static double panHeight(
            DishPlan dish, double elevationRadians, double mountBehindMetres, double mountHeightMetres, Stand stand) {
        Vec fromMount = fromMount(dish, mountBehindMetres, stand);
        return mountHeightMetres
                + fromMount.z() * Math.sin(elevationRadians)
                + fromMount.x() * Math.cos(elevationRadians)
                + stand.raiseMetres();
    }

    /** The pan pulled back, but neither slid nor raised, from the mount; dish frame. */
    private static Vec fromMount(DishPlan dish, double mountBehindMetres, Stand stand) {
        return dish.supposedFocus().plus(new Vec(0, 0, stand.pullBackMetres())).minus(dish.mount(mountBehindMetres));
    }

    /** Level distance between the centres of pan and tripod, m. */
    public double distanceMetres() {
        return Math.hypot(panDistanceMetres, panSideMetres);
    }

    /** Tilt of the dish from facing the horizon, rad: the elevation of its axis. */
    public double tiltRadians() {
        return elevationRadians;
    }

    /** Whether the mirror touches the ground. */
    public boolean touchesGround() {
        return !(clearanceMetres > 0);
    }

    /** Whether a leg of usual lean that points towards the sun is in the mirror's beam. */
    public boolean legInBeam() {
        return legLeanRadians <= USUAL_LEAN;
    }

    /**
     * Height of the mirror's lowest point above the vertex, m: x·cos α + x²/4f·sin α is least at
     * x = −2f·cot α or, if that is beyond it, at the rim.
     */
    private static double lowest(DishPlan dish, double elevation) {
        double f = dish.focalLengthMetres();
        double up = Math.sin(elevation);
        double level = Math.cos(elevation);
        double x = Math.min(dish.upperEdgeMetres(), Math.max(-dish.lowerEdgeMetres(), -2 * f * level / up));
        return x * level + x * x / (4 * f) * up;
    }

    /** The mirror in the upright plane through the axis: from {@code lower} below that to {@code upper} above it, m. */
    private record Section(double lower, double upper, double focal) {
        /** Whether a place x above the axis and z before the vertex is in the light that falls on it. */
        boolean isBefore(double x, double z) {
            return x > -lower && x < upper && z > x * x / (4 * focal);
        }
    }

    private static double legLean(DishPlan dish, double elevation, double behind, double height) {
        Vec mount = dish.mount(behind);
        Section edges = new Section(dish.lowerEdgeMetres(), dish.upperEdgeMetres(), dish.focalLengthMetres());
        for (int k = 0; k <= LEAN_STEPS; k++) {
            double lean = MOST_LEAN * k / LEAN_STEPS;
            if (inBeam(edges, elevation, mount, height, lean)) {
                return lean;
            }
        }
        return NO_LEG;
    }

    /** Whether any point of the leg is on the sun's side of the mirror and within the light that falls on it. */
    private static boolean inBeam(Section edges, double elevation, Vec mount, double height, double lean) {
        double length = height / Math.cos(lean);
        double sine = Math.sin(lean - elevation);
        double cosine = Math.cos(lean - elevation);
        for (int k = 1; k <= LEG_STEPS; k++) {
            double t = length * k / LEG_STEPS;
            double along = mount.z() + t * sine;
            double off = mount.x() - t * cosine;
            if (edges.isBefore(off, along)) {
                return true;
            }
        }
        return false;
    }
}
