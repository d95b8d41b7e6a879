package simmerpoint.dish.points;

/**
 * How far the axis of the paraboloid that lies nearest to points leans from z, when it may lean: Gauss–Newton steps over the two slopes of the
 * axis, for each of which {@link BestParaboloid} of the points turned so has the rest; doubts from what is left over (any book on non-linear
 * regression). Where that is alike at neighbouring points, as in a dish with dents, they count for fewer: with a correlation ρ the doubt grows by
 * (1 + ρ)/(1 − ρ), as that of the mean over a plane whose correlation falls off as ρ to the power of the distance along both axes (derived here).
 *
 * @param slopeX of the axis towards x
 * @param slopeY towards y
 * @param deviation standard deviation of the angle between the axis and z, rad
 */
public record AxisFit(double slopeX, double slopeY, double deviation) {
    private static final int MOST_POINTS = 20_000;
    private static final int STEPS = 30;
    private static final double STEP = 1e-5;
    private static final double STEEPEST = 0.7;
    private static final int FITTED = 6;
    private static final double MOST_ALIKE = 0.99;

    /** Leaning by so many standard deviations, and by more than anybody levels a dish (rad), it leans. */
    private static final double SEEN = 3;

    private static final double LEVEL = Math.toRadians(0.2);

    static AxisFit of(MeasuredPoints all) {
        MeasuredPoints points = all.everyOther(1 + all.count() / MOST_POINTS);
        double a = 0;
        double b = 0;
        for (int k = 0; k < STEPS; k++) {
            Normal normal = Normal.at(points, a, b);
            double stepA = (normal.bb * normal.ra - normal.ab * normal.rb) / normal.determinant();
            double stepB = (normal.aa * normal.rb - normal.ab * normal.ra) / normal.determinant();
            a = limited(a - stepA);
            b = limited(b - stepB);
            if (Math.hypot(stepA, stepB) < 1e-10) {
                break;
            }
        }
        return new AxisFit(
                a, b, Normal.at(points, a, b).deviation(a, b, all.count()) * alike(points, rest(points, a, b)));
    }

    /** By how much the doubt grows since what is left over is alike at neighbouring points. */
    static double alike(MeasuredPoints points, double[] rest) {
        NearestPoints.Search search = new NearestPoints(points.x(), points.y()).new Search(2);
        double both = 0;
        double squares = 0;
        for (int i = 0; i < rest.length; i++) {
            search.near(points.x()[i], points.y()[i]);
            int other = search.found[0] == i ? search.found[1] : search.found[0];
            both += rest[i] * rest[other];
            squares += (rest[i] * rest[i] + rest[other] * rest[other]) / 2;
        }
        double correlation = squares > 0 ? Math.max(0, Math.min(MOST_ALIKE, both / squares)) : 0;
        return (1 + correlation) / (1 - correlation);
    }

    private static double limited(double slope) {
        return Math.max(-STEEPEST, Math.min(STEEPEST, slope));
    }

    /** Angle between the axis and z, rad. */
    public double angle() {
        return Math.atan(Math.hypot(slopeX, slopeY));
    }

    /** Whether it leans by more than chance and a spirit level explain. */
    public boolean leans() {
        return angle() > Math.max(LEVEL, SEEN * deviation);
    }

    /** The points turned by the least turn that brings the axis to z. */
    MeasuredPoints straightened(MeasuredPoints points) {
        return turned(points, slopeX, slopeY);
    }

    private static MeasuredPoints turned(MeasuredPoints points, double a, double b) {
        double length = Math.sqrt(1 + a * a + b * b);
        double nx = a / length;
        double ny = b / length;
        double nz = 1 / length;
        double share = 1 / (1 + nz);
        double[][] out = new double[3][points.count()];
        for (int i = 0; i < points.count(); i++) {
            double x = points.x()[i];
            double y = points.y()[i];
            double z = points.z()[i];
            double across = (nx * x + ny * y) * share;
            out[0][i] = x - nx * (across + z);
            out[1][i] = y - ny * (across + z);
            out[2][i] = nx * x + ny * y + nz * z;
        }
        return new MeasuredPoints(out[0], out[1], out[2]);
    }

    /** What every point lies above the best paraboloid with such an axis, m. */
    private static double[] rest(MeasuredPoints points, double a, double b) {
        MeasuredPoints turned = turned(points, a, b);
        return BestParaboloid.of(turned).rest(turned);
    }

    /** The normal equations of one step. */
    private record Normal(double aa, double ab, double bb, double ra, double rb, double squares, int count) {
        static Normal at(MeasuredPoints points, double a, double b) {
            double[] here = rest(points, a, b);
            double[] byA = rest(points, a + STEP, b);
            double[] byB = rest(points, a, b + STEP);
            double[] sums = new double[FITTED];
            for (int i = 0; i < here.length; i++) {
                double da = (byA[i] - here[i]) / STEP;
                double db = (byB[i] - here[i]) / STEP;
                sums[0] += da * da;
                sums[1] += da * db;
                sums[2] += db * db;
                sums[3] += da * here[i];
                sums[4] += db * here[i];
                sums[5] += here[i] * here[i];
            }
            return new Normal(sums[0], sums[1], sums[2], sums[3], sums[4], sums[5], here.length);
        }

        double determinant() {
            return aa * bb - ab * ab;
        }

        /** Along the slope itself; along the worse known one where there is none. */
        double deviation(double a, double b, int points) {
            double variance = squares / Math.max(1, count - FITTED) * count / points;
            double length = Math.hypot(a, b);
            double cos = length > 0 ? a / length : 1;
            double sin = length > 0 ? b / length : 0;
            return Math.sqrt(variance * (bb * cos * cos - 2 * ab * cos * sin + aa * sin * sin) / determinant())
                    / (1 + length * length);
        }
    }
}
