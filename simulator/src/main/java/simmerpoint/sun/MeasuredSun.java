package simmerpoint.sun;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.Objects;
import simmerpoint.input.InputFileException;

/**
 * A measured sun shape: radiance by angle from the centre, linear between two rows, 0 beyond the last row. Integrals use
 * the package's convention and are exact to rounding (radiance times sin θ cos θ over each interval, four Gauss-Legendre
 * points).
 */
public final class MeasuredSun implements SunShape {
    /** Widest angle a row may have, rad. */
    public static final double WIDEST_ANGLE_RADIANS = SunShapeChecks.WIDEST;

    /** Least number of rows. */
    public static final int FEWEST_ROWS = 3;

    /** Least radiance of the centre as a share of the greatest radiance. */
    public static final double LEAST_CENTRE = 1e-3;

    private final String name;
    private final double[] angles;
    private final double[] radiances;
    private final PiecewiseIntegral integral;

    private MeasuredSun(String name, double[] angles, double[] radiances) {
        this.name = name;
        this.angles = angles;
        this.radiances = radiances;
        this.integral = new PiecewiseIntegral(angles, (cell, x) -> radiance(cell, x) * AngularWeight.at(x));
    }

    /**
     * From arrays; {@link #read} is for files.
     *
     * @param name for reports
     * @param anglesRadians strictly ascending from 0, at most 0.1 rad; at least three. Copied
     * @param radiances one for each angle, at least 0 and finite in any unit; the first at least a thousandth of the
     *     greatest. Copied
     * @throws IllegalArgumentException if the arrays are not like that
     */
    public static MeasuredSun of(String name, double[] anglesRadians, double[] radiances) {
        if (anglesRadians.length < FEWEST_ROWS || anglesRadians.length != radiances.length) {
            throw new IllegalArgumentException(anglesRadians.length + " angles and " + radiances.length
                    + " radiances are not " + FEWEST_ROWS + " or more of each");
        }
        double brightest = 0;
        for (int i = 0; i < radiances.length; i++) {
            double angle = anglesRadians[i];
            if (!(i == 0 ? angle == 0 : angle > anglesRadians[i - 1] && angle <= WIDEST_ANGLE_RADIANS)) {
                throw new IllegalArgumentException("angle " + angle + " rad is not ascending from 0 to 0.1");
            }
            if (!(radiances[i] >= 0 && radiances[i] < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("radiance " + radiances[i] + " is not at least 0 and finite");
            }
            brightest = Math.max(brightest, radiances[i]);
        }
        if (!(radiances[0] > 0 && radiances[0] >= LEAST_CENTRE * brightest)) {
            throw new IllegalArgumentException("radiance " + radiances[0] + " at the centre is too small");
        }
        double centre = radiances[0];
        double[] relative = Arrays.stream(radiances).map(b -> b / centre).toArray();
        return new MeasuredSun(name, anglesRadians.clone(), relative);
    }

    /**
     * Reads a table of two columns with a comma between them. The first line that is neither empty nor a comment is the
     * header and names the angle's unit, mrad, deg or arcmin, as in {@code angle_mrad,relative_radiance}; each line after it
     * is an angle from the sun's centre in that unit and the radiance there in any unit. Angles ascend from 0 and end at or below 100
     * mrad; {@code #} starts a comment; numbers have decimal points.
     *
     * @param csv the file, at most 1 MB of UTF-8
     * @throws InputFileException with one sentence for the user if the file is not like that
     */
    public static MeasuredSun read(Path csv) throws InputFileException {
        return new MeasuredSunReader(csv).read();
    }

    @Override
    public String describe() {
        return "table " + name + ", " + angles.length + " rows to " + SunShapeChecks.mrad(largestAngle());
    }

    @Override
    public double relativeRadiance(double angle) {
        return angle >= 0 && angle <= largestAngle() ? radiance(integral.cell(angle), angle) : 0;
    }

    @Override
    public double density(double angle) {
        return relativeRadiance(angle) * AngularWeight.at(angle) / integral.total();
    }

    @Override
    public double cumulative(double angle) {
        return angle >= largestAngle() ? 1 : integral.upTo(Math.max(0, angle)) / integral.total();
    }

    @Override
    public double inverse(double u) {
        return SunShapeChecks.share(u) == 1 ? largestAngle() : integral.inverse(u * integral.total());
    }

    /** The angle of the last row, rad. */
    @Override
    public double largestAngle() {
        return angles[angles.length - 1];
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof MeasuredSun sun
                && Objects.equals(name, sun.name)
                && Arrays.equals(angles, sun.angles)
                && Arrays.equals(radiances, sun.radiances);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(angles) + Arrays.hashCode(radiances);
    }

    private double radiance(int row, double angle) {
        double share = (angle - angles[row]) / (angles[row + 1] - angles[row]);
        return radiances[row] + share * (radiances[row + 1] - radiances[row]);
    }
}
