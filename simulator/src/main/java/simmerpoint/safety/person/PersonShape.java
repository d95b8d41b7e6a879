package simmerpoint.safety.person;

import java.util.ArrayList;
import java.util.List;

/**
 * Outline of a grown-up of 170 cm, as it is drawn and as what light falls on: a body of straight lines and a round head. Sizes are those
 * of a figure drawn to scale, rounded to centimetres: common practice.
 */
public final class PersonShape {
    /** Half of the greatest width, at the elbows, m. */
    public static final double HALF_WIDTH = 0.18;

    /** Middle of the head above the ground, m. */
    public static final double HEAD_HEIGHT = 1.59;

    /** Radius of the head, m. */
    public static final double HEAD_RADIUS = 0.1;

    /** Height, m. */
    public static final double HEIGHT = HEAD_HEIGHT + HEAD_RADIUS;

    /** Half widths at heights, from the ground up, m. */
    private static final double[][] HALVES = {{0.11, 0}, {0.13, 0.8}, {HALF_WIDTH, 1.1}, {0.17, 1.38}, {0.06, 1.46}};

    /** Between the legs, m. */
    private static final double[][] CROTCH = {{0.02, 0}, {0, 0.75}, {-0.02, 0}};

    private PersonShape() {}

    /** Corners of the body: to the right of its middle, and above the ground, m. */
    public static List<double[]> body() {
        List<double[]> corners = new ArrayList<>();
        for (double[] half : HALVES) {
            corners.add(new double[] {-half[0], half[1]});
        }
        for (int k = HALVES.length - 1; k >= 0; k--) {
            corners.add(HALVES[k].clone());
        }
        for (double[] corner : CROTCH) {
            corners.add(corner.clone());
        }
        return corners;
    }

    /** Half of the width at a height, m; 0 above the head. */
    static double halfWidth(double height) {
        for (int k = 1; k < HALVES.length; k++) {
            double[] low = HALVES[k - 1];
            double[] high = HALVES[k];
            if (height <= high[1]) {
                double share = (height - low[1]) / (high[1] - low[1]);
                return low[0] + share * (high[0] - low[0]);
            }
        }
        double off = height - HEAD_HEIGHT;
        return Math.sqrt(Math.max(0, HEAD_RADIUS * HEAD_RADIUS - off * off));
    }
}
